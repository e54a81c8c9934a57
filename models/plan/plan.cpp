#include "models/plan/plan.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "models/plan/graft.hpp"
#include "models/plan/option_rows.hpp"
#include "models/plan/series.hpp"
#include "models/plan/transfers.hpp"
#include "models/plan/what_if.hpp"

namespace endplate::plan {
namespace {

using recovery::RecoveryAnswer;

// The spread of branch points and the way of a transfer need no more limbs than this.
constexpr int kMostLimbs = 400;
// As the curve of operation dates: less than one chance in five is unlikely.
constexpr double kUnlikely = 0.2;

bool is_plexus(const anatomy::NerveTree& tree, const std::string& nerve) {
  const auto node = tree.find(nerve);
  if (!node) return false;
  using enum anatomy::NodeKind;
  const anatomy::NodeKind kind = tree.node(*node).kind;
  return kind == root || kind == trunk || kind == division || kind == cord;
}

// The case with its planned operations replaced by `procedure` on every injury today; empty:
// without any operation that is only planned.
casefile::Case with_operation(const casefile::Case& patient, const std::string& procedure,
                              casefile::Date today) {
  casefile::Case changed = patient;
  std::optional<double> gap_mm;
  for (const casefile::Operation& operation : patient.operations) {
    if (operation.gap_after_resection_mm) gap_mm = operation.gap_after_resection_mm;
  }
  std::erase_if(changed.operations, [](const casefile::Operation& operation) {
    return operation.state == casefile::OperationState::planned;
  });
  if (procedure.empty()) return changed;
  casefile::Operation operation;
  operation.date = today;
  operation.state = casefile::OperationState::planned;
  operation.gap_after_resection_mm = procedure == "graft" ? gap_mm : std::nullopt;
  casefile::Procedure done;
  done.procedure = procedure;
  operation.done.push_back(std::move(done));
  changed.operations.push_back(std::move(operation));
  return changed;
}

// Anywhere between two days with even chance.
Summary between(double low, double high) {
  const double width = high - low;
  return {0.5 * (low + high), width / std::sqrt(12.0), low + 0.05 * width, 0.5 * (low + high),
          low + 0.95 * width};
}

std::optional<std::string> action_potential(const casefile::Case& patient) {
  std::optional<std::string> found;
  for (const casefile::Operation& operation : patient.operations) {
    if (operation.state == casefile::OperationState::done && operation.nerve_action_potential) {
      found = operation.nerve_action_potential;
    }
  }
  return found;
}

class Planner {
 public:
  Planner(const casefile::Case& patient, const evidence::DataPackage& package,
          const recovery::RecoveryOptions& options, const anatomy::Anatomy& anatomy,
          const recovery::Parameters& parameters, RecoveryAnswer base)
      : patient_(patient),
        package_(package),
        options_(options),
        anatomy_(anatomy),
        parameters_(parameters) {
    answer_.recovery = std::move(base);
    for (const recovery::RecoveryLesion& lesion : answer_.recovery.lesions) {
      nerves_.insert(lesion.nerve);
      if (is_plexus(anatomy_.tree(), lesion.nerve)) nerves_.insert("plexus");
      if (lesion.nerve.find("digital") != std::string::npos) nerves_.insert("digital nerve");
      if (lesion.preganglionic) {
        torn_.push_back(lesion.nerve);
      } else if (std::ranges::find(whole_roots_, lesion.nerve) == whole_roots_.end()) {
        whole_roots_.push_back(lesion.nerve);
      }
    }
    for (const recovery::DecisionFacts& facts : answer_.recovery.facts) {
      mechanisms_.emplace(recovery::mechanism_words(facts.mechanism));
    }
    if (const auto& date = answer_.recovery.injury_date) {
      today_days_ = recovery::days_between(*date, options_.today);
    }
  }

  // Without a forecast: what the decision says, the entry conditions, and no chance.
  PlanAnswer without_model() {
    answer_.not_run = answer_.recovery.no_forecast;
    const std::string mechanism(
        recovery::mechanism_words(answer_.recovery.facts.front().mechanism));
    auto rows = option_rows(package_, answer_.recovery.decision, false, mechanism);
    if (rows.empty()) {
      for (OptionRow& row : option_rows(package_, answer_.recovery.decision, true, mechanism)) {
        if (row.option.kind == "explore" || row.option.kind == "observe" || row.option.first) {
          rows.push_back(std::move(row));
        }
      }
    }
    for (OptionRow& row : rows) answer_.options.push_back(std::move(row.option));
    return finish();
  }

