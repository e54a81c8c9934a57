#include "models/evidence/proportion.hpp"

#include <algorithm>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "models/evidence/log_odds.hpp"

namespace endplate::evidence {
namespace {

constexpr int kBits = 26;               // of precision asked of the one-dimensional searches
constexpr double kLargestLogit = 12.0;  // a share of 6 in a million
constexpr double kLargestTau = 10.0;
constexpr double kDiedAway = -34.0;  // log of a height that no digit feels

// log(1 + exp(x)) without overflow.
double softplus(double x) {
  return x > 0.0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x));
}

double log_binomial(const Count& c, double x) {
  return c.events * x - c.n * softplus(x);
}

double log_choose(const Count& c) {
  return std::lgamma(c.n + 1.0) - std::lgamma(c.events + 1.0) - std::lgamma(c.n - c.events + 1.0);
}

// Integral over the study's own logit, by the trapezoid rule from the mode of the integrand
// outwards until it has died away. For a smooth bell the rule converges faster than any power of
// the step; a count of none or all makes one side a wall, whose width 1 / tau the step must
// resolve.
double log_marginal(const Count& c, double mean, double tau) {
  if (tau < 1e-6) return log_binomial(c, mean) + log_choose(c);
  double mode = 0.0;
  double curvature = 1.0;
  for (int iteration = 0; iteration < 200; ++iteration) {
    const double p = from_logit(mean + tau * mode);
    curvature = 1.0 + tau * tau * c.n * p * (1.0 - p);
    const double step = (tau * (c.events - c.n * p) - mode) / curvature;
    mode += std::clamp(step, -0.5, 0.5);
    if (std::abs(step) < 1e-10) break;
  }
  const double step = std::min(0.4 / std::sqrt(curvature), 0.5 / tau);
  const auto log_integrand = [&](double z) {
    return log_binomial(c, mean + tau * z) - 0.5 * z * z;
  };
  const double peak = log_integrand(mode);
  double sum = 1.0;
  for (const double direction : {-1.0, 1.0}) {
    for (int i = 1;; ++i) {
      const double height = log_integrand(mode + direction * i * step) - peak;
      if (height < kDiedAway) break;
      sum += std::exp(height);
    }
  }
  return peak + std::log(sum * step / std::sqrt(2.0 * std::numbers::pi)) + log_choose(c);
}

bool all_or_none(std::span<const Count> counts) {
  const auto none = [](const Count& c) { return c.events == 0.0; };
  const auto all = [](const Count& c) { return c.events == c.n; };
  return std::ranges::all_of(counts, none) || std::ranges::all_of(counts, all);
}

double best_mean(std::span<const Count> counts, double tau) {
  const auto loss = [&](double mean) { return -logit_normal_log_likelihood(counts, mean, tau); };
  return boost::math::tools::brent_find_minima(loss, -kLargestLogit, kLargestLogit, kBits).first;
}

// Second derivative of the log-likelihood by central differences.
double second_derivative(std::span<const Count> counts, double mean, double tau, double mean_step,
                         double tau_step) {
  const auto at = [&](double i, double j) {
    return logit_normal_log_likelihood(counts, mean + i * mean_step, tau + j * tau_step);
  };
  if (tau_step == 0.0) return (at(1, 0) - 2.0 * at(0, 0) + at(-1, 0)) / (mean_step * mean_step);
  if (mean_step == 0.0) return (at(0, 1) - 2.0 * at(0, 0) + at(0, -1)) / (tau_step * tau_step);
  return (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4.0 * mean_step * tau_step);
}

constexpr double kStep = 1e-3;

double error_of_mean_alone(std::span<const Count> counts, double mean, double tau) {
  return std::sqrt(-1.0 / second_derivative(counts, mean, tau, kStep, 0.0));
}

Interval on_share_scale(double mean, double half_width) {
  return {from_logit(mean - half_width), from_logit(mean + half_width)};
}

}  // namespace

double logit_normal_log_likelihood(std::span<const Count> counts, double mean, double tau) {
  double sum = 0.0;
  for (const Count& c : counts) sum += log_marginal(c, mean, tau);
  return sum;
}

