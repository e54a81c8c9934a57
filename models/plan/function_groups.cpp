#include "models/plan/function_groups.hpp"

#include <fmt/format.h>

namespace endplate::plan {

Candidate taken_from(const transfer::Candidate& judged) {
  Candidate candidate;
  candidate.id = judged.id;
  candidate.donor = judged.donor;
  candidate.recipient = judged.recipient;
  candidate.donor_state = judged.donor_state;
  candidate.published_words = judged.result_words;
  candidate.donor_cost = judged.donor_cost;
  candidate.also_spends = judged.also_spends;
  candidate.better_exists = judged.better_exists;
  candidate.provenance = judged.provenance;
  candidate.reasons = judged.donor_reasons;
  candidate.reasons.insert(candidate.reasons.end(), judged.said.begin(), judged.said.end());
  if (judged.longest_delay_months) {
    candidate.reasons.push_back(
        fmt::format("longest delay in the series {:.0f} months", *judged.longest_delay_months));
  }
  return candidate;
}

bool is_listed(const transfer::Candidate& judged) {
  return !judged.rejection || judged.rejection == transfer::Rejection::not_shown;
}

void reject(Transfers& transfers, const transfer::Candidate& judged) {
  if (judged.rejection == transfer::Rejection::not_lost) return;
  transfers.rejected.push_back({judged.id, judged.what, judged.rejected_because,
                                judged.rejection == transfer::Rejection::donor_dead});
}

}  // namespace endplate::plan