  Expected<PlanAnswer> with_model() {
    const auto limb = limb::CaseLimb::from(package_, anatomy_.tree(), patient_.limb);
    if (!limb) return std::unexpected(limb.error());
    const auto limbs = limb->sample(std::min(options_.samples, kMostLimbs), options_.seed);
    const auto now = Situation::of(patient_, anatomy_, *limb, limbs);
    if (!now) return std::unexpected(now.error());
    now_ = &*now;
    const Regrowth regrowth(anatomy_.tree(), package_, parameters_, *limb, limbs);
    nerve_ = nerve_transfers(*now, package_, regrowth, today_days_, options_.seed);
    tendon_ = tendon_transfers(*now, package_);
    for (OptionRow& row : option_rows(package_, answer_.recovery.decision, true, "")) {
      if (const auto problem = add(row)) return std::unexpected(*problem);
    }
    for (auto* transfers : {&nerve_, &tendon_}) {
      answer_.rejected.insert(answer_.rejected.end(), transfers->rejected.begin(),
                              transfers->rejected.end());
    }
    answer_.assumptions.emplace_back(
        "repair, graft and transfer are reckoned as done today, each on every lesion that it can "
        "mend");
    return finish();
  }

  void ask_what_if(const recovery::DecisionRules& rules) {
    answer_.what_if = what_would_change(rules, answer_.recovery.facts);
  }

 private:
  std::optional<Error> add(OptionRow& row) {
    const std::string kind = row.option.kind;
    if (kind == "nerve transfer") {
      add_groups(row, nerve_, [](const FunctionGroup&, const Candidate&) { return true; });
    } else if (kind == "tendon transfer" || kind == "salvage") {
      if (row.id == "shoulder_fusion") {
        add_fusion(row);
      } else {
        add_groups(row, tendon_, [&](const FunctionGroup& group, const Candidate& candidate) {
          const bool free = candidate.id.starts_with("free_");
          const bool hand = group.region == "hand";
          if (row.id == "free_muscle") return free;
          return !free && (kind == "tendon transfer") == hand;
        });
      }
    } else {
      return add_nerve_option(row);
    }
    return std::nullopt;
  }

  // Explore, observe, neurolysis, repair and graft: what is done to the injured nerve itself.
  std::optional<Error> add_nerve_option(OptionRow& row) {
    Option& option = row.option;
    for (const recovery::RecoveryTarget& target : answer_.recovery.targets) {
      option.targets.push_back((target.kind == recovery::TargetKind::sensory ? "skin: " : "") +
                               target.name);
    }
    // Who waits after a repair or graft is no unoperated palsy any more.
    const std::string kind = option.kind == "observe" ? done_or(option.kind) : option.kind;
    option.published = published_series(package_, {kind, nerves_, mechanisms_, "", {}});
    by_action_potential(row);
    const bool mends = option.kind == "direct repair" || option.kind == "cable graft";
    if (mends || option.kind == "neurolysis") mention_torn_roots(row);
    if (mends && partial()) {
      option.reasons.emplace_back("only of the part that is dead: what works is kept");
    }
    if (mends && option.state != OptionState::closed) {
      if (auto problem = run(option, option.kind == "cable graft" ? "graft" : "repair")) {
        return problem;
      }
      if (!row.decided || option.state == OptionState::open) mark_unlikely(option);
    }
    if (option.kind == "observe") {
      if (auto problem = run(option, "")) return problem;
    }
    if (option.kind == "direct repair" && !nerves_.contains("plexus")) {
      for (const std::string& nerve : whole_roots_) {
        for (std::string& words : gap_closing(package_, nerve, gap_mm())) {
          option.reasons.push_back(std::move(words));
        }
      }
    }
    if (option.kind == "cable graft") add_grafts(option);
    push(std::move(row.option));
    return std::nullopt;
  }

  std::string done_or(const std::string& kind) const {
    switch (answer_.recovery.facts.front().operation) {
      case recovery::OperationDone::repair:
        return "direct repair";
      case recovery::OperationDone::graft:
        return "cable graft";
      case recovery::OperationDone::none:
      case recovery::OperationDone::other:
        break;
    }
    return kind;
  }

  bool partial() const {
    return std::ranges::any_of(answer_.recovery.facts, [](const recovery::DecisionFacts& facts) {
      return facts.completeness == recovery::Completeness::partial;
    });
  }

  std::optional<double> gap_mm() const {
    std::optional<double> gap;
    for (const casefile::Operation& operation : patient_.operations) {
      if (operation.gap_after_resection_mm) gap = operation.gap_after_resection_mm;
    }
    return gap;
  }

