#include "models/anatomy/limb_columns.hpp"

#include <catch2/catch.hpp>

using namespace endplate;

TEST_CASE("columns of limbs hold each limb's lengths and begin again after the last", "[anatomy]") {
  for (const std::size_t count : {1U, 3U, 40U}) {
    std::vector<anatomy::NerveMetrics> limbs(count);
    for (std::size_t l = 0; l < count; ++l) {
      const auto base = static_cast<double>(1000 * l);
      limbs[l].length_mm = {base + 1.0, base + 2.0, anatomy::NerveMetrics::kUnknown};
      limbs[l].leaves_parent_at_mm = {{}, {base + 3.0, base + 4.0}, {base + 5.0}};
    }
    const anatomy::LimbColumns columns(limbs);
    REQUIRE(columns.limbs() == count);
    REQUIRE(columns.length_mm(0).size() == count + anatomy::LimbColumns::kOverlap);
    for (std::size_t i = 0; i < columns.length_mm(0).size(); ++i) {
      const auto base = static_cast<float>(1000 * (i % count));
      REQUIRE(columns.length_mm(0)[i] == base + 1.0F);
      REQUIRE(columns.length_mm(1)[i] == base + 2.0F);
      REQUIRE(std::isnan(columns.length_mm(2)[i]));
      REQUIRE(columns.leaves_parent_at_mm(1, 0)[i] == base + 3.0F);
      REQUIRE(columns.leaves_parent_at_mm(1, 1)[i] == base + 4.0F);
      REQUIRE(columns.leaves_parent_at_mm(2, 0)[i] == base + 5.0F);
    }
  }
}
