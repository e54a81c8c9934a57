#pragma once
#include <string>

#include "command.hpp"
#include "models/core/side.hpp"
#include "models/followup/follow_up.hpp"

namespace endplate::cli {

// The decision first, then the call, what was seen, and the targets in order of return.
std::string followup_text(const followup::FollowupAnswer& answer, const CommonOptions& options,
                          Side side);

}  // namespace endplate::cli
