#pragma once
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/followup/follow_up.hpp"

namespace endplate::cli {

Json followup_json(const followup::FollowupAnswer& answer, const CommonOptions& options, Side side);

}  // namespace endplate::cli
