#include "models/plan/function_groups.hpp"
#include "models/plan/series.hpp"
#include "models/transfer/judge.hpp"

namespace endplate::plan {

Transfers tendon_transfers(const Situation& now, const evidence::DataPackage& package) {
  Transfers result;
  for (const auto& judged : transfer::tendon_candidates(now, package, {})) {
    if (!is_listed(judged)) {
      // One for another palsy is not thought of.
      if (judged.rejection != transfer::Rejection::other_lesion) reject(result, judged);
      continue;
    }
    FunctionGroup& group = group_of(result, *transfer::function_row(package, judged.function), now);
    for (const std::string& target : judged.targets) add_target(group, target);
    Candidate candidate = taken_from(judged);
    candidate.published = published_tendon(package, judged.id);
    if (judged.synergy == transfer::Synergy::antagonist) {
      candidate.reasons.push_back(judged.synergy_words);
    }
    group.candidates.push_back(std::move(candidate));
  }
  put_in_order(result);
  return result;
}

std::optional<Candidate> shoulder_fusion(const Situation& now) {
  const anatomy::Anatomy& anatomy = now.anatomy();
  for (const char* id : {"DEL-A", "DEL-C", "SS", "IS"}) {
    if (!now.muscle_lost(*anatomy.find_muscle(id))) return std::nullopt;
  }
  Candidate candidate;
  candidate.id = "shoulder_fusion";
  candidate.donor = "movement of the shoulder blade";
  candidate.recipient = "the fused arm";
  candidate.donor_state = DonorState::strong;
  for (const char* id : {"TRAP-U", "SA"}) {
    std::string why;
    const DonorState state = now.donor(*anatomy.find_muscle(id), why);
    candidate.reasons.push_back("what carries the fused arm: " + why);
    if (state == DonorState::not_judged && candidate.donor_state == DonorState::strong) {
      candidate.donor_state = state;
    } else if (state == DonorState::weak || state == DonorState::dead) {
      candidate.donor_state = DonorState::weak;
    }
  }
  return candidate;
}

}  // namespace endplate::plan
