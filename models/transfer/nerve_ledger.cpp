#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/transfer/axon_ratio.hpp"
#include "models/transfer/conditions.hpp"
#include "models/transfer/donor.hpp"
#include "models/transfer/functions.hpp"
#include "models/transfer/judge.hpp"
#include "models/transfer/timing.hpp"
#include "models/transfer/verdict.hpp"

namespace endplate::transfer {
namespace {

using anatomy::NodeIndex;
using evidence::Row;

constexpr double kAdultYears = 18.0;

Coaptation coaptation_of(std::string_view words) {
  if (words.contains("supercharged")) return Coaptation::supercharged;
  return words.contains("end-to-side") ? Coaptation::end_to_side : Coaptation::end_to_end;
}

class NerveLedger {
 public:
  NerveLedger(const Situation& now, const evidence::DataPackage& package,
              const JudgeOptions& options)
      : now_(now), package_(package), options_(options) {}

  Candidate candidate(const Row& row) const {
    const auto function = function_row(package_, row.text("function_restored"));
    const auto rule = donor_rule(package_, row.text("id"));
    Candidate made = described(row, rule);
    made.skin = function && function->text("region") == "skin";
    const auto recipients = nodes(row, "recipient_node", now_.anatomy().tree());
    cut(row, rule, made);
    const JudgedDonor donor = judge_donor(row, rule, made.skin, now_);
    made.donor_state = donor.state;
    made.donor_reasons.push_back(donor.why);
    made.conditions = conditions_of(made.id, package_, now_);
    name_targets(function, recipients, made);
    // A skin nerve, or one sewn to its side, takes no muscle away.
    if (!made.skin && made.coaptation != Coaptation::end_to_side) spend(row, rule, made);
    say_timing(now_, package_, options_, made);
    doubt(row, rule, made);
    if (!made.rejection) refuse(row, rule, recipients, made);
    give_verdict(made);
    return made;
  }

 private:
  Candidate described(const Row& row, const std::optional<Row>& rule) const {
    Candidate made;
    made.id = row.text("id");
    made.function = row.text("function_restored");
    made.donor = fmt::format("{}, {}", row.text("donor_nerve"), row.text("donor_muscle_or_area"));
    made.recipient =
        fmt::format("{}, {}", row.text("recipient_nerve"), row.text("recipient_target"));
    made.what =
        fmt::format("{} to {}", row.text("donor_muscle_or_area"), row.text("recipient_target"));
    made.donor_nodes = row.list("donor_node");
    made.recipient_nodes = row.list("recipient_node");
    for (const std::string& id : donor_muscles(row, rule, now_)) made.donor_muscles.push_back(id);
    made.coaptation = coaptation_of(row.text("coaptation"));
    made.through_graft = row.text("coaptation").contains("graft") ||
                         (rule && rule->text("way") == "through a graft");
    if (rule && rule->text("together") == "all") made.together = Together::all;
    if (rule && rule->text("together") == "one of each nerve") {
      made.together = Together::one_of_each_nerve;
    }
    made.synergy = synergy_of(row.text("synergy"));
    made.synergy_words = relearning(made.synergy);
    made.donor_cost = without_stop(row.text("donor_downgrade"));
    made.axon_ratio = transfer::axon_ratio(row, package_);
    made.results = published_transfer(row);
    made.longest_delay_months = row.number("longest_delay_months");
    made.distance_mm = row.number("distance_to_target_mm");
    if (made.distance_mm) made.distance_from = "row";
    made.better_exists =
        row.text("contraindication_relative").find("better") != std::string_view::npos;
    const auto add = [&](const char* label, std::string_view words) {
      if (!words.empty()) made.said.push_back(fmt::format("{}: {}", label, without_stop(words)));
    };
    add("needs", row.text("prerequisites"));
    add("not with", row.text("contraindication_absolute"));
    add("rather not with", row.text("contraindication_relative"));
    made.study = row.text("study");
    made.provenance = row.text("provenance");
    made.sources.push_back(made.id);
    if (made.axon_ratio) {
      made.sources.insert(made.sources.end(), made.axon_ratio->rows.begin(),
                          made.axon_ratio->rows.end());
    }
    return made;
  }

  void cut(const Row& row, const std::optional<Row>& rule, Candidate& made) const {
    if (made.coaptation == Coaptation::end_to_side) return;
    const anatomy::NerveTree& tree = now_.anatomy().tree();
    for (const NodeIndex node : nodes(row, "donor_node", tree)) {
      Cut cut = cut_at(node, now_);
      const bool nothing = cut.muscles.empty() && cut.in_part.empty() && cut.areas.empty();
      // A fascicle is no branch of the tree: it takes a part of the muscles that judge it.
      if (nothing && rule && !tree.node(node).parents.empty()) {
        const auto beside = tree.descendants(tree.node(node).parents.front());
        for (const std::string& id : rule->list("muscles")) {
          const std::size_t muscle = *now_.anatomy().find_muscle(id);
          if (std::ranges::find(beside, now_.anatomy().muscles()[muscle].branch) != beside.end()) {
            cut.in_part.push_back(now_.muscle_name(muscle));
          }
        }
      }
      made.cuts.push_back(std::move(cut));
    }
  }

