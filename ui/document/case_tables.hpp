#pragma once
// The evidence tables and what is read from them once, shared by everything on the desk.
#include <filesystem>
#include <memory>
#include <optional>
#include <string_view>

#include "models/anatomy/anatomy.hpp"
#include "models/anatomy/terms.hpp"
#include "models/casefile/case.hpp"
#include "models/casefile/read.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::ui {

struct CaseTables {
  std::filesystem::path folder;
  evidence::DataPackage package;
  anatomy::Terms terms;
  anatomy::Anatomy anatomy;
  casefile::PoseLimits pose;

  static Expected<std::shared_ptr<const CaseTables>> from(const std::filesystem::path& folder);

  // A case file, judged by the models: errors are theirs. What lies after `today` is refused.
  Expected<casefile::Case> read(std::string_view text, casefile::Date today) const;
};

}  // namespace endplate::ui
