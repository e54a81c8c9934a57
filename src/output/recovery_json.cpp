#include "output/recovery_json.hpp"

#include <algorithm>

#include "output/dates.hpp"
#include "output/envelope.hpp"

namespace endplate::cli {
namespace {

using recovery::RecoveryAnswer;

Json optional_summary(const std::optional<Summary>& summary) {
  return summary ? to_json(*summary) : Json(nullptr);
}

Json optional_date(const std::optional<casefile::Date>& date) {
  return date ? Json(iso_date(*date)) : Json(nullptr);
}

// A day from the injury as a calendar date, where the injury's date is known.
Json date_of_day(const RecoveryAnswer& answer, const std::optional<double>& days) {
  if (!days || !answer.injury_date) return nullptr;
  return iso_date(recovery::plus_days(*answer.injury_date, *days));
}

Json lesions_json(const RecoveryAnswer& answer) {
  Json lesions = Json::array();
  for (const recovery::RecoveryLesion& lesion : answer.lesions) {
    Json item = {{"nerve", lesion.nerve},          {"place", lesion.place},
                 {"mechanism", lesion.mechanism},  {"grade", lesion.grade},
                 {"repaired", lesion.repaired},    {"preganglionic", lesion.preganglionic},
                 {"forecast_is", lesion.operation}};
    if (answer.no_forecast.empty()) {
      item["grade_chance"] = {{"conduction block", lesion.grade_chance[0]},
                              {"axons grow", lesion.grade_chance[1]},
                              {"no growth without repair", lesion.grade_chance[2]}};
    }
    lesions.push_back(std::move(item));
  }
  return lesions;
}

Json targets_json(const RecoveryAnswer& answer) {
  Json targets = Json::array();
  for (const recovery::RecoveryTarget& target : answer.targets) {
    const recovery::TargetForecast& forecast = target.forecast;
    Json useful = nullptr;
    if (forecast.chance_useful) {
      useful = {{"scale", forecast.chance_useful->scale},
                {"chance", forecast.chance_useful->chance}};
    }
    targets.push_back({{"target", target.name},
                       {"id", target.id},
                       {"kind", target.kind == recovery::TargetKind::motor ? "motor" : "sensory"},
                       {"nerve", target.nerve},
                       {"partial", target.partial},
                       {"distance_mm", to_json(forecast.distance_mm)},
                       {"chance_below_lesion", forecast.chance_below_lesion},
                       {"axons_arrive_days", optional_summary(forecast.axons_arrive_days)},
                       {"first_units_days", optional_summary(forecast.first_units_days)},
                       {"first_movement_days", optional_summary(forecast.first_movement_days)},
                       {"useful_days", optional_summary(forecast.useful_days)},
                       {"chance_axons_in_time", forecast.chance_axons_in_time},
                       {"chance_useful", useful}});
  }
  return targets;
}

Json timing_json(const RecoveryAnswer& answer) {
  Json timing = {{"best_before", nullptr},          {"best_before_days", nullptr},
                 {"unlikely_after", nullptr},       {"unlikely_after_days", nullptr},
                 {"chance_by_date", Json::array()}, {"practice", answer.decision.practice}};
  if (!answer.timing) {
    timing["no_curve"] = answer.no_forecast.empty() ? answer.no_timing : answer.no_forecast;
    return timing;
  }
  const auto optional_days = [](const std::optional<double>& days) {
    return days ? Json(*days) : Json(nullptr);
  };
  timing["best_before"] = date_of_day(answer, answer.timing->best_before_days);
  timing["best_before_days"] = optional_days(answer.timing->best_before_days);
  timing["unlikely_after"] = date_of_day(answer, answer.timing->unlikely_after_days);
  timing["unlikely_after_days"] = optional_days(answer.timing->unlikely_after_days);
  for (const recovery::ChanceByDate& point : answer.timing->chance_by_date) {
    timing["chance_by_date"].push_back({{"date", date_of_day(answer, point.days)},
                                        {"days_from_injury", point.days},
                                        {"chance", point.chance}});
  }
  timing["procedure"] = answer.timing->procedure;
  timing["scale"] = answer.timing->scale;
  timing["of"] = answer.timing->of;
  return timing;
}

Json tinel_json(const RecoveryAnswer& answer) {
  if (!answer.no_forecast.empty()) return {{"says_nothing", answer.no_forecast}};
  if (answer.tinel.steps.empty()) return {{"says_nothing", answer.tinel.says_nothing}};
  Json steps = Json::array();
  for (const recovery::TinelStep& step : answer.tinel.steps) {
    steps.push_back({{"date", date_of_day(answer, step.days)},
                     {"days_from_injury", step.days},
                     {"advance_mm", to_json(step.advance_mm)}});
  }
  return {{"toward", answer.tinel.toward}, {"length_mm", answer.tinel.length_mm}, {"steps", steps}};
}

}  // namespace

Json decision_json(const recovery::Decision& decision) {
  Json steps = Json::array();
  for (const recovery::DatedStep& step : decision.steps) {
    steps.push_back({{"date", optional_date(step.date)},
                     {"days_from_injury", step.days_from_injury},
                     {"what", step.what}});
  }
  return {{"next", decision.next},
          {"by_date", optional_date(decision.by_date)},
          {"by_days", decision.by_days},
          {"by_from", decision.by_from},
          {"overdue", decision.overdue},
          {"unless", decision.unless.empty() ? Json(nullptr) : Json(decision.unless)},
          {"reasons", decision.reasons},
          {"steps", steps},
          {"practice", decision.practice},
          {"rule", decision.rule},
          {"source", decision.source},
          {"provenance", decision.provenance}};
}

Json recovery_json(const RecoveryAnswer& answer, const CommonOptions& options, Side side) {
  std::vector<std::string> assumptions = answer.assumptions;
  assumptions.insert(assumptions.end(), answer.assumed_parameters.begin(),
                     answer.assumed_parameters.end());
  Json document = envelope("recovery", options, side, assumptions, answer.sources, answer.warnings);
  document["today"] = iso_date(options.today);
  document["decision"] = decision_json(answer.decision);
  document["lesions"] = lesions_json(answer);
  if (!answer.no_forecast.empty()) document["no_forecast"] = answer.no_forecast;
  document["findings_used"] = answer.findings_used;
  document["conduction_block"] = {
      {"first_movement_days", optional_summary(answer.block_first_days)},
      {"useful_days", optional_summary(answer.block_useful_days)}};
  document["targets"] = targets_json(answer);
  document["operation_timing"] = timing_json(answer);
  document["tinel_schedule"] = tinel_json(answer);
  return document;
}

}  // namespace endplate::cli
