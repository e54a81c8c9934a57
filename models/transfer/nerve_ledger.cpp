#include <fmt/ranges.h>

#include <algorithm>
#include <set>

#include "models/transfer/axon_ratio.hpp"
#include "models/transfer/conditions.hpp"
#include "models/transfer/donor.hpp"
#include "models/transfer/functions.hpp"
#include "models/transfer/judge.hpp"
#include "models/transfer/recipient_piece.hpp"
#include "models/transfer/spends.hpp"
#include "models/transfer/supercharged.hpp"
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
    auto recipients = nodes(row, "recipient_node", now_.anatomy().tree());
    cut(row, rule, made);
    const JudgedDonor donor = judge_donor(row, rule, made.skin, now_);
    made.donor_state = donor.state;
    made.donor_reasons.push_back(donor.why);
    made.conditions = conditions_of(made.id, package_, now_);
    name_targets(function, recipients, made);
    // A lesion for which nobody published it is the plainer reason.
    if (made.rejection == Rejection::cuts_working && is_for_another_lesion(rule)) {
      reject(made, Rejection::other_lesion, std::string(rule->text("needs_lost_words")));
    }
    // A skin nerve, or one sewn to its side, takes no muscle away.
    if (!made.skin && made.coaptation != Coaptation::end_to_side) spend(made);
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
    made.spends = made.donor_muscles;
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

  // The lost muscles (or areas) that it is for; a rejection where one that works would be cut. Of
  // several recipients of which one is enough those are left out with which that would happen.
  void name_targets(const std::optional<Row>& function, std::vector<NodeIndex>& recipients,
                    Candidate& made) const {
    const auto name = [&](std::size_t target) {
      return made.skin ? now_.anatomy().areas()[target].name : now_.muscle_name(target);
    };
    const auto key = [&](std::size_t target) {
      return made.skin ? now_.anatomy().areas()[target].name : now_.anatomy().muscles()[target].id;
    };
    // A recipient far up feeds more muscles than those of the function.
    const auto wanted = function ? function->list("lost_when") : std::vector<std::string>{};
    const auto is_wanted = [&](std::size_t target) {
      return wanted.empty() || std::ranges::find(wanted, key(target)) != wanted.end();
    };
    std::set<std::size_t> lost;
    std::optional<std::pair<Rejection, std::string>> why;
    std::vector<NodeIndex> sewn;
    for (const NodeIndex node : recipients) {
      std::set<std::size_t> here;
      std::optional<std::size_t> works;
      for (const std::size_t target :
           made.skin ? now_.areas_below(node) : now_.muscles_below(node)) {
        const bool kept = made.skin ? now_.area_kept(target) : now_.muscle_kept(target);
        if (kept && !works) works = target;
        if (made.skin ? now_.area_lost(target) : now_.muscle_lost(target)) here.insert(target);
      }
      // A recipient that is joined by its side is not cut.
      if (works && made.coaptation != Coaptation::supercharged) {
        if (made.skin || std::ranges::none_of(here, is_wanted)) {
          if (!why) why.emplace(Rejection::not_lost, fmt::format("{} is not lost", name(*works)));
          continue;
        }
        auto beyond = sewn_beyond(node, now_);
        if (!beyond) {
          if (!why || why->first == Rejection::not_lost) {
            why.emplace(Rejection::cuts_working,
                        fmt::format("{} still works and would be cut with the {}", name(*works),
                                    now_.anatomy().tree().node(node).name));
          }
          continue;
        }
        std::erase_if(here, [&](std::size_t muscle) {
          const std::string& branch =
              now_.anatomy().tree().node(now_.anatomy().muscles()[muscle].branch).name;
          return std::ranges::find(beyond->targets, branch) == beyond->targets.end();
        });
        made.said.push_back(fmt::format("sewn to the {} beyond what works: {}", beyond->recipient,
                                        fmt::join(beyond->working, ", ")));
        sewn.push_back(*now_.anatomy().tree().find(beyond->recipient));
        made.sewn_beyond.push_back(std::move(*beyond));
      } else {
        sewn.push_back(node);
      }
      lost.insert(here.begin(), here.end());
    }
    const bool every = made.together != Together::one || recipients.size() == 1;
    if (why && (every || sewn.empty())) return reject(made, why->first, why->second);
    if (why || !made.sewn_beyond.empty()) {
      recipients = std::move(sewn);
      made.recipient_nodes.clear();
      for (const NodeIndex node : recipients) {
        made.recipient_nodes.push_back(now_.anatomy().tree().node(node).name);
      }
    }
    if (made.coaptation == Coaptation::supercharged) supercharge(recipients, made);
    if (made.rejection) return;
    for (const std::size_t target : lost) {
      if (!is_wanted(target)) continue;
      made.targets.push_back(name(target));
      made.target_keys.push_back(key(target));
    }
    if (!function) return reject(made, Rejection::not_lost, "no function of the tables");
    if (made.targets.empty()) {
      reject(made, Rejection::not_lost, "none of what it feeds is known to be lost");
    }
  }

  // Whether this lesion leaves or gives the recipient axons of its own.
  void supercharge(const std::vector<NodeIndex>& recipients, Candidate& made) const {
    std::vector<std::size_t> below;
    for (const NodeIndex node : recipients) {
      const auto muscles = now_.muscles_below(node);
      below.insert(below.end(), muscles.begin(), muscles.end());
    }
    SuperchargedFor indication = supercharged_for(made.id, below, package_, now_);
    if (indication.found == Condition::Found::fails) {
      return reject(made, Rejection::other_lesion, std::move(indication.words));
    }
    made.sources.insert(made.sources.end(), indication.sources.begin(), indication.sources.end());
    made.said.insert(made.said.begin(), indication.said.begin(), indication.said.end());
    Condition condition;
    condition.found = indication.found;
    condition.words = std::move(indication.words);
    made.conditions.push_back(std::move(condition));
  }

  // The tendon and muscle transfers that need the same muscle.
  void spend(Candidate& made) const {
    made.also_spends = tendon_options_spent(made.spends, "", package_, now_);
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

  bool is_for_another_lesion(const std::optional<Row>& rule) const {
    if (!rule) return false;
    const auto needed = rule->list("needs_lost");
    return !std::ranges::all_of(needed, [&](const std::string& id) {
      return now_.muscle_lost(*now_.anatomy().find_muscle(id));
    });
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
    if (is_for_another_lesion(rule)) {
      return reject(made, Rejection::other_lesion, std::string(rule->text("needs_lost_words")));
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
