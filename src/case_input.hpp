#pragma once
// From the command's CASE argument to the case that it names.
#include "command.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::cli {

// Reads the case file, or standard input for "-". Without a case the answer is a standard adult
// limb; its assumptions say so. A date after --today is refused where --today was given.
Expected<casefile::Case> load_case(const CommonOptions& options,
                                   const evidence::DataPackage& package);

}  // namespace endplate::cli
