#pragma once
#include <string>

#include "command.hpp"
#include "models/core/side.hpp"
#include "models/plan/answer.hpp"

namespace endplate::cli {

// The decision, the options in one table, what would change the decision, then each option.
std::string plan_text(const plan::PlanAnswer& answer, const CommonOptions& options, Side side);

}  // namespace endplate::cli
