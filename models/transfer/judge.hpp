#pragma once
// Every published transfer judged for one case: donors, function, cost, time, and the one reason
// why where it is no candidate. Whether donor and recipient meet is not judged here; a reach joins
// Candidate::distance_mm and calls rank() again.
#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

struct JudgeOptions {
  std::optional<double> days_since_injury;  // as if operated today
};

// Every row of transfers.csv in its order, those without an indication too (`rejection`).
std::vector<Candidate> nerve_candidates(const Situation& now, const evidence::DataPackage& package,
                                        const JudgeOptions& options);

// Every operation of tendon_transfers.csv in its order, likewise. A superficialis of a finger is
// rejected where the deep flexor of that finger was not shown to be strong.
std::vector<Candidate> tendon_candidates(const Situation& now, const evidence::DataPackage& package,
                                         const JudgeOptions& options);

// The candidates of one function.
struct Group {
  std::string function;   // as it is shown
  std::string region;     // "shoulder", "elbow", "hand", "skin"
  bool priority = false;  // the case names one of its movements
  std::vector<Candidate> candidates;
};

struct Judgement {
  std::vector<Group> groups;        // priorities first, then the order of the table
  std::vector<Candidate> rejected;  // in the order of the tables
};

Judgement judge(const Situation& now, const evidence::DataPackage& package,
                const JudgeOptions& options);

// Fills beaten_by and puts in order. One candidate beats another of the same kind of operation and
// coaptation when it restores at least as much, is nowhere worse and somewhere better: verdict,
// function, what dies with the cut, which tendon options go, whether a result was counted, the
// published share on the same scale (better only where the 95 % intervals lie apart; left out where
// one of them lacks it or has it on another scale), and the distance to the target (where one of
// them lacks it, neither beats the other).
//
// In order: nerve before tendon transfers; the verdict; those to which the table knows no better;
// another study of the same operation after the first; the front before what is beaten; synergists;
// those with a counted result; then the order of the table.
void rank(Group& group);

}  // namespace endplate::transfer
