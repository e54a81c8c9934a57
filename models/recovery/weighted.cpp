#include "models/recovery/weighted.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace endplate::recovery {

std::optional<Summary> summarise_weighted(std::span<const double> values,
                                          std::span<const double> weights) {
  std::vector<std::pair<double, double>> sorted;
  sorted.reserve(values.size());
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (weights[i] > 0.0) sorted.emplace_back(values[i], weights[i]);
  }
  if (sorted.empty()) return std::nullopt;
  std::ranges::sort(sorted);

  double total = 0.0;
  double sum = 0.0;
  for (const auto& [value, weight] : sorted) {
    total += weight;
    sum += weight * value;
  }
  Summary summary;
  summary.mean = sum / total;
  double squares = 0.0;
  double weight_squares = 0.0;
  for (const auto& [value, weight] : sorted) {
    squares += weight * (value - summary.mean) * (value - summary.mean);
    weight_squares += weight * weight;
  }
  const double freedom = total - weight_squares / total;
  summary.sd = freedom > 0.0 ? std::sqrt(squares / freedom) : 0.0;

  const double begin = 0.5 * sorted.front().second;
  const double range = total - begin - 0.5 * sorted.back().second;
  const std::array<double, 3> chances{0.05, 0.5, 0.95};
  std::array<double*, 3> results{&summary.p05, &summary.p50, &summary.p95};
  double middle = begin;  // weight up to the middle of item i
  std::size_t i = 0;
  for (std::size_t k = 0; k < chances.size(); ++k) {
    const double wanted = begin + chances[k] * range;
    while (i + 1 < sorted.size()) {
      const double next = middle + 0.5 * (sorted[i].second + sorted[i + 1].second);
      if (next >= wanted) break;
      middle = next;
      ++i;
    }
    if (i + 1 == sorted.size()) {
      *results[k] = sorted[i].first;
      continue;
    }
    const double step = 0.5 * (sorted[i].second + sorted[i + 1].second);
    const double part = std::clamp((wanted - middle) / step, 0.0, 1.0);
    *results[k] = std::lerp(sorted[i].first, sorted[i + 1].first, part);
  }
  return summary;
}

double effective_size(std::span<const double> weights) {
  double sum = 0.0;
  double squares = 0.0;
  for (const double w : weights) {
    sum += w;
    squares += w * w;
  }
  return squares > 0.0 ? sum * sum / squares : 0.0;
}

}  // namespace endplate::recovery
