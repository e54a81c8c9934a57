#include "models/calibration/recovery_fit.hpp"

#include <ceres/autodiff_first_order_function.h>
#include <ceres/gradient_problem.h>
#include <ceres/gradient_problem_solver.h>
#include <tbb/parallel_for.h>

#include <Eigen/LU>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/normal.hpp>
#include <map>
#include <set>
#include <string>

#include "models/calibration/recovery_likelihood.hpp"
#include "models/evidence/log_odds.hpp"
#include "models/recovery/mean_chance.hpp"

namespace endplate::calibration {
namespace {

using evidence::from_logit;
using evidence::logit;

using Study = std::vector<std::size_t>;
constexpr double kNinety = evidence::kNinetyPerCentInSd;

struct Cost {
  const std::vector<RecoverySeries>* rows;
  std::vector<Study> studies;

  template <typename T>
  bool operator()(const T* effects, T* cost) const {
    *cost = prior_cost(effects);
    for (const Study& study : studies) *cost += study_cost(*rows, study, effects);
    return true;
  }
};

std::map<std::string, Study> fitted_studies(const std::vector<RecoverySeries>& rows) {
  std::map<std::string, Study> studies;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].fitted) studies[rows[i].study].push_back(i);
  }
  return studies;
}

// Maximum of the penalised likelihood of all studies but one, from `start`.
Expected<RecoveryEstimate> estimate(const std::vector<RecoverySeries>& rows,
                                    const std::string& left_out, const Effects& start) {
  Cost cost{&rows, {}};
  for (auto& [name, study] : fitted_studies(rows)) {
    if (name != left_out) cost.studies.push_back(std::move(study));
  }
  using Function = ceres::AutoDiffFirstOrderFunction<Cost, static_cast<int>(kEffects)>;
  const ceres::GradientProblem problem(new Function(new Cost(cost)));  // owns the function
  RecoveryEstimate result;
  result.effects = start;
  ceres::GradientProblemSolver::Options options;
  options.line_search_direction_type = ceres::BFGS;
  options.max_num_iterations = 300;
  options.function_tolerance = 1e-12;
  options.gradient_tolerance = 1e-7;
  options.logging_type = ceres::SILENT;
  ceres::GradientProblemSolver::Summary summary;
  // A line search that gives up near the top goes on from there with a fresh curvature, until the
  // gradient says that it is the top.
  constexpr double kLevel = 1e-3;
  double steepest = 1.0;
  for (int attempt = 0; attempt < 50 && steepest > kLevel; ++attempt) {
    ceres::Solve(options, problem, result.effects.data(), &summary);
    double value = 0.0;
    Effects gradient;
    problem.Evaluate(result.effects.data(), &value, gradient.data());
    steepest = gradient.cwiseAbs().maxCoeff();
  }
  if (!(steepest <= kLevel)) {
    return std::unexpected(Error{Fault::internal,
                                 {{"recovery_series.csv", "the fit of the chances found no answer",
                                   "Look for a row whose count cannot be."}}});
  }

  // Curvature by central differences of the exact gradient.
  Covariance curvature;
  constexpr double kStep = 1e-4;
  for (std::size_t k = 0; k < kEffects; ++k) {
    const auto c = static_cast<Eigen::Index>(k);
    std::array<Effects, 2> gradient;
    for (const int side : {0, 1}) {
      Effects at = result.effects;
      at[c] += side == 0 ? -kStep : kStep;
      double value = 0.0;
      problem.Evaluate(at.data(), &value, gradient[static_cast<std::size_t>(side)].data());
    }
    curvature.col(c) = (gradient[1] - gradient[0]) / (2.0 * kStep);
  }
  const Covariance symmetric = 0.5 * (curvature + curvature.transpose());
  result.covariance = symmetric.inverse();
  return result;
}

SeriesInterval exact_interval(int n, int count) {
  using boost::math::binomial_distribution;
  SeriesInterval interval{0.0, 1.0};
  if (count > 0) interval.low = binomial_distribution<>::find_lower_bound_on_p(n, count, 0.025);
  if (count < n) interval.high = binomial_distribution<>::find_upper_bound_on_p(n, count, 0.025);
  return interval;
}

// How often a study of this size, drawn from what the others predict, has the chance in its own
// interval.
double expected_inside(int n, double chance, double middle, double sd) {
  constexpr int kPoints = 100;
  double sum = 0.0;
  for (int count = 0; count <= n; ++count) {
    if (!exact_interval(n, count).holds(chance)) continue;
    for (int k = 0; k < kPoints; ++k) {
      const double z = boost::math::quantile(boost::math::normal(), (k + 0.5) / kPoints);
      const boost::math::binomial_distribution<> counts(n, from_logit(middle + sd * z));
      sum += boost::math::pdf(counts, count) / kPoints;
    }
  }
  return sum;
}

// Whether the count lies in the middle 95 % of a binomial whose logit is normal.
bool covers_count(const RecoverySeries& row, double middle, double sd) {
  constexpr int kPoints = 200;
  double below = 0.0;  // counts up to this one
  double above = 0.0;  // counts from this one on
  for (int k = 0; k < kPoints; ++k) {
    const double z = boost::math::quantile(boost::math::normal(), (k + 0.5) / kPoints);
    const boost::math::binomial_distribution<> counts(row.n, from_logit(middle + sd * z));
    below += boost::math::cdf(counts, row.count) / kPoints;
    above +=
        (row.count > 0 ? boost::math::cdf(boost::math::complement(counts, row.count - 1)) : 1.0) /
        kPoints;
  }
  return below > 0.025 && above > 0.025;
}

}  // namespace

