#pragma once
#include <string>

#include "command.hpp"
#include "models/schedule/schedule.hpp"

namespace endplate::cli {

// The order of return as a sheet to print and tick, with the needle studies below it.
std::string sheet_text(const schedule::Schedule& schedule, const recovery::RecoveryAnswer& answer,
                       const CommonOptions& options, Side side);

// {"sheet", "emg", "appointments"}
Json schedule_json(const schedule::Schedule& schedule, const recovery::RecoveryAnswer& answer);

}  // namespace endplate::cli
