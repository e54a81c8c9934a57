#include "output/followup_json.hpp"

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/recovery_json.hpp"

namespace endplate::cli {
namespace {

using followup::FollowupAnswer;
using followup::LesionProgress;

Json chances_json(const LesionProgress& lesion) {
  return {{"ahead", lesion.chances.ahead},
          {"on course", lesion.chances.on_course},
          {"late", lesion.chances.late},
          {"no advance", lesion.chances.no_advance}};
}

Json rate_json(const LesionProgress& lesion) {
  return lesion.rate_mm_per_day ? to_json(*lesion.rate_mm_per_day) : Json(nullptr);
}

Json points_json(const LesionProgress& lesion) {
  Json points = Json::array();
  for (const followup::TinelPoint& point : lesion.points) {
    points.push_back({{"date", iso_date(point.date)},
                      {"days_from_injury", point.days},
                      {"nerve", point.nerve},
                      {"place", point.place},
                      {"advance_mm", point.advance_mm},
                      {"error_mm", point.error_mm}});
  }
  return points;
}

// The lesions of the forecast, each with its own progress.
Json lesions_with_progress(const FollowupAnswer& answer) {
  Json lesions = lesions_json(answer.recovery);
  for (std::size_t k = 0; k < answer.lesions.size(); ++k) {
    const LesionProgress& lesion = answer.lesions[k];
    Json& item = lesions[k];
    item["on_course"] = recovery::progress_words(lesion.call.progress);
    item["why"] = lesion.call.why.empty() ? Json(nullptr) : Json(lesion.call.why);
    item["course_chances"] = chances_json(lesion);
    item["chance_conduction_block"] = lesion.chance_block;
    item["rate_mm_per_day"] = rate_json(lesion);
    item["usual_rate_mm_per_day"] = to_json(lesion.usual_rate_mm_per_day);
    item["can_be_tapped"] = lesion.tappable;
    item["tinel"] = points_json(lesion);
  }
  return lesions;
}

}  // namespace

Json followup_json(const FollowupAnswer& answer, const CommonOptions& options, Side side) {
  const recovery::RecoveryAnswer& now = answer.recovery;
  std::vector<std::string> assumptions = now.assumptions;
  assumptions.insert(assumptions.end(), now.assumed_parameters.begin(),
                     now.assumed_parameters.end());
  Json document = envelope("followup", options, side, assumptions, now.sources, now.warnings);
  document["today"] = iso_date(options.today);
  document["decision"] = decision_json(now.decision);
  document["on_course"] = recovery::progress_words(answer.call.progress);
  document["why"] = answer.call.why.empty() ? Json(nullptr) : Json(answer.call.why);
  document["chance_no_growth"] =
      answer.chance_no_growth ? Json(*answer.chance_no_growth) : Json(nullptr);
  document["course_chances"] = nullptr;
  document["rate_mm_per_day"] = nullptr;
  if (!answer.lesions.empty()) {
    document["course_chances"] = chances_json(answer.lesions[answer.worst]);
    document["rate_mm_per_day"] = rate_json(answer.lesions[answer.worst]);
  }
  document["last_seen"] = answer.last_seen ? Json(iso_date(*answer.last_seen)) : Json(nullptr);
  document["remarks"] = answer.remarks;
  document["lesions"] = lesions_with_progress(answer);
  if (!now.no_forecast.empty()) document["no_forecast"] = now.no_forecast;
  document["findings_used"] = now.findings_used;
  document["targets"] = targets_json(now);
  document["operation_timing"] = timing_json(now);
  return document;
}

}  // namespace endplate::cli
