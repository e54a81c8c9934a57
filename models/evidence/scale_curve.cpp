#include "models/evidence/scale_curve.hpp"

#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace endplate::evidence {
namespace {

double log_shape(double ratio, double d) {
  return 0.5 * std::log1p(ratio * ratio * d * d);
}

// With the ratio b / a given, log a is the mean of what the shape leaves over.
std::pair<double, double> log_scale_and_scatter(std::span<const ScalePoint> points, double ratio) {
  const auto n = static_cast<double>(points.size());
  double log_scale = 0.0;
  for (const ScalePoint& p : points) log_scale += (p.log_value - log_shape(ratio, p.d)) / n;
  double variance = 0.0;
  for (const ScalePoint& p : points) {
    const double residual = p.log_value - log_shape(ratio, p.d) - log_scale;
    variance += (residual * residual + p.log_variance) / n;
  }
  return {log_scale, std::sqrt(variance)};
}

}  // namespace

double ScaleCurve::at(double d) const {
  return std::hypot(at_zero, slope * d);
}

ScaleCurve fit_scale_curve(std::span<const ScalePoint> points) {
  if (points.size() < 3) throw std::invalid_argument("a scale curve needs three points");
  // From "no growth over a metre" to "proportional from a tenth of a millimetre on".
  const auto scatter_at = [&](double log_ratio) {
    return log_scale_and_scatter(points, std::exp(log_ratio)).second;
  };
  const auto best =
      boost::math::tools::brent_find_minima(scatter_at, std::log(1e-3), std::log(10.0), 24);
  const double ratio = std::exp(best.first);
  const auto [log_scale, scatter] = log_scale_and_scatter(points, ratio);
  return {std::exp(log_scale), ratio * std::exp(log_scale), scatter};
}

}  // namespace endplate::evidence
