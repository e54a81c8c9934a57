#pragma once
// From the command's CASE argument to the case that it names.
#include "command.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::cli {

Expected<casefile::Case> load_case(const CommonOptions& options,
                                   const evidence::DataPackage& package);

}  // namespace endplate::cli
