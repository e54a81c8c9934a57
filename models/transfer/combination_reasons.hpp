#pragma once
// The one reason for which an option is not in the best set.
#include "models/transfer/combination_parts.hpp"

namespace endplate::transfer {

// `demands` by tier; `chosen` in the order in which they are to be named.
LeftOut reason_left_out(const CombinationOption& option, const Options& chosen,
                        const CombinationTask& task, const std::vector<Demand>& demands);

}  // namespace endplate::transfer
