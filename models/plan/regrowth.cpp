#include "models/plan/regrowth.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "models/recovery/forecast.hpp"

namespace endplate::plan {
namespace {

struct One {
  std::string name;
  bool motor = false;
  bool partial = false;
  const recovery::TargetForecast* forecast = nullptr;
};

Regrown summarise(const std::vector<One>& targets, std::string_view how) {
  Regrown result;
  for (const bool motor : {true, false}) {
    double sum = 0.0;
    int counted = 0;
    int reached = 0;
    std::string scale;
    for (const One& target : targets) {
      if (target.motor != motor || target.partial || !target.forecast->chance_useful) continue;
      sum += target.forecast->chance_useful->chance;
      scale = target.forecast->chance_useful->scale;
      ++counted;
      if (target.forecast->chance_useful->chance > 0.0) ++reached;
    }
    // Of a target that kept part of its axons nothing is known; zero would be said of the others.
    const bool any_partial = std::ranges::any_of(
        targets, [&](const One& target) { return target.motor == motor && target.partial; });
    if (counted == 0) continue;
    if (reached == 0 && any_partial) break;
    // What gets no axon from this operation, as below a torn root, does not count against it.
    const int of = reached > 0 ? reached : counted;
    result.chance = ModelChance{
        scale, sum / of,
        fmt::format(
            "mean over {} {}, {}{}", of,
            motor ? (of == 1 ? "muscle" : "muscles") : (of == 1 ? "skin area" : "skin areas"), how,
            of < counted ? fmt::format("; {} more get no axon from it", counted - of) : "")};
    break;
  }
  const One* first = nullptr;
  for (const One& target : targets) {
    if (!target.motor || target.partial || !target.forecast->first_movement_days) continue;
    if (first == nullptr ||
        target.forecast->first_movement_days->p50 < first->forecast->first_movement_days->p50) {
      first = &target;
    }
  }
  if (first != nullptr) {
    result.first_movement = FirstMovement{*first->forecast->first_movement_days,
                                          fmt::format("{}, {}", first->name, how)};
  }
  return result;
}

}  // namespace

Regrown summarise(const recovery::RecoveryAnswer& answer, std::string_view how) {
  std::vector<One> targets;
  for (const recovery::RecoveryTarget& target : answer.targets) {
    targets.push_back({target.name, target.kind == recovery::TargetKind::motor, target.partial,
                       &target.forecast});
  }
  return summarise(targets, how);
}

Regrown Regrowth::into(const std::vector<anatomy::NodeIndex>& recipients,
                       const std::vector<std::string>& wanted, std::string_view donor, double days,
                       std::optional<double> age_years, std::uint64_t seed) const {
  recovery::ForecastQuestion question;
  question.tree = &tree_;
  question.parameters = &parameters_;
  question.limbs = &limbs_;
  question.limb_columns = &limb_columns_;
  question.samples = limbs_.size();
  question.age_years = age_years;
  question.seed = seed;
  std::vector<anatomy::NervePosition> places;
  for (const anatomy::NodeIndex node : recipients) {
    recovery::LesionModel model;
    model.lesion.at = {node, 0.0};
    model.chance = {0.0, 0.0, 1.0};
    model.repaired = true;
    model.donor = donor;
    model.operation_days = days;
    places.push_back(model.lesion.at);
    question.lesions.push_back(model);
  }
  for (recovery::TargetBelow& below :
       recovery::targets_below(targets_, places, tree_, limb_.metrics())) {
    if (std::ranges::find(wanted, below.target.id) == wanted.end()) continue;
    question.targets.push_back(std::move(below));
  }
  if (question.targets.empty()) return {};
  const recovery::Forecast forecast = recovery::forecast(question);
  std::vector<One> targets;
  for (const recovery::TargetForecast& target : forecast.targets) {
    const recovery::TargetBelow& below = question.targets[target.target];
    targets.push_back(
        {below.target.name, below.target.kind == recovery::TargetKind::motor, false, &target});
  }
  return summarise(
      targets,
      "one coaptation today at the beginning of the receiving nerve; nearer the muscle "
      "it is sooner");
}

}  // namespace endplate::plan
