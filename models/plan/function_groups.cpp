#include "models/plan/function_groups.hpp"

namespace endplate::plan {
namespace {

void add_rejected(Transfers& transfers, const transfer::Candidate& judged, std::string reason) {
  transfers.rejected.push_back({judged.id, judged.what, std::move(reason),
                                judged.rejection == transfer::Rejection::donor_dead});
}

}  // namespace

Candidate taken_from(const transfer::TransferCandidate& taken) {
  const transfer::Candidate& judged = taken.judged;
  Candidate candidate;
  candidate.id = judged.id;
  candidate.donor = judged.donor;
  candidate.recipient = judged.recipient;
  candidate.donor_state = judged.donor_state;
  candidate.verdict = judged.verdict;
  candidate.examine_first = judged.examine_first;
  if (taken.joined) candidate.reach = transfer::to_string(taken.joined->reach.state);
  candidate.published_words = judged.result_words;
  candidate.donor_cost = judged.donor_cost;
  candidate.also_spends = judged.also_spends;
  candidate.better_exists = judged.better_exists;
  candidate.provenance = judged.provenance;
  candidate.reasons = judged.reasons;
  // Said once for the whole plan, or nothing that speaks for or against it.
  std::erase_if(candidate.reasons, [&](const std::string& reason) {
    const bool relearned =
        reason == judged.synergy_words && judged.synergy != transfer::Synergy::antagonist;
    return relearned || std::ranges::find(judged.timing, reason) != judged.timing.end();
  });
  return candidate;
}

void reject_all(Transfers& transfers, const transfer::JudgedTransfers& judged, transfer::Way way) {
  for (const transfer::Candidate& one : judged.rejected) {
    if (one.way != way || one.rejection == transfer::Rejection::not_lost) continue;
    if (way == transfer::Way::tendon && one.rejection == transfer::Rejection::other_lesion) {
      continue;
    }
    add_rejected(transfers, one, one.rejected_because);
  }
  for (const transfer::TransferGroup& group : judged.groups) {
    for (const transfer::TransferCandidate& candidate : group.candidates) {
      const transfer::Candidate& one = candidate.judged;
      if (one.way != way || one.verdict != transfer::Verdict::not_feasible) continue;
      add_rejected(transfers, one, one.reasons.back());
    }
  }
}

}  // namespace endplate::plan
