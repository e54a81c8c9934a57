#include "models/evidence/random_effects.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace endplate::evidence {
namespace {

struct Sums {
  double w = 0.0, w2 = 0.0, w3 = 0.0;
  double mean = 0.0;
  double weighted_squares = 0.0;         // sum of w (y - mean)^2
  double double_weighted_squares = 0.0;  // sum of w^2 (y - mean)^2
};

Sums sums_at(std::span<const Effect> effects, double tau_squared) {
  Sums s;
  double weighted = 0.0;
  for (const Effect& e : effects) {
    const double w = 1.0 / (e.variance + tau_squared);
    s.w += w;
    s.w2 += w * w;
    s.w3 += w * w * w;
    weighted += w * e.value;
  }
  s.mean = weighted / s.w;
  for (const Effect& e : effects) {
    const double w = 1.0 / (e.variance + tau_squared);
    const double r = e.value - s.mean;
    s.weighted_squares += w * r * r;
    s.double_weighted_squares += w * w * r * r;
  }
  return s;
}

double dersimonian_laird(std::span<const Effect> effects) {
  const Sums s = sums_at(effects, 0.0);
  const double degrees = static_cast<double>(effects.size()) - 1.0;
  return std::max(0.0, (s.weighted_squares - degrees) / (s.w - s.w2 / s.w));
}

double paule_mandel(std::span<const Effect> effects) {
  const double degrees = static_cast<double>(effects.size()) - 1.0;
  const auto excess = [&](double t) { return sums_at(effects, t).weighted_squares - degrees; };
  if (excess(0.0) <= 0.0) return 0.0;
  double upper = std::max(1e-12, dersimonian_laird(effects));
  while (excess(upper) > 0.0) upper *= 2.0;
  std::uintmax_t iterations = 200;
  const auto [low, high] = boost::math::tools::toms748_solve(
      excess, 0.0, upper, boost::math::tools::eps_tolerance<double>(48), iterations);
  return std::midpoint(low, high);
}

double reml(std::span<const Effect> effects) {
  double tau_squared = dersimonian_laird(effects);
  for (int iteration = 0; iteration < 1000; ++iteration) {
    const Sums s = sums_at(effects, tau_squared);
    const double trace = s.w - s.w2 / s.w;
    const double trace_squared = s.w2 - 2.0 * s.w3 / s.w + (s.w2 / s.w) * (s.w2 / s.w);
    double step = (s.double_weighted_squares - trace) / trace_squared;
    // A step that lowers the likelihood is halved; the boundary at zero is kept.
    const double now = restricted_log_likelihood(effects, tau_squared);
    double next = std::max(0.0, tau_squared + step);
    for (int half = 0; half < 40 && restricted_log_likelihood(effects, next) < now - 1e-13;
         ++half) {
      step *= 0.5;
      next = std::max(0.0, tau_squared + step);
    }
    if (std::abs(next - tau_squared) <= 1e-12 * (1.0 + tau_squared)) return next;
    tau_squared = next;
  }
  return tau_squared;
}

}  // namespace

double restricted_log_likelihood(std::span<const Effect> effects, double tau_squared) {
  const Sums s = sums_at(effects, tau_squared);
  double log_variance = 0.0;
  for (const Effect& e : effects) log_variance += std::log(e.variance + tau_squared);
  return -0.5 * (log_variance + std::log(s.w) + s.weighted_squares);
}

RandomEffects random_effects_at(std::span<const Effect> effects, double tau_squared) {
  if (effects.empty()) throw std::invalid_argument("no effect to pool");
  for (const Effect& e : effects) {
    if (!(e.variance > 0.0)) throw std::invalid_argument("a sampling variance is not positive");
  }
  const Sums equal = sums_at(effects, 0.0);
  const Sums s = sums_at(effects, tau_squared);
  RandomEffects result;
  result.mean = s.mean;
  result.standard_error = std::sqrt(1.0 / s.w);
  result.tau_squared = tau_squared;
  for (const Effect& e : effects) {
    result.weights.push_back(1.0 / ((e.variance + tau_squared) * s.w));
  }
  if (effects.size() > 1) {
    const double degrees = static_cast<double>(effects.size()) - 1.0;
    const double typical_variance = degrees / (equal.w - equal.w2 / equal.w);
    result.q = equal.weighted_squares;
    result.q_p_value =
        boost::math::cdf(boost::math::complement(boost::math::chi_squared(degrees), result.q));
    result.i_squared = tau_squared / (tau_squared + typical_variance);
  }
  return result;
}

Interval confidence_interval(const RandomEffects& fit, double level) {
  const double z = boost::math::quantile(boost::math::normal(), 0.5 + level / 2.0);
  return {fit.mean - z * fit.standard_error, fit.mean + z * fit.standard_error};
}

Interval prediction_interval(const RandomEffects& fit, double level) {
  const double z = boost::math::quantile(boost::math::normal(), 0.5 + level / 2.0);
  const double spread = std::hypot(fit.standard_error, std::sqrt(fit.tau_squared));
  return {fit.mean - z * spread, fit.mean + z * spread};
}

RandomEffects random_effects(std::span<const Effect> effects, TauMethod method) {
  double tau_squared = 0.0;
  if (effects.size() > 1) {
    tau_squared = method == TauMethod::reml                ? reml(effects)
                  : method == TauMethod::dersimonian_laird ? dersimonian_laird(effects)
                                                           : paule_mandel(effects);
  }
  return random_effects_at(effects, tau_squared);
}

}  // namespace endplate::evidence
