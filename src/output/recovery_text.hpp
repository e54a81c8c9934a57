#pragma once
#include <string>

#include "command.hpp"
#include "models/core/side.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::cli {

// The decision with its date, what would change it, its reasons and dated steps.
std::string decision_text(const recovery::Decision& decision);

// The decision first, then the targets in order of return; under a page.
std::string recovery_text(const recovery::RecoveryAnswer& answer, const CommonOptions& options,
                          Side side);

}  // namespace endplate::cli
