#pragma once
// The penalised likelihood of published counts, for doubles and for automatic derivatives.
#include <algorithm>
#include <cmath>
#include <vector>

#include "models/calibration/recovery_fit.hpp"

namespace endplate::calibration {

// Among those whose axons came in time; `u` is the study's own shift.
template <typename T>
T useful_logit(const RecoverySeries& row, const T* effects, const T& u) {
  T logit = u + effects[row.sensory ? sensory_base : motor_base] +
            effects[graft_length] * (row.gap_mm / 10.0);
  if (row.sensory) {
    logit += effects[under_16_sensory] * row.share_under_16 +
             effects[over_40_sensory] * row.share_over_40 +
             effects[delay_sensory] * row.delay_months;
    if (row.higher_grade) logit -= effects[s3_plus_for_s3];
    return logit;
  }
  if (row.donor == Donor::near) logit += effects[near_donor];
  if (row.donor == Donor::distant) logit += effects[distant_donor];
  if (row.donor == Donor::intercostal) logit += effects[intercostal_donor];
  if (row.nerve == "ulnar nerve") logit += effects[ulnar_motor];
  if (row.nerve == "median nerve") logit += effects[median_motor];
  if (row.shoulder) logit += effects[shoulder_movement];
  logit +=
      effects[under_16_motor] * row.share_under_16 + effects[over_40_motor] * row.share_over_40;
  if (row.higher_grade) logit -= effects[m4_for_m3];
  return logit;
}

template <typename T>
T in_time(const RecoverySeries& row, const T* effects) {
  using std::exp;
  using std::log;
  if (row.sensory) return T(1.0);
  const T shape = exp(effects[window_log_shape]);
  T sum(0.0);
  for (const double day : row.arrival_days) {
    sum += 1.0 / (1.0 + exp(shape * (std::log(day) - effects[window_log_median])));
  }
  return sum / static_cast<double>(row.arrival_days.size());
}

template <typename T>
T series_chance(const RecoverySeries& row, const T* effects, const T& u) {
  using std::exp;
  return in_time(row, effects) / (1.0 + exp(-useful_logit(row, effects, u)));
}

// Minus the log likelihood of the fitted rows of one study, but for a constant.
template <typename T>
T study_cost(const std::vector<RecoverySeries>& all, const std::vector<std::size_t>& study,
             const T* effects) {
  // Trapezoids: exact to all digits once the step is below the width of the narrowest peak, that of
  // the largest study. A rule of fewer points misses such peaks and makes false tops.
  constexpr double kStep = 0.05;  // standard deviations
  constexpr int kSteps = 100;     // to each side
  using std::exp;
  using std::log;
  const T spread = exp(effects[log_spread]);
  std::vector<T> times;
  times.reserve(study.size());
  for (const std::size_t i : study) times.push_back(in_time(all[i], effects));

  std::vector<T> logs;
  logs.reserve(2 * kSteps + 1);
  for (int step = -kSteps; step <= kSteps; ++step) {
    const double z = kStep * step;
    const T u = spread * z;
    T sum(-0.5 * z * z);
    for (std::size_t k = 0; k < study.size(); ++k) {
      const RecoverySeries& row = all[study[k]];
      const auto useful = [&](const RecoverySeries& r) {
        return T(1.0) / (1.0 + exp(-useful_logit(r, effects, u)));
      };
      // Of the same patients, those with the higher grade among those with the lower: the axons of
      // both came in time.
      const T p = row.within ? useful(row) / useful(all[*row.within]) : times[k] * useful(row);
      const int n = row.within ? all[*row.within].count : row.n;
      if (row.count > 0) sum += static_cast<double>(row.count) * log(p);
      if (n > row.count) sum += static_cast<double>(n - row.count) * log(1.0 - p);
    }
    logs.push_back(sum);
  }
  T top = logs.front();
  for (const T& value : logs) top = value > top ? value : top;
  T sum(0.0);
  for (const T& value : logs) sum += exp(value - top);
  return -(top + log(sum));
}

template <typename T>
T prior_cost(const T* effects) {
  T sum(0.0);
  for (std::size_t k = 0; k < kEffects; ++k) {
    const EffectPrior& prior = effect_priors()[k];
    const T z = (effects[k] - prior.mean) / prior.sd;
    sum += 0.5 * z * z;
  }
  return sum;
}

}  // namespace endplate::calibration
