#pragma once
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::cli {

// The "decision" of every document that opens with one.
Json decision_json(const recovery::Decision& decision);

Json recovery_json(const recovery::RecoveryAnswer& answer, const CommonOptions& options, Side side);

}  // namespace endplate::cli
