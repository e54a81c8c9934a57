#pragma once
// The nerve transfers and the tendon or muscle transfers for what this case has lost.
#include "models/plan/regrowth.hpp"
#include "models/transfer/reach_joiner.hpp"

namespace endplate::plan {

using transfer::Situation;

// Candidates of one function, and what was left out with one reason each.
struct FunctionGroup {
  std::string function;   // as it is shown
  std::string region;     // "shoulder", "elbow", "hand", "skin"
  bool priority = false;  // the case names one of its movements
  std::vector<std::string> targets;
  std::vector<Candidate> candidates;
};

struct Transfers {
  std::vector<FunctionGroup> groups;  // priorities first, then the order of the table
  std::vector<Rejected> rejected;
};

// From the judgement that the command transfer shows: what it rejects, or calls not feasible, is no
// option. `today_days` counts from the injury. Chances and times come through `regrowth`.
Transfers nerve_transfers(const transfer::JudgedTransfers& judged, const Situation& now,
                          const evidence::DataPackage& package, const Regrowth& regrowth,
                          double today_days, std::uint64_t seed);

Transfers tendon_transfers(const transfer::JudgedTransfers& judged, const Situation& now,
                           const evidence::DataPackage& package);

// Shoulder fusion is thought of when deltoid and cuff are lost; what carries the fused arm must
// work. Nothing where it is not thought of.
std::optional<Candidate> shoulder_fusion(const Situation& now);

}  // namespace endplate::plan