LogitNormal fit_logit_normal_at(std::span<const Count> counts, double tau) {
  if (counts.empty() || all_or_none(counts)) {
    throw std::invalid_argument("the proportion has no finite maximum-likelihood logit");
  }
  const double mean = best_mean(counts, tau);
  return {mean, error_of_mean_alone(counts, mean, tau), tau,
          logit_normal_log_likelihood(counts, mean, tau)};
}

LogitNormal fit_logit_normal(std::span<const Count> counts) {
  LogitNormal fit = fit_logit_normal_at(counts, 0.0);
  if (counts.size() < 2) return fit;
  const auto loss = [&](double tau) {
    return -logit_normal_log_likelihood(counts, best_mean(counts, tau), tau);
  };
  const auto best = boost::math::tools::brent_find_minima(loss, 0.0, kLargestTau, kBits);
  if (-best.second <= fit.log_likelihood || best.first < 2.0 * kStep) return fit;

  fit = fit_logit_normal_at(counts, best.first);
  // The error of the mean allows for that of tau through the whole information matrix.
  const double mm = -second_derivative(counts, fit.mean, fit.tau, kStep, 0.0);
  const double tt = -second_derivative(counts, fit.mean, fit.tau, 0.0, kStep);
  const double mt = -second_derivative(counts, fit.mean, fit.tau, kStep, kStep);
  const double determinant = mm * tt - mt * mt;
  if (determinant > 0.0 && tt > 0.0) fit.standard_error = std::sqrt(tt / determinant);
  return fit;
}

double common_tau(std::span<const std::vector<Count>> groups) {
  const auto says_something = [](const std::vector<Count>& group) {
    return group.size() > 1 && !all_or_none(group);
  };
  if (std::ranges::none_of(groups, says_something)) return 0.0;
  // Each group's mean is estimated from the group, which makes the plain profile likelihood favour
  // too small a tau; the information about the mean corrects it (Cox and Reid, J R Stat Soc B
  // 1987;49:1), as restricted likelihood does for normal data.
  const auto loss = [&](double tau) {
    double sum = 0.0;
    for (const auto& group : groups) {
      if (!says_something(group)) continue;
      const double mean = best_mean(group, tau);
      sum -= logit_normal_log_likelihood(group, mean, tau);
      sum += 0.5 * std::log(-second_derivative(group, mean, tau, kStep, 0.0));
    }
    return sum;
  };
  return boost::math::tools::brent_find_minima(loss, 0.0, kLargestTau, 16).first;
}

PooledProportion pool_proportions(std::span<const Count> counts, double floor_tau, double level) {
  using Binomial = boost::math::binomial_distribution<double>;
  if (counts.empty()) throw std::invalid_argument("no count to pool");
  const double z = boost::math::quantile(boost::math::normal(), 0.5 + level / 2.0);
  PooledProportion pooled;
  pooled.tau = floor_tau;
  pooled.at_floor = true;

  if (counts.size() == 1 || all_or_none(counts)) {
    Count sum;
    for (const Count& c : counts) {
      sum.events += c.events;
      sum.n += c.n;
    }
    const double tail = (1.0 - level) / 2.0;
    pooled.share = sum.events / sum.n;
    pooled.mean_interval = {Binomial::find_lower_bound_on_p(sum.n, sum.events, tail),
                            Binomial::find_upper_bound_on_p(sum.n, sum.events, tail)};
    // Half an event on either side keeps the logit finite (Haldane, Ann Hum Genet 1956;20:309).
    const double events = sum.events + 0.5;
    const double others = sum.n - sum.events + 0.5;
    const double variance = 1.0 / events + 1.0 / others;
    pooled.new_study_interval = on_share_scale(logit(events / (events + others)),
                                               z * std::sqrt(variance + floor_tau * floor_tau));
    return pooled;
  }

  pooled.maximum_likelihood = fit_logit_normal(counts);
  pooled.at_floor = pooled.maximum_likelihood.tau < floor_tau;
  const LogitNormal used =
      pooled.at_floor ? fit_logit_normal_at(counts, floor_tau) : pooled.maximum_likelihood;
  pooled.tau = used.tau;
  pooled.share = from_logit(used.mean);
  pooled.mean_interval = on_share_scale(used.mean, z * used.standard_error);
  pooled.new_study_interval =
      on_share_scale(used.mean, z * std::hypot(used.standard_error, used.tau));
  return pooled;
}

}  // namespace endplate::evidence
