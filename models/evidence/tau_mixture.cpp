#include "models/evidence/tau_mixture.hpp"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>
#include <numeric>

namespace endplate::evidence {
namespace {

constexpr std::size_t kGridSize = 41;
constexpr double kLowestTau = 0.2;
constexpr double kHighestTau = 200.0;
// Components rarer than this move no digit that is shown.
constexpr double kNegligible = 1e-7;

double normal_cdf(double z) {
  return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

}  // namespace

std::span<const double> tau_grid() {
  static const auto grid = [] {
    std::array<double, kGridSize> values{};
    for (std::size_t i = 0; i < kGridSize; ++i) {
      const double share = static_cast<double>(i) / (kGridSize - 1);
      values[i] = kLowestTau * std::pow(kHighestTau / kLowestTau, share);
    }
    return values;
  }();
  return grid;
}

std::vector<double> tau_log_likelihood(std::span<const Effect> effects) {
  std::vector<double> result;
  for (const double tau : tau_grid()) {
    result.push_back(restricted_log_likelihood(effects, tau * tau));
  }
  return result;
}

std::vector<double> tau_posterior(std::span<const double> log_likelihood,
                                  const LogNormalPrior& prior) {
  const auto grid = tau_grid();
  std::vector<double> chance(grid.size());
  for (std::size_t i = 0; i < grid.size(); ++i) {
    const double z = std::log(grid[i] / prior.median) / prior.log_scatter;
    chance[i] = -0.5 * z * z + (log_likelihood.empty() ? 0.0 : log_likelihood[i]);
  }
  const double highest = *std::ranges::max_element(chance);
  double sum = 0.0;
  for (double& c : chance) sum += c = std::exp(c - highest);
  for (double& c : chance) c /= sum;
  return chance;
}

TauMixture::TauMixture(std::span<const Effect> effects, const LogNormalPrior& prior)
    : weights_(effects.size()) {
  const auto grid = tau_grid();
  const auto likelihood = effects.size() > 1 ? tau_log_likelihood(effects) : std::vector<double>();
  const auto chance = tau_posterior(likelihood, prior);

  double below = 0.0;
  for (std::size_t i = 0; i < grid.size(); ++i) {
    if (below < 0.5 && below + chance[i] >= 0.5) median_tau_ = grid[i];
    below += chance[i];
    if (chance[i] < kNegligible) continue;
    const RandomEffects fit = random_effects_at(effects, grid[i] * grid[i]);
    components_.push_back({grid[i], chance[i], fit.mean, fit.standard_error});
    mean_ += chance[i] * fit.mean;
    for (std::size_t k = 0; k < weights_.size(); ++k) weights_[k] += chance[i] * fit.weights[k];
  }
  double variance = 0.0;
  for (const Component& c : components_) {
    variance +=
        c.chance * (c.standard_error * c.standard_error + (c.mean - mean_) * (c.mean - mean_));
  }
  standard_error_ = std::sqrt(variance);
}

double TauMixture::quantile(double p, bool with_tau, double extra_sd) const {
  const auto excess = [&](double x) {
    double cdf = 0.0;
    for (const Component& c : components_) {
      const double variance = c.standard_error * c.standard_error +
                              (with_tau ? c.tau * c.tau : 0.0) + extra_sd * extra_sd;
      cdf += c.chance * normal_cdf((x - c.mean) / std::sqrt(variance));
    }
    return cdf - p;
  };
  double reach = standard_error_ + median_tau_ + extra_sd;
  while (excess(mean_ - reach) > 0.0 || excess(mean_ + reach) < 0.0) reach *= 2.0;
  std::uintmax_t iterations = 100;
  const auto [low, high] =
      boost::math::tools::toms748_solve(excess, mean_ - reach, mean_ + reach,
                                        boost::math::tools::eps_tolerance<double>(30), iterations);
  return std::midpoint(low, high);
}

Interval TauMixture::mean_interval(double level) const {
  return {quantile((1.0 - level) / 2.0, false, 0.0), quantile((1.0 + level) / 2.0, false, 0.0)};
}

double TauMixture::new_value_sd(double extra_sd) const {
  double variance = standard_error_ * standard_error_ + extra_sd * extra_sd;
  for (const Component& c : components_) variance += c.chance * c.tau * c.tau;
  return std::sqrt(variance);
}

Interval TauMixture::new_value_interval(double level, double extra_sd) const {
  return {quantile((1.0 - level) / 2.0, true, extra_sd),
          quantile((1.0 + level) / 2.0, true, extra_sd)};
}

}  // namespace endplate::evidence
