#include "models/core/summary.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>
#include <vector>

namespace endplate {

Summary summarise_normal(double mean, double sd) {
  static const double z95 = boost::math::quantile(boost::math::normal(), 0.95);
  return {mean, sd, mean - z95 * sd, mean, mean + z95 * sd};
}

Summary summarise_sample(std::span<const double> values) {
  std::vector<double> sorted(values.begin(), values.end());
  std::ranges::sort(sorted);
  const auto n = static_cast<double>(sorted.size());
  const double mean = std::accumulate(sorted.begin(), sorted.end(), 0.0) / n;
  double squares = 0.0;
  for (const double v : sorted) squares += (v - mean) * (v - mean);

  const auto percentile = [&](double p) {
    const double rank = p * (n - 1.0);
    const auto below = static_cast<std::size_t>(rank);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    // Equal neighbours are returned as they are, so that infinities do not become NaN.
    if (sorted[below] == sorted[above]) return sorted[below];
    return std::lerp(sorted[below], sorted[above], rank - static_cast<double>(below));
  };
  const double sd = sorted.size() > 1 ? std::sqrt(squares / (n - 1.0)) : 0.0;
  return {mean, sd, percentile(0.05), percentile(0.50), percentile(0.95)};
}

}  // namespace endplate
