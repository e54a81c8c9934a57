#pragma once
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::cli {

Json recovery_json(const recovery::RecoveryAnswer& answer, const CommonOptions& options, Side side);

// Parts of it that other documents hold as well.
Json decision_json(const recovery::Decision& decision);
Json lesions_json(const recovery::RecoveryAnswer& answer);
Json targets_json(const recovery::RecoveryAnswer& answer);
Json timing_json(const recovery::RecoveryAnswer& answer);

}  // namespace endplate::cli
