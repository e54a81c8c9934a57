#pragma once
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/plan/answer.hpp"

namespace endplate::cli {

Json plan_json(const plan::PlanAnswer& answer, const CommonOptions& options, Side side);

}  // namespace endplate::cli
