#pragma once
// The question of the plan command: which options there are for this case, what each needs, brings
// and costs, and which single input would change the decision.
//
// Options are never ranked by their chance: the published series let in different patients. The
// list opens with what the decision rules say and goes on in the order of the trade.
#include "models/plan/answer.hpp"

namespace endplate::plan {

// Errors are those of recovery::recover.
Expected<PlanAnswer> plan(const casefile::Case& patient, const evidence::DataPackage& package,
                          const recovery::RecoveryOptions& options);

}  // namespace endplate::plan
