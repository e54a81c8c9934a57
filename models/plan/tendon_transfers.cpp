#include "models/plan/function_groups.hpp"
#include "models/plan/series.hpp"

namespace endplate::plan {

Transfers tendon_transfers(const transfer::JudgedTransfers& judged, const Situation& now,
                           const evidence::DataPackage& package) {
  Transfers result;
  for (const transfer::TransferGroup& judged_group : judged.groups) {
    for (const transfer::TransferCandidate& one : judged_group.candidates) {
      if (one.judged.way != transfer::Way::tendon) continue;
      FunctionGroup& group =
          group_of(result, *transfer::function_row(package, one.judged.function), now);
      for (const std::string& target : one.judged.targets) add_target(group, target);
      Candidate candidate = taken_from(one);
      candidate.published = published_tendon(package, one.judged.id);
      group.candidates.push_back(std::move(candidate));
    }
  }
  reject_all(result, judged, transfer::Way::tendon);
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
  using enum transfer::Verdict;
  switch (candidate.donor_state) {
    case DonorState::strong:
      candidate.verdict = feasible;
      break;
    case DonorState::not_judged:
      candidate.verdict = not_judged;
      candidate.examine_first = {"trapezius and serratus anterior, which carry the fused arm"};
      break;
    case DonorState::weak:
    case DonorState::dead:
      candidate.verdict = not_feasible;
      break;
  }
  return candidate;
}

}  // namespace endplate::plan