  std::optional<Error> run(Option& option, const std::string& procedure) {
    const auto result = recovery::recover(with_operation(patient_, procedure, options_.today),
                                          package_, anatomy_.tree(), options_);
    if (!result) return result.error();
    std::string how = procedure.empty() ? "without an operation" : procedure + " today";
    if (procedure.empty() && !result->lesions.empty() && result->lesions.front().repaired) {
      how = "after the repair that was done";
    }
    Regrown regrown = summarise(*result, how);
    option.model_chance = std::move(regrown.chance);
    option.first_movement = std::move(regrown.first_movement);
    return std::nullopt;
  }

  void by_action_potential(OptionRow& row) const {
    const auto found = action_potential(patient_);
    if (!found) return;
    Option& option = row.option;
    const bool crosses = *found != "absent";
    const bool mends = option.kind == "direct repair" || option.kind == "cable graft";
    if (option.kind == "neurolysis") {
      option.state = crosses ? OptionState::open : OptionState::closed;
      option.state_words = crosses ? "an action potential crossed at operation"
                                   : "no action potential crossed at operation";
    } else if (mends && crosses) {
      option.state = OptionState::closed;
      option.state_words = "an action potential crossed at operation: resection would lose it";
    }
  }

  void mention_torn_roots(OptionRow& row) const {
    if (torn_.empty()) return;
    row.option.reasons.push_back(
        fmt::format("nothing of the kind for {}: torn from the cord", fmt::join(torn_, ", ")));
    if (whole_roots_.empty()) {
      row.option.state = OptionState::closed;
      row.option.state_words = "the root is torn from the cord: there is nothing to join";
    }
  }

  static void mark_unlikely(Option& option) {
    if (!option.model_chance || option.model_chance->chance >= kUnlikely) return;
    option.state = OptionState::unlikely;
    option.state_words = "the model gives it less than one chance in five today";
  }

  void add_grafts(Option& option) const {
    for (const std::string& nerve : whole_roots_) {
      GraftNeed need = graft_need(*now_, package_, nerve, is_plexus(anatomy_.tree(), nerve));
      for (const GraftDonor& donor : need.donors) {
        if (donor.nerve == "sural nerve") option.donor_cost = donor.cost;
      }
      option.grafts.push_back(std::move(need));
    }
  }

  template <class Takes>
  void add_groups(const OptionRow& row, const Transfers& transfers, const Takes& takes) {
    for (const FunctionGroup& group : transfers.groups) {
      Option option = row.option;
      option.name = fmt::format("{}: {}", row.option.name, group.function);
      option.targets = group.targets;
      for (const Candidate& candidate : group.candidates) {
        if (takes(group, candidate)) option.candidates.push_back(candidate);
      }
      if (option.candidates.empty()) continue;
      finish_group(row, group, option);
    }
  }

  void finish_group(const OptionRow& row, const FunctionGroup& group, Option& option) {
    const Candidate& best = option.candidates.front();
    if (group.priority) option.reasons.emplace_back("the case names it as a priority");
    if (option.kind == "nerve transfer") {
      SeriesQuestion series{option.kind, nerves_, mechanisms_, group.function, {}};
      for (const Candidate& candidate : option.candidates) series.transfers.push_back(candidate.id);
      option.published = published_series(package_, series);
      option.first_movement = best.first_movement;
      option.model_chance = best.model_chance;
    }
    if (option.published.empty()) option.published = of_candidates(option.candidates);
    if (row.first_days_low) {
      option.first_movement = FirstMovement{
          between(today_days_ + *row.first_days_low, today_days_ + *row.first_days_high),
          fmt::format("operated today, when the cast or splint comes off, {:.0f} to {:.0f} days "
                      "later; evenly spread between them (assumed)",
                      *row.first_days_low, *row.first_days_high)};
    }
    std::set<std::string> costs;
    for (const Candidate& candidate : option.candidates) {
      if (!candidate.donor_cost.empty() && costs.insert(candidate.donor_cost).second &&
          costs.size() <= 2) {
        option.donor_cost += (option.donor_cost.empty() ? "" : " ") + candidate.donor_cost;
      }
    }
    if (option.kind == "nerve transfer" && (!row.decided || option.state == OptionState::open)) {
      mark_unlikely(option);
    }
    if (group.region == "skin" && option.state == OptionState::unlikely) {
      option.state = OptionState::later;
      option.state_words = "for protective feeling, which has no such end of time as a muscle";
    }
    if (best.donor_state != DonorState::strong) {
      if (option.state == OptionState::open) {
        option.state = OptionState::not_judged;
        option.state_words.clear();
      }
      option.state_words += option.state_words.empty() ? "" : "; ";
      option.state_words += "examine the donors first: none of them was shown to work";
    }
    push(std::move(option));
  }

