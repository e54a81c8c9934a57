#pragma once
// What the weighed patients and the findings say of each lesion.
#include <optional>
#include <vector>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/core/summary.hpp"
#include "models/followup/on_course.hpp"
#include "models/followup/tinel_series.hpp"
#include "models/recovery/forecast.hpp"

namespace endplate::followup {

struct LesionProgress {
  Call call;
  ProgressChances chances;
  double chance_block = 0.0;               // part of chances.on_course
  std::optional<Summary> rate_mm_per_day;  // if it grows; absent when hardly any patient does
  Summary usual_rate_mm_per_day;           // of patients like this one before anything was seen
  std::vector<TinelPoint> points;          // those that were used
  bool tappable = true;
};

struct Observed {
  std::vector<TinelSeries> series;  // those that were used
  std::vector<bool> misfit;         // by lesion: its points could not be used
};

// By lesion of the question. `metrics`: of the mean limb.
std::vector<LesionProgress> judge_lesions(const recovery::ForecastQuestion& question,
                                          const recovery::Forecast& forecast,
                                          const Observed& observed,
                                          const anatomy::NerveMetrics& metrics,
                                          const FollowupParameters& parameters);

}  // namespace endplate::followup