  // The lost muscles (or areas) that it is for; a rejection where one of them works.
  void name_targets(const std::optional<Row>& function, const std::vector<NodeIndex>& recipients,
                    Candidate& made) const {
    const auto name = [&](std::size_t target) {
      return made.skin ? now_.anatomy().areas()[target].name : now_.muscle_name(target);
    };
    const auto key = [&](std::size_t target) {
      return made.skin ? now_.anatomy().areas()[target].name : now_.anatomy().muscles()[target].id;
    };
    std::set<std::size_t> lost;
    for (const NodeIndex node : recipients) {
      for (const std::size_t target :
           made.skin ? now_.areas_below(node) : now_.muscles_below(node)) {
        if (made.skin ? now_.area_kept(target) : now_.muscle_kept(target)) {
          return reject(made, Rejection::not_lost, fmt::format("{} is not lost", name(target)));
        }
        if (made.skin ? now_.area_lost(target) : now_.muscle_lost(target)) lost.insert(target);
      }
    }
    // A recipient far up feeds more muscles than those of the function.
    const auto wanted = function ? function->list("lost_when") : std::vector<std::string>{};
    for (const std::size_t target : lost) {
      if (!wanted.empty() && std::ranges::find(wanted, key(target)) == wanted.end()) continue;
      made.targets.push_back(name(target));
      made.target_keys.push_back(key(target));
    }
    if (!function) return reject(made, Rejection::not_lost, "no function of the tables");
    if (made.targets.empty()) {
      reject(made, Rejection::not_lost, "none of what it feeds is known to be lost");
    }
  }

  // The tendon and muscle transfers that need the same muscle.
  void spend(const Row& row, const std::optional<Row>& rule, Candidate& made) const {
    const auto keys = donor_muscles(row, rule, now_);
    for (const Row tendon : package_.table("tendon_transfers")) {
      for (const std::string& condition : tendon.list("requires_examined")) {
        const auto end = condition.find(">=");
        if (end == std::string::npos || !keys.contains(condition.substr(0, end))) continue;
        if (auto words = tendon_option_words(package_, tendon, now_)) {
          made.also_spends.push_back(std::move(*words));
        }
        break;
      }
    }
  }

  void doubt(const Row& row, const std::optional<Row>& rule, Candidate& made) const {
    for (const std::string& id : donor_muscles(row, rule, now_)) {
      if (auto words = now_.doubt_by_emg(*now_.anatomy().find_muscle(id)); !words.empty()) {
        made.doubts.push_back(std::move(words));
      }
    }
    const std::string_view relative = row.text("contraindication_relative");
    if (relative.contains("phrenic palsy") && now_.sign_present("diaphragm palsy")) {
      made.doubts.emplace_back("the diaphragm of this side is paralysed");
    }
    const auto& age = now_.patient().limb.age_years;
    if (relative.contains("child") && age && *age < kAdultYears) {
      made.doubts.emplace_back("the patient is a child");
    }
  }

  void refuse(const Row& row, const std::optional<Row>& rule,
              const std::vector<NodeIndex>& recipients, Candidate& made) const {
    const anatomy::NerveTree& tree = now_.anatomy().tree();
    for (const NodeIndex node : recipients) {
      if (!now_.injured_at_or_below(node)) continue;
      return reject(made, Rejection::recipient_injured,
                    fmt::format("the injury lies on the {} itself, where it would be sewn, or "
                                "beyond",
                                tree.node(node).name));
    }
    if (rule && !rule->list("needs_lost").empty()) {
      const auto needed = rule->list("needs_lost");
      if (!std::ranges::all_of(needed, [&](const std::string& id) {
            return now_.muscle_lost(*now_.anatomy().find_muscle(id));
          })) {
        return reject(made, Rejection::other_lesion, std::string(rule->text("needs_lost_words")));
      }
    }
    if (made.coaptation != Coaptation::end_to_side) {
      for (const NodeIndex node : nodes(row, "donor_node", tree)) {
        if (!is_trunk(node, now_)) continue;
        return reject(made, Rejection::trunk,
                      fmt::format("the whole {} would be cut", tree.node(node).name));
      }
    }
    if (unavailable(row, rule, made)) return;
    if (made.donor_state == DonorState::dead) {
      return reject(made, Rejection::donor_dead, made.donor_reasons.front());
    }
    if (made.donor_state == DonorState::weak) {
      return reject(made, Rejection::donor_weak,
                    made.donor_reasons.front() + ": a donor of M4 or better is asked for");
    }
    for (const Condition& condition : made.conditions) {
      if (condition.absolute && condition.found == Condition::Found::fails) {
        return reject(made, Rejection::contraindicated, condition.words);
      }
    }
    for (const Condition& condition : made.conditions) {
      if (condition.refuse && condition.found == Condition::Found::unknown) {
        return reject(made, Rejection::not_shown, condition.words);
      }
    }
  }

  bool unavailable(const Row& row, const std::optional<Row>& rule, Candidate& made) const {
    for (const std::string& name : row.list("donor_node")) {
      if (now_.unavailable(name)) {
        reject(made, Rejection::unavailable, fmt::format("{} is not available in this case", name));
        return true;
      }
      if (name == "phrenic nerve" && now_.sign_present("diaphragm palsy")) {
        reject(made, Rejection::unavailable, "the diaphragm of this side is paralysed");
        return true;
      }
    }
    for (const std::string& id : donor_muscles(row, rule, now_)) {
      if (!now_.unavailable(id)) continue;
      reject(made, Rejection::unavailable,
             fmt::format("{} is not available in this case",
                         now_.muscle_name(*now_.anatomy().find_muscle(id))));
      return true;
    }
    return false;
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  const JudgeOptions& options_;
};

}  // namespace

std::vector<Candidate> nerve_candidates(const Situation& now, const evidence::DataPackage& package,
                                        const JudgeOptions& options) {
  const NerveLedger ledger(now, package, options);
  std::vector<Candidate> candidates;
  for (const Row row : package.table("transfers")) candidates.push_back(ledger.candidate(row));
  return candidates;
}

}  // namespace endplate::transfer
