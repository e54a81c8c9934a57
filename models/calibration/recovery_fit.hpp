#pragma once
// The two chances, fitted to published counts, and every study predicted without itself.
//
// Chance of the grade = share of axons that come in time x share useful among those.
//   in time: mean over the days of arrival t of 1/(1+(t/median)^shape); 1 for skin
//   useful: logit = base + sum of effects + u, u normal between studies
// Counts are binomial given u; u is integrated out (trapezoids). A higher grade of
// the same patients is binomial among those with the lower one. The penalised likelihood is
// maximised (normal priors, each with its reason); the covariance is the inverse of its curvature.
#include <Eigen/Core>
#include <array>
#include <string_view>
#include <vector>

#include "models/calibration/recovery_series.hpp"

namespace endplate::calibration {

enum Effect : std::size_t {
  motor_base,
  window_log_median,  // days
  window_log_shape,
  graft_length,  // a 10 mm
  near_donor,
  distant_donor,
  intercostal_donor,
  ulnar_motor,
  median_motor,
  shoulder_movement,
  under_16_motor,
  over_40_motor,
  m4_for_m3,
  sensory_base,
  under_16_sensory,
  over_40_sensory,
  delay_sensory,  // a month
  s3_plus_for_s3,
  log_spread  // of u, between studies
};
inline constexpr std::size_t kEffects = log_spread + 1;

struct EffectPrior {
  std::string_view name;
  double mean;
  double sd;
  std::string_view reason;
};
const std::array<EffectPrior, kEffects>& effect_priors();

using Effects = Eigen::Matrix<double, kEffects, 1>;
using Covariance = Eigen::Matrix<double, kEffects, kEffects>;

struct RecoveryEstimate {
  Effects effects = Effects::Zero();
  Covariance covariance = Covariance::Zero();

  // Of a patient whose surgeon is not known: the mean over studies, as the forecast gives it.
  double chance(const RecoverySeries& row) const;
  // In the study in the middle (u = 0).
  double middle_chance(const RecoverySeries& row) const;
  // Standard deviation of the chance's logit, from the uncertainty of the fit and, with
  // `new_study`, from the spread between studies.
  double logit_sd(const RecoverySeries& row, bool new_study) const;
};

struct SeriesInterval {
  double low = 0.0;
  double high = 0.0;
  bool holds(double share) const { return low <= share && share <= high; }
};

struct SeriesReading {
  std::size_t row = 0;           // index into the table's rows
  double fitted = 0.0;           // by all rows
  double left_out = 0.0;         // by the rows of other studies
  double left_out_middle = 0.0;  // the same, of the study in the middle
  SeriesInterval published;      // exact 95 % interval of the count (Clopper and Pearson)
  SeriesInterval predicted;      // 90 % of studies like it, by the rows of other studies
  // The count lies in the middle 95 % of what the other studies predict for a study of this size.
  bool count_covered = false;
  // The chance that the row lies inside even if the other studies' fit is right: studies differ,
  // and a large one has a narrow interval about its own share.
  double expected_inside = 0.0;

  bool inside() const { return published.holds(left_out); }
  bool middle_inside() const { return published.holds(left_out_middle); }
};

struct RecoveryFit {
  RecoveryEstimate all;
  std::vector<SeriesReading> readings;
};

Expected<RecoveryFit> fit_recovery(const std::vector<RecoverySeries>& rows);

}  // namespace endplate::calibration
