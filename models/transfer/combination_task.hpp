#pragma once
// The combination that is asked of judged candidates.
#include "models/evidence/data_package.hpp"
#include "models/transfer/combination_tables.hpp"
#include "models/transfer/judge.hpp"

namespace endplate::transfer {

// By the roots that the case's injuries cut; single nerves follow no pattern.
PalsyPattern pattern_of(const Situation& now);

// Who may be chosen: feasible and marginal candidates, and those whose donor or conditions were not
// examined, as if they were shown to be strong and to hold.
enum class Admitted { shown, not_judged_too };

// A candidate serves those movements of its
// function whose prime movers are all lost; a candidate for skin serves `sensation of the hand`.
CombinationTask combination_task(const Situation& now, const evidence::DataPackage& package,
                                 std::vector<Group> groups, Admitted admitted);

}  // namespace endplate::transfer
