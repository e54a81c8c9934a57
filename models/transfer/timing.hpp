#pragma once
// Delay and age in words. The longest delay of a series is said and is never a filter.
#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/judge.hpp"

namespace endplate::transfer {

// Fills `timing`, and `doubts` where the window of a muscle has passed by the decision rules.
void say_timing(const Situation& now, const evidence::DataPackage& package,
                const JudgeOptions& options, Candidate& candidate);

}  // namespace endplate::transfer
