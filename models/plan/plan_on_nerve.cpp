#include <fmt/format.h>

#include <algorithm>

#include "models/plan/graft.hpp"
#include "models/plan/planner.hpp"
#include "models/plan/series.hpp"

namespace endplate::plan {
namespace {

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

}  // namespace

std::optional<Error> Planner::add_nerve_option(OptionRow& row) {
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

std::string Planner::done_or(const std::string& kind) const {
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

bool Planner::partial() const {
  return std::ranges::any_of(answer_.recovery.facts, [](const recovery::DecisionFacts& facts) {
    return facts.completeness == recovery::Completeness::partial;
  });
}

std::optional<double> Planner::gap_mm() const {
  std::optional<double> gap;
  for (const casefile::Operation& operation : patient_.operations) {
    if (operation.gap_after_resection_mm) gap = operation.gap_after_resection_mm;
  }
  return gap;
}

std::optional<Error> Planner::run(Option& option, const std::string& procedure) {
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

void Planner::by_action_potential(OptionRow& row) const {
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

void Planner::mention_torn_roots(OptionRow& row) const {
  if (torn_.empty()) return;
  row.option.reasons.push_back(
      fmt::format("nothing of the kind for {}: torn from the cord", fmt::join(torn_, ", ")));
  if (whole_roots_.empty()) {
    row.option.state = OptionState::closed;
    row.option.state_words = "the root is torn from the cord: there is nothing to join";
  }
}

void Planner::mark_unlikely(Option& option) {
  if (!option.model_chance || option.model_chance->chance >= kUnlikely) return;
  option.state = OptionState::unlikely;
  option.state_words = "the model gives it less than one chance in five today";
}

void Planner::add_grafts(Option& option) const {
  for (const std::string& nerve : whole_roots_) {
    GraftNeed need = graft_need(*now_, package_, nerve, is_plexus(anatomy_.tree(), nerve));
    for (const GraftDonor& donor : need.donors) {
      if (donor.nerve == "sural nerve") option.donor_cost = donor.cost;
    }
    option.grafts.push_back(std::move(need));
  }
}

}  // namespace endplate::plan
