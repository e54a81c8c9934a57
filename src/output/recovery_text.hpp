#pragma once
#include <string>

#include "command.hpp"
#include "models/core/side.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::cli {

// The decision first, then the targets in order of return; under a page.
std::string recovery_text(const recovery::RecoveryAnswer& answer, const CommonOptions& options,
                          Side side);

// Parts of it that other pages show as well.
std::string decision_text(const recovery::Decision& decision);
std::string lesion_text(const recovery::RecoveryAnswer& answer);
std::string targets_text(const recovery::RecoveryAnswer& answer);
std::string timing_text(const recovery::RecoveryAnswer& answer);

}  // namespace endplate::cli
