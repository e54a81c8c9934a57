#include "models/recovery/weighted.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <memory>
#include <utility>
#include <vector>

namespace endplate::recovery {
namespace {

constexpr std::array<double, 3> kChances{0.05, 0.5, 0.95};
// Below this many values everything is sorted; above it only the bins that hold a percentile.
constexpr std::size_t kSortAll = 400;
constexpr std::size_t kBins = 1024;

// Sums are kept in four lanes, which the processor adds at once; their order never changes.
constexpr std::size_t kLanes = 4;
using Lanes = std::array<double, kLanes>;

double all(const Lanes& of) {
  return (of[0] + of[1]) + (of[2] + of[3]);
}

// add(lane, i) for every i below n.
template <class Add>
void in_lanes(std::size_t n, const Add& add) {
  std::size_t i = 0;
  for (; i + kLanes <= n; i += kLanes) {
    for (std::size_t lane = 0; lane < kLanes; ++lane) add(lane, i + lane);
  }
  for (; i < n; ++i) add(0, i);
}

struct Extent {
  double low = 0.0;
  double high = 0.0;
  double total = 0.0;
  double total_squares = 0.0;
  double mean = 0.0;
  double first = 0.0;  // weight of the lowest and of the highest value
  double last = 0.0;
};

Extent extent_of(std::span<const double> values, std::span<const double> weights) {
  Lanes low{};
  Lanes high{};
  Lanes sum{};
  low.fill(values[0]);
  high.fill(values[0]);
  in_lanes(values.size(), [&](std::size_t lane, std::size_t i) {
    const double v = values[i];
    low[lane] = v < low[lane] ? v : low[lane];
    high[lane] = v > high[lane] ? v : high[lane];
    sum[lane] += weights[i] * v;
  });
  Extent e;
  e.low = std::ranges::min(low);
  e.high = std::ranges::max(high);
  Lanes total{};
  Lanes squares{};
  e.first = HUGE_VAL;
  in_lanes(values.size(), [&](std::size_t lane, std::size_t i) {
    total[lane] += weights[i];
    squares[lane] += weights[i] * weights[i];
    if (values[i] == e.low) e.first = std::min(e.first, weights[i]);
    if (values[i] == e.high) e.last = std::max(e.last, weights[i]);
  });
  e.total = all(total);
  e.total_squares = all(squares);
  e.mean = all(sum) / e.total;
  return e;
}

double sd_of(double squares, const Extent& e) {
  const double freedom = e.total - e.total_squares / e.total;
  return freedom > 0.0 ? std::sqrt(squares / freedom) : 0.0;
}

struct Item {
  double value = 0.0;
  double weight = 0.0;
  double before = 0.0;  // weight of all items below it
};

// In order, with the weight below each; `before` comes in as the weight below the item's bin.
void put_in_order(std::vector<Item>& items) {
  std::ranges::sort(items, {}, [](const Item& item) { return std::pair{item.value, item.weight}; });
  double bin_before = -1.0;
  double running = 0.0;
  for (Item& item : items) {
    if (item.before != bin_before) running = bin_before = item.before;
    item.before = running;
    running += item.weight;
  }
}

// Of many values: those in the bins that a percentile may lie in. It lies between two neighbours,
// so the filled bins on both sides come along. Adds up the squares on the way.
std::vector<Item> near_percentiles(std::span<const double> values, std::span<const double> weights,
                                   const Extent& e, const std::array<double, 3>& wanted,
                                   double& sum_of_squares) {
  const double scale = static_cast<double>(kBins) / (e.high - e.low);
  const auto bin = std::make_unique_for_overwrite<std::uint16_t[]>(values.size());
  std::array<double, kBins> heap{};
  Lanes squares{};
  in_lanes(values.size(), [&](std::size_t lane, std::size_t i) {
    const double off = values[i] - e.mean;
    squares[lane] += weights[i] * off * off;
    const auto b =
        std::min<std::int32_t>(static_cast<std::int32_t>((values[i] - e.low) * scale), kBins - 1);
    bin[i] = static_cast<std::uint16_t>(b);
    heap[static_cast<std::size_t>(b)] += weights[i];
  });
  sum_of_squares = all(squares);

  std::array<double, kBins> before{};
  double below = 0.0;
  for (std::size_t b = 0; b < kBins; ++b) {
    before[b] = below;
    below += heap[b];
  }
  std::array<bool, kBins> near{};
  for (const double target : wanted) {
    const auto above = std::ranges::upper_bound(before, target);
    auto b = static_cast<std::size_t>(above - before.begin()) - 1;
    near[b] = true;
    for (std::size_t left = b; left-- > 0;) {
      near[left] = true;
      if (heap[left] > 0.0) break;
    }
    for (std::size_t right = b + 1; right < kBins; ++right) {
      near[right] = true;
      if (heap[right] > 0.0) break;
    }
  }
  std::vector<Item> items;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (near[bin[i]]) items.push_back({values[i], weights[i], before[bin[i]]});
  }
  return items;
}

Summary summarise(std::span<const double> values, std::span<const double> weights) {
  const Extent e = extent_of(values, weights);
  // Half of the outermost items' weights lies beyond their middles.
  const double begin = 0.5 * e.first;
  const double range = e.total - begin - 0.5 * e.last;
  std::array<double, 3> wanted{};
  for (std::size_t k = 0; k < 3; ++k) wanted[k] = begin + kChances[k] * range;

  std::vector<Item> items;
  double squares = 0.0;
  if (values.size() < kSortAll || !(e.high > e.low) || !std::isfinite(e.high - e.low)) {
    for (std::size_t i = 0; i < values.size(); ++i) {
      items.push_back({values[i], weights[i], 0.0});
      squares += weights[i] * (values[i] - e.mean) * (values[i] - e.mean);
    }
  } else {
    items = near_percentiles(values, weights, e, wanted, squares);
  }
  put_in_order(items);
  Summary summary;
  summary.mean = e.mean;
  summary.sd = sd_of(squares, e);

  const std::array<double*, 3> results{&summary.p05, &summary.p50, &summary.p95};
  std::size_t i = 0;
  const auto middle = [&](std::size_t k) { return items[k].before + 0.5 * items[k].weight; };
  for (std::size_t k = 0; k < 3; ++k) {
    while (i + 1 < items.size() && middle(i + 1) < wanted[k]) ++i;
    if (i + 1 == items.size() || items[i].value == items[i + 1].value) {
      *results[k] = items[i].value;
      continue;
    }
    const double part = std::clamp((wanted[k] - middle(i)) / (middle(i + 1) - middle(i)), 0.0, 1.0);
    *results[k] = std::lerp(items[i].value, items[i + 1].value, part);
  }
  return summary;
}

}  // namespace

std::optional<Summary> summarise_weighted(std::span<const double> values,
                                          std::span<const double> weights) {
  std::vector<double> kept;
  std::vector<double> kept_weights;
  kept.reserve(values.size());
  kept_weights.reserve(values.size());
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (weights[i] <= 0.0) continue;
    kept.push_back(values[i]);
    kept_weights.push_back(weights[i]);
  }
  if (kept.empty()) return std::nullopt;
  return summarise(kept, kept_weights);
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
