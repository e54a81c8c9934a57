#include "models/plan/function_groups.hpp"

namespace endplate::plan {
namespace {

// As the series behind the chances were grouped (recovery_series.csv, column donor).
std::string_view donor_kind(std::string_view donor) {
  const std::string_view nerve = donor.substr(0, donor.find(','));
  if (nerve.contains("intercostal nerve")) return "intercostal donor";
  for (const std::string_view far : {"phrenic", "accessory", "contralateral"}) {
    if (nerve.contains(far)) return "distant donor";
  }
  return "near donor";
}

class NerveTransfers {
 public:
  NerveTransfers(const transfer::JudgedTransfers& judged, const Situation& now,
                 const evidence::DataPackage& package, const Regrowth& regrowth, double today_days,
                 std::uint64_t seed)
      : judged_(judged),
        now_(now),
        package_(package),
        regrowth_(regrowth),
        today_days_(today_days),
        seed_(seed) {}

  Transfers answer() {
    for (const transfer::TransferGroup& group : judged_.groups) {
      for (const transfer::TransferCandidate& one : group.candidates) {
        if (one.judged.way != transfer::Way::nerve) continue;
        if (one.judged.verdict != transfer::Verdict::not_feasible) add(one);
      }
    }
    reject_all(result_, judged_, transfer::Way::nerve);
    put_in_order(result_);
    return std::move(result_);
  }

 private:
  void add(const transfer::TransferCandidate& taken) {
    const transfer::Candidate& judged = taken.judged;
    FunctionGroup& group =
        group_of(result_, *transfer::function_row(package_, judged.function), now_);
    for (const std::string& target : judged.targets) add_target(group, target);
    Candidate candidate = taken_from(taken);
    candidate.published = judged.results;
    if (judged.through_graft) {
      candidate.reasons.emplace_back(
          "the axons grow through a graft first: no time and no chance of the "
          "model");
    } else {
      std::vector<anatomy::NodeIndex> recipients;
      for (const std::string& name : judged.recipient_nodes) {
        if (const auto node = now_.anatomy().tree().find(name)) recipients.push_back(*node);
      }
      const Regrown regrown =
          regrowth_.into(recipients, judged.target_keys, donor_kind(judged.donor), today_days_,
                         now_.patient().limb.age_years, seed_);
      candidate.first_movement = regrown.first_movement;
      candidate.model_chance = regrown.chance;
    }
    group.candidates.push_back(std::move(candidate));
  }

  const transfer::JudgedTransfers& judged_;
  const Situation& now_;
  const evidence::DataPackage& package_;
  const Regrowth& regrowth_;
  double today_days_;
  std::uint64_t seed_;
  Transfers result_;
};

}  // namespace

Transfers nerve_transfers(const transfer::JudgedTransfers& judged, const Situation& now,
                          const evidence::DataPackage& package, const Regrowth& regrowth,
                          double today_days, std::uint64_t seed) {
  return NerveTransfers(judged, now, package, regrowth, today_days, seed).answer();
}

}  // namespace endplate::plan
