#include "models/transfer/verdict.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::transfer {

Synergy synergy_of(std::string_view word) {
  if (word == "synergist") return Synergy::synergist;
  if (word == "neutral") return Synergy::neutral;
  return word == "antagonist" ? Synergy::antagonist : Synergy::not_known;
}

std::string relearning(Synergy synergy) {
  switch (synergy) {
    case Synergy::synergist:
      return "the donor works together with the wanted movement: relearned readily";
    case Synergy::neutral:
      return "the donor has no part in the wanted movement: to be relearned by training";
    case Synergy::antagonist:
      return "the donor works against the function and must be retrained";
    case Synergy::not_known:
      break;
  }
  return "";
}

void reject(Candidate& candidate, Rejection rejection, std::string reason) {
  candidate.rejection = rejection;
  candidate.rejected_because = std::move(reason);
}

namespace {

void add(Candidate& candidate, const std::vector<std::string>& words) {
  candidate.reasons.insert(candidate.reasons.end(), words.begin(), words.end());
}

Verdict verdict_of(const Candidate& candidate) {
  using Found = Condition::Found;
  if (candidate.rejection) return Verdict::not_feasible;
  if (candidate.donor_state != DonorState::strong) return Verdict::not_judged;
  bool marginal = !candidate.doubts.empty();
  for (const Condition& condition : candidate.conditions) {
    if (condition.found == Found::unknown && condition.ask) return Verdict::not_judged;
    marginal = marginal || condition.found == Found::fails;
  }
  return marginal ? Verdict::marginal : Verdict::feasible;
}

}  // namespace

void give_verdict(Candidate& candidate) {
  candidate.verdict = verdict_of(candidate);
  if (candidate.rejection) {
    candidate.reasons = {candidate.rejected_because};
    return;
  }
  if (candidate.verdict == Verdict::not_judged) {
    if (candidate.donor_state != DonorState::strong && !candidate.donor_reasons.empty()) {
      candidate.examine_first.push_back(candidate.donor_reasons.front());
    }
    for (const Condition& condition : candidate.conditions) {
      if (condition.ask && condition.found == Condition::Found::unknown) {
        candidate.examine_first.push_back(condition.words);
      }
    }
  }
  add(candidate, candidate.donor_reasons);
  for (const Condition& condition : candidate.conditions) {
    candidate.reasons.push_back(condition.words);
  }
  add(candidate, candidate.doubts);
  if (!candidate.synergy_words.empty()) candidate.reasons.push_back(candidate.synergy_words);
  add(candidate, candidate.timing);
  if (candidate.longest_delay_months) {
    candidate.reasons.push_back(
        fmt::format("longest delay in the series {:.0f} months", *candidate.longest_delay_months));
  }
  add(candidate, candidate.said);
}

}  // namespace endplate::transfer
