#include "models/calibration/cross_validation.hpp"

#include <tbb/parallel_for.h>

#include <Eigen/LU>
#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

#include "models/core/summary.hpp"

namespace endplate::calibration {
namespace {

constexpr double kZ90 = 1.6448536269514722;  // half-width of a central normal interval of 90 %

std::vector<Observation> without(const std::vector<Observation>& all, const std::string& study) {
  std::vector<Observation> rest;
  std::ranges::copy_if(all, std::back_inserter(rest),
                       [&](const Observation& o) { return o.effect.study != study; });
  return rest;
}

// Inverse-variance mean of the other studies of the same measure.
double pooled_mean(const std::vector<Observation>& rest, std::size_t measure,
                   const evidence::ScaleCurve& between_studies) {
  double sum = 0.0;
  double weights = 0.0;
  for (const Observation& o : rest) {
    if (o.measure != measure) continue;
    const double tau = between_studies.at(std::abs(o.effect.mean_mm));
    const double weight = 1.0 / (tau * tau + std::pow(o.effect.standard_error_mm, 2));
    sum += weight * o.effect.mean_mm;
    weights += weight;
  }
  return weights > 0.0 ? sum / weights : std::numeric_limits<double>::quiet_NaN();
}

double normal_share(double mean, double sd, double low, double high) {
  const boost::math::normal limbs(mean, std::max(sd, 1e-6));
  return boost::math::cdf(limbs, high) - boost::math::cdf(limbs, low);
}

}  // namespace

std::vector<Support> support_of(const limb::Atlas& atlas,
                                const std::vector<Observation>& observations) {
  const auto& measures = atlas.measures();
  std::vector<bool> observed(measures.size(), false);
  for (const Observation& o : observations) observed[o.measure] = true;
  // How many observed measures hold each point of each course.
  std::map<std::pair<std::size_t, std::size_t>, int> holders;
  for (std::size_t m = 0; m < measures.size(); ++m) {
    if (!observed[m]) continue;
    if (measures[m].point) ++holders[{measures[m].course, *measures[m].point}];
    if (measures[m].other) ++holders[{measures[m].course, *measures[m].other}];
  }
  std::vector<Support> support(measures.size(), Support::tested);
  for (std::size_t m = 0; m < measures.size(); ++m) {
    const int own = observed[m] ? 1 : 0;
    const auto held_by_others = [&](const std::optional<std::size_t>& point) {
      return !point || holders[{measures[m].course, *point}] > own;
    };
    if (!held_by_others(measures[m].point) || !held_by_others(measures[m].other)) {
      support[m] = Support::free_point;
    }
  }
  return support;
}

double inflation_of(const FitResult& fit, const limb::Atlas& atlas,
                    const std::vector<Observation>& observations) {
  std::map<std::string, std::vector<Eigen::Index>> rows_of;
  for (std::size_t i = 0; i < observations.size(); ++i) {
    rows_of[observations[i].effect.study].push_back(static_cast<Eigen::Index>(i));
  }
  std::vector<double> errors;
  for (const auto& [study, rows] : rows_of) {
    const std::vector<Support> support = support_of(atlas, without(observations, study));
    const Eigen::MatrixXd jacobian = fit.observation_rows(rows, Eigen::all);
    const auto size = static_cast<Eigen::Index>(rows.size());
    const Eigen::MatrixXd hat = jacobian * fit.covariance * jacobian.transpose();
    const Eigen::MatrixXd deleted = (Eigen::MatrixXd::Identity(size, size) - hat).inverse();
    Eigen::VectorXd weighted(size);
    for (Eigen::Index i = 0; i < size; ++i) {
      const ObservationFit& o =
          fit.observations[static_cast<std::size_t>(rows[static_cast<std::size_t>(i)])];
      weighted(i) = std::sqrt(o.weight) * o.residual;
    }
    const Eigen::VectorXd error = deleted * weighted;
    for (Eigen::Index i = 0; i < size; ++i) {
      const auto row = static_cast<std::size_t>(rows[static_cast<std::size_t>(i)]);
      if (support[observations[row].measure] == Support::free_point) continue;
      const double raw = error(i) / std::sqrt(fit.observations[row].weight);
      errors.push_back(std::abs(raw) / std::sqrt(deleted(i, i)));
    }
  }
  if (errors.empty()) return 1.0;
  std::ranges::sort(errors);
  // The rank of a split-conformal quantile: a little above the plain 90th percentile.
  const auto rank =
      static_cast<std::size_t>(std::ceil(0.9 * (static_cast<double>(errors.size()) + 1.0)));
  return errors[std::min(rank, errors.size()) - 1] / kZ90;
}

Expected<LeftOutFit> fit_without(const limb::Atlas& atlas,
                                 const evidence::Table& landmark_distances, const FitState& start,
                                 const std::string& study) {
  LeftOutFit result;
  result.spread = evidence::SpreadModel::estimate(evidence::quantities(landmark_distances), study);
  result.rest = without(observations(atlas, landmark_distances, result.spread), study);
  const FitOptions options{result.spread.between_studies(),
                           result.spread.study_intraclass_correlation()};
  auto refit = fit(atlas, result.rest, options, start);
  if (!refit) return std::unexpected(refit.error());
  result.fit = std::move(*refit);
  result.inflation = inflation_of(result.fit, atlas, result.rest);
  return result;
}

Expected<CrossValidation> leave_one_study_out(const limb::Atlas& atlas,
                                              const evidence::Table& landmark_distances,
                                              const FitState& start) {
  const auto quantities = evidence::quantities(landmark_distances);
  const auto whole = evidence::SpreadModel::estimate(quantities);
  const std::vector<Observation> all = observations(atlas, landmark_distances, whole);
  std::map<std::string, std::vector<Observation>> by_study;
  for (const Observation& o : all) by_study[o.effect.study].push_back(o);
  std::vector<std::string> studies;
  for (const auto& [study, own] : by_study) studies.push_back(study);

  struct Fold {
    std::vector<HeldOut> held_out;
    std::size_t not_predicted = 0;
    std::optional<Error> error;
  };
  std::vector<Fold> folds(studies.size());
  tbb::parallel_for(std::size_t{0}, studies.size(), [&](std::size_t s) {
    Fold& fold = folds[s];
    const auto left_out = fit_without(atlas, landmark_distances, start, studies[s]);
    if (!left_out) {
      fold.error = left_out.error();
      return;
    }
    const std::vector<Observation>& rest = left_out->rest;
    const evidence::SpreadModel& spread = left_out->spread;
    const FitResult* refit = &left_out->fit;
    const double inflation = left_out->inflation;
    const std::vector<Support> support = support_of(atlas, rest);
    for (const Observation& o : by_study.at(studies[s])) {
      if (support[o.measure] == Support::free_point || std::isnan(refit->predicted_mm[o.measure])) {
        ++fold.not_predicted;
        continue;
      }
      HeldOut h;
      h.observation = o;
      h.predicted_mm = refit->predicted_mm[o.measure];
      h.model_sd_mm = refit->predicted_sd_mm[o.measure];
      h.between_study_mm = spread.between_studies().at(std::abs(h.predicted_mm));
      h.between_limbs_mm = spread.between_limbs().at(std::abs(h.predicted_mm));
      h.inflation = inflation;
      h.pooled_mm = pooled_mean(rest, o.measure, spread.between_studies());
      const double unknown = inflation * std::hypot(h.model_sd_mm, h.between_study_mm);
      // The sampling error of the study's own mean belongs to it; for its limbs, their spread.
      const double half_mean = kZ90 * std::hypot(unknown, inflation * o.effect.standard_error_mm);
      const double half_limb = kZ90 * std::hypot(unknown, h.between_limbs_mm);
      h.mean_low_mm = h.predicted_mm - half_mean;
      h.mean_high_mm = h.predicted_mm + half_mean;
      h.limb_low_mm = h.predicted_mm - half_limb;
      h.limb_high_mm = h.predicted_mm + half_limb;
      h.limbs_covered =
          normal_share(o.effect.mean_mm, o.effect.sd_mm, h.limb_low_mm, h.limb_high_mm);
      fold.held_out.push_back(std::move(h));
    }
  });

  CrossValidation result;
  result.studies = studies.size();
  for (Fold& fold : folds) {
    if (fold.error) return std::unexpected(*fold.error);
    std::ranges::move(fold.held_out, std::back_inserter(result.held_out));
    result.not_predicted += fold.not_predicted;
  }
  return result;
}

}  // namespace endplate::calibration
