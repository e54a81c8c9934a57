#pragma once
#include "command.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::cli {

// The case that the command was given; without one, a case in which nothing is known.
Expected<casefile::Case> load_case(const CommonOptions& options,
                                   const evidence::DataPackage& package);

}  // namespace endplate::cli
