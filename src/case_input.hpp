#pragma once
#include "command.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::cli {

// Reads the case file that the options name, or standard input for "-".
Expected<casefile::Case> load_case(const CommonOptions& options,
                                   const evidence::DataPackage& package);

}  // namespace endplate::cli
