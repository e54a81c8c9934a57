#include "models/plan/plan.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "models/plan/planner.hpp"
#include "models/plan/what_if.hpp"

namespace endplate::plan {
namespace {

// The spread of branch points and the way of a transfer need no more limbs than this.
constexpr int kMostLimbs = 400;

}  // namespace

bool is_plexus(const anatomy::NerveTree& tree, const std::string& nerve) {
  const auto node = tree.find(nerve);
  if (!node) return false;
  using enum anatomy::NodeKind;
  const anatomy::NodeKind kind = tree.node(*node).kind;
  return kind == root || kind == trunk || kind == division || kind == cord;
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

Planner::Planner(const casefile::Case& patient, const evidence::DataPackage& package,
                 const recovery::RecoveryOptions& options, const anatomy::Anatomy& anatomy,
                 const recovery::Parameters& parameters, recovery::RecoveryAnswer base)
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

PlanAnswer Planner::without_model() {
  answer_.not_run = answer_.recovery.no_forecast;
  const std::string mechanism(recovery::mechanism_words(answer_.recovery.facts.front().mechanism));
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

Expected<PlanAnswer> Planner::with_model() {
  const auto limb = limb::CaseLimb::from(package_, anatomy_.tree(), patient_.limb);
  if (!limb) return std::unexpected(limb.error());
  const auto limbs = limb->sample(std::min(options_.samples, kMostLimbs), options_.seed);
  const auto now = Situation::of(patient_, anatomy_, *limb, limbs);
  if (!now) return std::unexpected(now.error());
  now_ = &*now;
  const Regrowth regrowth(anatomy_.tree(), package_, parameters_, *limb, limbs);
  const auto model = transfer::ReachModel::from(package_, anatomy_.tree(), patient_.limb,
                                                options_.samples, options_.seed);
  if (!model) return std::unexpected(model.error());
  const transfer::ReachJoiner joiner(package_, *now, *model, parameters_,
                                     transfer::days_since_injury(patient_, options_.today));
  const auto judged = transfer::judge_with_reach(*now, package_, joiner);
  if (!judged) return std::unexpected(judged.error());
  nerve_ = nerve_transfers(*judged, *now, package_, regrowth, today_days_, options_.seed);
  tendon_ = tendon_transfers(*judged, *now, package_);
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

void Planner::ask_what_if(const recovery::DecisionRules& rules) {
  answer_.what_if = what_would_change(rules, answer_.recovery.facts);
}

std::optional<Error> Planner::add(OptionRow& row) {
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

void Planner::push(Option option) {
  std::set<std::string> sources;
  for (const PublishedResult& result : option.published) sources.insert(result.row);
  for (const Candidate& candidate : option.candidates) {
    if (candidate.id != "shoulder_fusion") sources.insert(candidate.id);
    for (const PublishedResult& result : candidate.published) sources.insert(result.row);
  }
  option.sources.assign(sources.begin(), sources.end());
  answer_.options.push_back(std::move(option));
}

PlanAnswer Planner::finish() {
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

void Planner::ask_at_operation() {
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