const std::array<EffectPrior, kEffects>& effect_priors() {
  static constexpr std::array<EffectPrior, kEffects> kPriors{{
      {"useful in time, motor", 1.5, 1.5, "anything between half and nearly all"},
      {"motor window, log of the median in days", 6.306, 0.25,
       "the 18 months of the books, give or take a quarter"},
      {"motor window, log of the shape", 1.386, 0.35, "a shape of 4, between 2 and 8"},
      {"10 mm of graft", 0.0, 0.1, "series name lengths of 45 to 80 mm without a size of effect"},
      {"near donor", 0.0, 1.0, "nothing known"},
      {"distant donor", 0.0, 1.0, "nothing known"},
      {"intercostal donor", 0.0, 1.0, "nothing known"},
      {"ulnar nerve, motor", -0.62, 0.35,
       "half of the log odds ratio of Ruijs 2005, with twice its standard error (recalled)"},
      {"median nerve, motor", 0.62, 0.35,
       "half of the log odds ratio of Ruijs 2005, with twice its standard error (recalled)"},
      {"movement of the shoulder", 0.0, 1.0, "nothing known"},
      {"under 16 years, motor", 0.73, 0.35,
       "half of the log odds ratio of Ruijs 2005, with more than its standard error (recalled)"},
      {"over 40 years, motor", -0.73, 0.35,
       "half of the log odds ratio of Ruijs 2005, with more than its standard error (recalled)"},
      {"M4 instead of M3", 1.0, 0.7, "fewer reach the higher grade; how many is left open"},
      {"useful in time, sensory", 1.5, 1.5, "anything between half and nearly all"},
      {"under 16 years, sensory", 1.65, 0.4,
       "half of the log odds ratio of Ruijs 2005, with more than its standard error (recalled)"},
      {"over 40 years, sensory", -1.65, 0.4,
       "half of the log odds ratio of Ruijs 2005, with more than its standard error (recalled)"},
      {"a month of delay, sensory", -0.083, 0.03, "Ruijs 2005 with its standard error (recalled)"},
      {"S3+ instead of S3", 1.0, 0.7, "fewer reach the higher grade; how many is left open"},
      {"log of the spread between studies", -0.5, 0.5,
       "0.6 on the logit scale, between 0.2 and 1.6, as pooled series of operations spread"},
  }};
  return kPriors;
}

double RecoveryEstimate::middle_chance(const RecoverySeries& row) const {
  return series_chance(row, effects.data(), 0.0);
}

double RecoveryEstimate::chance(const RecoverySeries& row) const {
  const double spread = std::exp(effects[static_cast<Eigen::Index>(log_spread)]);
  return in_time(row, effects.data()) *
         recovery::mean_chance(useful_logit(row, effects.data(), 0.0), spread);
}

double RecoveryEstimate::logit_sd(const RecoverySeries& row, bool new_study) const {
  constexpr double kStep = 1e-4;
  const auto at = [&](const Effects& where, double u) {
    return logit(series_chance(row, where.data(), u));
  };
  Effects slope;
  for (std::size_t k = 0; k < kEffects; ++k) {
    const auto c = static_cast<Eigen::Index>(k);
    Effects up = effects;
    Effects down = effects;
    up[c] += kStep;
    down[c] -= kStep;
    slope[c] = (at(up, 0.0) - at(down, 0.0)) / (2.0 * kStep);
  }
  double variance = slope.dot(covariance * slope);
  if (new_study) {
    const double shift = (at(effects, kStep) - at(effects, -kStep)) / (2.0 * kStep) *
                         std::exp(effects[static_cast<Eigen::Index>(log_spread)]);
    variance += shift * shift;
  }
  return std::sqrt(variance);
}

Expected<RecoveryFit> fit_recovery(const std::vector<RecoverySeries>& rows) {
  Effects start;
  for (std::size_t k = 0; k < kEffects; ++k) {
    start[static_cast<Eigen::Index>(k)] = effect_priors()[k].mean;
  }
  auto all = estimate(rows, "", start);
  if (!all) return std::unexpected(all.error());

  std::set<std::string> names;
  for (const RecoverySeries& row : rows) names.insert(row.study);
  const std::vector<std::string> studies(names.begin(), names.end());
  std::vector<Expected<RecoveryEstimate>> without(studies.size(), RecoveryEstimate{});
  // Each from the same start, which no study has a part in.
  tbb::parallel_for(std::size_t{0}, studies.size(),
                    [&](std::size_t s) { without[s] = estimate(rows, studies[s], start); });

  RecoveryFit result{*all, {}};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto found = std::ranges::lower_bound(studies, rows[i].study);
    const auto& others = without[static_cast<std::size_t>(found - studies.begin())];
    if (!others) return std::unexpected(others.error());
    SeriesReading reading;
    reading.row = i;
    reading.fitted = all->chance(rows[i]);
    reading.left_out = others->chance(rows[i]);
    reading.left_out_middle = others->middle_chance(rows[i]);
    reading.published = exact_interval(rows[i].n, rows[i].count);
    const double middle = logit(reading.left_out_middle);
    const double sd = others->logit_sd(rows[i], true);
    reading.predicted = {from_logit(middle - kNinety * sd), from_logit(middle + kNinety * sd)};
    reading.expected_inside = expected_inside(rows[i].n, reading.left_out, middle, sd);
    reading.count_covered = covers_count(rows[i], middle, sd);
    result.readings.push_back(reading);
  }
  return result;
}

}  // namespace endplate::calibration
