#include "models/evidence/spread_model.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace endplate::evidence {
namespace {

// What one quantity tells about tau.
struct Evidence {
  double d_mm = 0.0;
  std::vector<double> log_likelihood;
  std::vector<StudyEffect> studies;
};

bool counts(const Quantity& quantity) {
  return quantity.measure == Measure::distance_mm;
}

Quantity without(const Quantity& quantity, const std::string& study) {
  Quantity rest = quantity;
  std::erase_if(rest.rows, [&](const Measurement& row) { return row.study == study; });
  return rest;
}

ScaleCurve fit_between_studies(const std::vector<Evidence>& all) {
  const auto grid = tau_grid();
  ScaleCurve curve{4.0, 0.1, 1.0};  // a start; the likelihood climbs from it
  for (int iteration = 0; iteration < 500; ++iteration) {
    std::vector<ScalePoint> points;
    for (const Evidence& e : all) {
      const auto chance = tau_posterior(e.log_likelihood, {curve.at(e.d_mm), curve.log_scatter});
      ScalePoint point{e.d_mm, 0.0, 0.0};
      for (std::size_t i = 0; i < grid.size(); ++i)
        point.log_value += chance[i] * std::log(grid[i]);
      for (std::size_t i = 0; i < grid.size(); ++i) {
        const double apart = std::log(grid[i]) - point.log_value;
        point.log_variance += chance[i] * apart * apart;
      }
      points.push_back(point);
    }
    const ScaleCurve next = fit_scale_curve(points);
    const bool settled = std::abs(next.at_zero - curve.at_zero) < 1e-3 &&
                         std::abs(next.slope - curve.slope) < 1e-4 &&
                         std::abs(next.log_scatter - curve.log_scatter) < 1e-3;
    curve = next;
    if (settled) break;
  }
  return curve;
}

// One-way random-effects analysis of variance with unequal group sizes.
double intraclass_correlation(const std::map<std::string, std::vector<double>>& by_study) {
  double groups = 0.0;
  double values = 0.0;
  double sum = 0.0;
  double squared_sizes = 0.0;
  for (const auto& [study, errors] : by_study) {
    if (errors.size() < 2) continue;
    groups += 1.0;
    values += static_cast<double>(errors.size());
    squared_sizes += static_cast<double>(errors.size() * errors.size());
    for (const double e : errors) sum += e;
  }
  if (groups < 2.0) return 0.0;
  const double grand_mean = sum / values;
  double between = 0.0;
  double within = 0.0;
  for (const auto& [study, errors] : by_study) {
    if (errors.size() < 2) continue;
    double mean = 0.0;
    for (const double e : errors) mean += e / static_cast<double>(errors.size());
    between += static_cast<double>(errors.size()) * (mean - grand_mean) * (mean - grand_mean);
    for (const double e : errors) within += (e - mean) * (e - mean);
  }
  between /= groups - 1.0;
  within /= values - groups;
  const double size = (values - squared_sizes / values) / (groups - 1.0);
  return std::clamp((between - within) / (between + (size - 1.0) * within), 0.0, 1.0);
}

double lower_quartile(std::vector<double> values) {
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 4);
  std::ranges::nth_element(values, at);
  return *at;
}

}  // namespace

double size_mm(std::span<const StudyEffect> studies) {
  double sum = 0.0;
  for (const StudyEffect& s : studies) sum += std::abs(s.mean_mm);
  return studies.empty() ? 0.0 : sum / static_cast<double>(studies.size());
}

std::vector<Effect> effects_of(std::span<const StudyEffect> studies) {
  std::vector<Effect> effects;
  for (const StudyEffect& s : studies) {
    effects.push_back({s.mean_mm, s.standard_error_mm * s.standard_error_mm});
  }
  return effects;
}

LogNormalPrior SpreadModel::tau_prior(double d_mm) const {
  return {between_studies_.at(d_mm), between_studies_.log_scatter};
}

Imputation SpreadModel::imputation() const {
  return {[curve = between_limbs_](double d_mm) { return curve.at(d_mm); }, assumed_n_};
}

SpreadModel SpreadModel::estimate(const std::vector<Quantity>& quantities,
                                  const std::string& without_study) {
  SpreadModel model;
  std::vector<ScalePoint> spreads;
  std::vector<double> numbers;
  for (const Quantity& quantity : quantities) {
    if (!counts(quantity)) continue;
    for (const Measurement& row : quantity.rows) {
      if (!row.left_out.empty() || row.study == without_study) continue;
      if (row.n) numbers.push_back(*row.n);
      if (const auto spread = row_spread(row)) {
        spreads.push_back({std::abs(*row.mean_mm), std::log(spread->sd_mm), 0.0});
      }
    }
  }
  if (spreads.size() < 3) throw std::invalid_argument("too few rows print a spread");
  model.between_limbs_ = fit_scale_curve(spreads);
  model.rows_with_spread_ = spreads.size();
  model.assumed_n_ = lower_quartile(numbers);

  std::vector<Evidence> all;
  for (const Quantity& quantity : quantities) {
    if (!counts(quantity) || quantity.rows.size() < 2) continue;
    auto studies = without_study.empty()
                       ? study_effects(quantity, model.imputation())
                       : study_effects(without(quantity, without_study), model.imputation());
    if (studies.size() < 2) continue;
    const auto effects = effects_of(studies);
    const double d_mm = size_mm(studies);
    all.push_back({d_mm, tau_log_likelihood(effects), std::move(studies)});
  }
  if (all.size() < 3) throw std::invalid_argument("too few quantities have two studies");
  model.between_studies_ = fit_between_studies(all);
  model.quantities_with_studies_ = all.size();

  std::map<std::string, std::vector<double>> errors;
  for (const Evidence& e : all) {
    const TauMixture pooled(effects_of(e.studies), model.tau_prior(e.d_mm));
    for (const StudyEffect& s : e.studies) {
      const double spread = std::hypot(s.standard_error_mm, pooled.median_tau());
      errors[s.study].push_back((s.mean_mm - pooled.mean()) / spread);
    }
  }
  model.intraclass_correlation_ = intraclass_correlation(errors);
  return model;
}

}  // namespace endplate::evidence
