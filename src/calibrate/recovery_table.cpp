// The fitted parameters of the two chances, in the columns of recovery_parameters.csv.
#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <set>

#include "calibrate/recovery_page.hpp"

namespace endplate::calibrate {
namespace {

using calibration::RecoveryFit;
using calibration::RecoverySeries;

double value(const RecoveryFit& fit, calibration::Effect effect) {
  return fit.all.effects[static_cast<Eigen::Index>(effect)];
}

// Rows of outcomes.csv that were fitted, motor or sensory.
std::string outcome_rows(const std::vector<RecoverySeries>& rows, bool sensory) {
  std::string out;
  for (const RecoverySeries& row : rows) {
    if (!row.fitted || !row.in_outcomes || row.sensory != sensory) continue;
    out += (out.empty() ? "" : ";") + row.row;
  }
  return out;
}

std::size_t studies(const std::vector<RecoverySeries>& rows, bool sensory) {
  std::set<std::string> names;
  for (const RecoverySeries& row : rows) {
    if (row.fitted && row.sensory == sensory) names.insert(row.study);
  }
  return names.size();
}

std::size_t count(const std::vector<RecoverySeries>& rows, bool sensory) {
  std::size_t count = 0;
  for (const RecoverySeries& row : rows) count += row.fitted && row.sensory == sensory ? 1 : 0;
  return count;
}

// Of the chance's logit: the uncertainty of the fit (its middle over the rows) and the spread
// between studies.
double whole_spread(const RecoveryFit& fit, const std::vector<RecoverySeries>& rows, bool sensory) {
  double sum = 0.0;
  int n = 0;
  for (const RecoverySeries& row : rows) {
    if (row.sensory != sensory) continue;
    const double sd = fit.all.logit_sd(row, false);
    sum += sd * sd;
    ++n;
  }
  const double between = std::exp(value(fit, calibration::log_spread));
  return std::sqrt(between * between + sum / n);
}

struct Line {
  std::string id;
  std::string quantity;
  std::string applies_to;
  std::string treatment;
  std::string family;
  double mean = 0.0;
  double sd = 0.0;  // 0: none
  std::string unit;
  std::string regeneration_rows;
  bool sensory = false;
  std::string reason;
};

}  // namespace

std::string fitted_chances(const RecoveryFit& fit, const std::vector<RecoverySeries>& rows) {
  using namespace calibration;
  const auto odds = [&](Effect effect) { return std::exp(value(fit, effect)); };
  const auto chance = [&](Effect effect) { return 1.0 / (1.0 + std::exp(-value(fit, effect))); };
  // Mean and SD of the log-logistic, finite for a shape above 2.
  const double median = std::exp(value(fit, window_log_median));
  const double b = std::numbers::pi / std::exp(value(fit, window_log_shape));
  const double mean = median * b / std::sin(b);
  const double sd = std::sqrt(median * median * 2.0 * b / std::sin(2.0 * b) - mean * mean);
  const std::string motor = fmt::format("fitted to {} published counts of {} studies",
                                        count(rows, false), studies(rows, false));
  const std::string sensory = fmt::format("fitted to {} published counts of {} studies",
                                          count(rows, true), studies(rows, true));
  const std::string basis =
      "; delays and ways were assumed where a series prints none (recovery_series.csv, "
      "docs/recovery-fractions.md)";
  const std::string ruijs =
      ", starting from one meta-analysis on M4 and S3+ (recalled) carried to the lower grade";

  const std::vector<Line> lines{
      {"motor_window", "motor window", "motor", "any", "log-logistic", mean, sd, "day",
       "motor_window_18mo_vanaclocha17;motor_window_18mo_ehand;motor_window_18mo_vancouver;"
       "motor_window_radial_schwaiger20;endplate_persist_gupta20",
       false,
       fmt::format("median {:.1f} months, shape {:.2f}: {}, starting from the 18 months of the "
                   "books; a curve without an edge, with published late recoveries in it{}",
                   median / (365.25 / 12.0), std::exp(value(fit, window_log_shape)), motor, basis)},
      {"useful_motor_operated", "useful in time", "motor", "operated", "probability",
       chance(motor_base), 0.0, "fraction", "", false,
       "M3 after a repair or graft when the axons come early: " + motor + basis},
      {"useful_sensory_operated", "useful in time", "sensory", "operated", "probability",
       chance(sensory_base), 0.0, "fraction", "", true,
       "S3 after a repair or graft: " + sensory + basis},
      {"useful_spread_motor", "useful spread", "motor", "operated", "fixed",
       whole_spread(fit, rows, false), 0.0, "log odds", "", false,
       "one standard deviation of the log odds of a useful muscle: spread between studies and "
       "uncertainty of the fit; " +
           motor},
      {"useful_spread_sensory", "useful spread", "sensory", "operated", "fixed",
       whole_spread(fit, rows, true), 0.0, "log odds", "", true,
       "one standard deviation of the log odds of useful skin: spread between studies and "
       "uncertainty of the fit; " +
           sensory},
      {"graft_length", "graft odds 10 mm", "any", "operated", "odds ratio", odds(graft_length), 0.0,
       "ratio",
       "graft_len_threshold_radial_zhu23;graft_len_poor_kallio93;graftlen_ulnar_roganovic04;"
       "graftlen_radial_roganovic04",
       false, "for each 10 mm of graft: " + motor + basis},
      {"transfer_near", "transfer odds", "near donor", "operated", "odds ratio", odds(near_donor),
       0.0, "ratio", "", false,
       "transfer of a fascicle or branch of a working nerve beside the target, against a repair or "
       "graft whose axons come as early: " +
           motor + basis},
      {"transfer_distant", "transfer odds", "distant donor", "operated", "odds ratio",
       odds(distant_donor), 0.0, "ratio", "", false,
       "transfer of the phrenic or the accessory nerve, against a repair or graft whose axons come "
       "as early: " +
           motor + basis},
      {"transfer_intercostal", "transfer odds", "intercostal donor", "operated", "odds ratio",
       odds(intercostal_donor), 0.0, "ratio", "", false,
       "transfer of intercostal nerves, against a repair or graft whose axons come as early: " +
           motor + basis},
      {"grade_m4", "grade odds", "M4", "operated", "odds ratio", 1.0 / odds(m4_for_m3), 0.0,
       "ratio", "", false, "M4 instead of M3: " + motor + basis},
      {"grade_s3_plus", "grade odds", "S3+", "operated", "odds ratio", 1.0 / odds(s3_plus_for_s3),
       0.0, "ratio", "", true, "S3+ instead of S3: " + sensory + basis},
      {"age_young_motor", "age odds under 16", "motor", "operated", "odds ratio",
       odds(under_16_motor), 0.0, "ratio", "or_age_motor_ruijs05", false, motor + ruijs},
      {"age_old_motor", "age odds over 40", "motor", "operated", "odds ratio", odds(over_40_motor),
       0.0, "ratio", "or_age_motor_ruijs05", false, motor + ruijs},
      {"age_young_sensory", "age odds under 16", "sensory", "operated", "odds ratio",
       odds(under_16_sensory), 0.0, "ratio", "or_age_sensory_ruijs05", true, sensory + ruijs},
      {"age_old_sensory", "age odds over 40", "sensory", "operated", "odds ratio",
       odds(over_40_sensory), 0.0, "ratio", "or_age_sensory_ruijs05", true, sensory + ruijs},
      {"nerve_ulnar", "nerve odds", "ulnar nerve", "operated", "odds ratio", odds(ulnar_motor), 0.0,
       "ratio", "or_ulnar_motor_ruijs05", false, motor + ruijs},
      {"nerve_median", "nerve odds", "median nerve", "operated", "odds ratio", odds(median_motor),
       0.0, "ratio", "or_ulnar_motor_ruijs05", false, motor + ruijs},
      {"delay_sensory", "delay odds a month", "sensory", "operated", "odds ratio",
       odds(delay_sensory), 0.0, "ratio", "or_delay_sensory_ruijs05", true,
       "a month of delay before a repair; for muscles the motor window carries the delay: " +
           sensory + ruijs},
  };
  std::string out =
      "id,quantity,applies_to,treatment,deficit,family,mean,sd,unit,regeneration_rows,"
      "outcome_rows,provenance,reason\n";
  for (const Line& line : lines) {
    out += fmt::format("{},{},{},{},any,{},{:.3f},{},{},{},{},assumed,\"{}\"\n", line.id,
                       line.quantity, line.applies_to, line.treatment, line.family, line.mean,
                       line.sd > 0.0 ? fmt::format("{:.3f}", line.sd) : "", line.unit,
                       line.regeneration_rows, outcome_rows(rows, line.sensory), line.reason);
  }
  return out;
}

}  // namespace endplate::calibrate
