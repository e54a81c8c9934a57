#include <fmt/format.h>

#include <map>

#include "models/plan/function_groups.hpp"
#include "models/transfer/judge.hpp"

namespace endplate::plan {
namespace {

using evidence::Row;

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
  NerveTransfers(const Situation& now, const evidence::DataPackage& package,
                 const Regrowth& regrowth, double today_days, std::uint64_t seed)
      : now_(now), package_(package), regrowth_(regrowth), today_days_(today_days), seed_(seed) {}

  Transfers answer() {
    for (const auto& judged : transfer::nerve_candidates(now_, package_, {today_days_})) {
      if (is_listed(judged)) {
        add(judged);
      } else {
        reject(result_, judged);
      }
    }
    put_in_order(result_);
    mention_conflicts();
    return std::move(result_);
  }

 private:
  void add(const transfer::Candidate& judged) {
    FunctionGroup& group =
        group_of(result_, *transfer::function_row(package_, judged.function), now_);
    for (const std::string& target : judged.targets) add_target(group, target);
    Candidate candidate = taken_from(judged);
    candidate.published = judged.results;
    if (judged.through_graft) {
      candidate.reasons.emplace_back(
          "the axons grow through a graft of unknown length first: no time and no chance of the "
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

  void mention_conflicts() {
    std::map<std::string, Candidate*, std::less<>> by_id;
    for (FunctionGroup& group : result_.groups) {
      for (Candidate& candidate : group.candidates) by_id[candidate.id] = &candidate;
    }
    for (const Row row : package_.table("transfer_conflicts")) {
      const auto a = by_id.find(row.text("a"));
      const auto b = by_id.find(row.text("b"));
      if (a == by_id.end() || b == by_id.end()) continue;
      a->second->reasons.push_back(
          fmt::format("not together with {}: {}", b->first, row.text("reason")));
      b->second->reasons.push_back(
          fmt::format("not together with {}: {}", a->first, row.text("reason")));
    }
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  const Regrowth& regrowth_;
  double today_days_;
  std::uint64_t seed_;
  Transfers result_;
};

}  // namespace

Transfers nerve_transfers(const Situation& now, const evidence::DataPackage& package,
                          const Regrowth& regrowth, double today_days, std::uint64_t seed) {
  return NerveTransfers(now, package, regrowth, today_days, seed).answer();
}

}  // namespace endplate::plan
