#pragma once
#include <catch2/catch.hpp>

#include "models/evidence/data_package.hpp"
#include "models/limb/limb_size.hpp"

namespace endplate::limb {

// The project's own tables, read once.
inline const evidence::DataPackage& own_tables() {
  static const auto package = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package.has_value());
  return *package;
}

inline LimbSize size_of(const casefile::Limb& limb) {
  auto size = LimbSize::from(own_tables(), limb);
  if (!size) FAIL(size.error().problems.front().place + ": " + size.error().problems.front().what);
  return *std::move(size);
}

inline casefile::Limb adult(casefile::Sex sex) {
  casefile::Limb limb;
  limb.sex = sex;
  limb.age_years = 30.0;
  return limb;
}

}  // namespace endplate::limb
