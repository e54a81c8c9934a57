#pragma once
// Which single input would change the next step: one input at a time through the decision rules.
#include "models/plan/answer.hpp"

namespace endplate::plan {

// `facts` are those of the case, by injury; a varied input changes for all injuries at once. Only
// changes of the next step are listed, in the order of the inputs.
std::vector<WhatIf> what_would_change(const recovery::DecisionRules& rules,
                                      const std::vector<recovery::DecisionFacts>& facts);

}  // namespace endplate::plan