  // The largest series among the ways whose donor is as good as the best one's.
  static std::vector<PublishedResult> of_candidates(const std::vector<Candidate>& candidates) {
    const Candidate* largest = nullptr;
    for (const Candidate& candidate : candidates) {
      if (candidate.donor_state != candidates.front().donor_state) break;
      if (candidate.published.empty()) continue;
      const double n = candidate.published.front().n.value_or(0.0);
      if (largest == nullptr || n > largest->published.front().n.value_or(0.0)) {
        largest = &candidate;
      }
    }
    return largest == nullptr ? std::vector<PublishedResult>{} : largest->published;
  }

  void add_fusion(const OptionRow& row) {
    const auto fusion = shoulder_fusion(*now_);
    if (!fusion) return;
    Option option = row.option;
    option.targets = {"position of the arm"};
    option.candidates.push_back(*fusion);
    if (fusion->donor_state == DonorState::not_judged) {
      option.state = OptionState::not_judged;
      option.state_words = "examine trapezius and serratus anterior first";
    } else if (fusion->donor_state != DonorState::strong) {
      option.state = OptionState::closed;
      option.state_words = "what would carry the fused arm does not work";
    }
    push(std::move(option));
  }

  void push(Option option) {
    std::set<std::string> sources;
    for (const PublishedResult& result : option.published) sources.insert(result.row);
    for (const Candidate& candidate : option.candidates) {
      if (candidate.id != "shoulder_fusion") sources.insert(candidate.id);
      for (const PublishedResult& result : candidate.published) sources.insert(result.row);
    }
    option.sources.assign(sources.begin(), sources.end());
    answer_.options.push_back(std::move(option));
  }

  PlanAnswer finish() {
    std::ranges::stable_sort(answer_.options, std::ranges::greater{}, &Option::first);
    std::set<std::string> sources(answer_.recovery.sources.begin(), answer_.recovery.sources.end());
    std::set<std::string> groups;
    for (const Option& option : answer_.options) {
      sources.insert(option.sources.begin(), option.sources.end());
      if (option.published.empty() || !groups.insert(option.comparable_group).second) continue;
      answer_.not_ranked.push_back(
          fmt::format("{}: {}", option.comparable_group, option.comparable_words));
    }
    answer_.sources.assign(sources.begin(), sources.end());
    const auto& all = answer_.recovery.assumptions;
    answer_.assumptions.insert(answer_.assumptions.begin(), all.begin(), all.end());
    ask_at_operation();
    return std::move(answer_);
  }

  // What the operation itself would show is no fact of the rules before it.
  void ask_at_operation() {
    const bool explores = std::ranges::any_of(answer_.options, [](const Option& option) {
      return option.first && option.kind == "explore";
    });
    if (!explores || action_potential(patient_) || !answer_.not_run.empty()) return;
    answer_.what_if.push_back({"action potential at operation", "crosses the lesion",
                               "Neurolysis only, then wait with dates", "neurolysis"});
    answer_.what_if.push_back({"action potential at operation", "does not cross the lesion",
                               "Resect to healthy fascicles, then repair, graft or transfer",
                               "direct_repair;cable_graft;nerve_transfer"});
  }

  const casefile::Case& patient_;
  const evidence::DataPackage& package_;
  const recovery::RecoveryOptions& options_;
  const anatomy::Anatomy& anatomy_;
  const recovery::Parameters& parameters_;

  PlanAnswer answer_;
  const Situation* now_ = nullptr;
  Transfers nerve_;
  Transfers tendon_;
  std::set<std::string> nerves_;  // injured, and "plexus"
  std::set<std::string, std::less<>> mechanisms_;
  std::vector<std::string> torn_;         // roots
  std::vector<std::string> whole_roots_;  // injured nerves that can be joined
  double today_days_ = 0.0;
};

}  // namespace

Expected<PlanAnswer> plan(const casefile::Case& patient, const evidence::DataPackage& package,
                          const recovery::RecoveryOptions& options) {
  const auto anatomy = anatomy::Anatomy::from(package);
  if (!anatomy) return std::unexpected(anatomy.error());
  auto base = recovery::recover(patient, package, anatomy->tree(), options);
  if (!base) return std::unexpected(base.error());
  const auto parameters = recovery::Parameters::from(package);
  if (!parameters) return std::unexpected(parameters.error());
  const auto rules = recovery::DecisionRules::from(package);
  if (!rules) return std::unexpected(rules.error());
  const bool runs = base->no_forecast.empty();
  Planner planner(patient, package, options, *anatomy, *parameters, std::move(*base));
  planner.ask_what_if(*rules);
  if (!runs) return planner.without_model();
  return planner.with_model();
}

}  // namespace endplate::plan
