#include "models/recovery/curve_table.hpp"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <map>
#include <mutex>
#include <numbers>
#include <tuple>

namespace endplate::recovery {
namespace {

// Standard normal numbers at both ends and the middle of each piece of the lower tail.
struct NormalKnots {
  std::vector<std::array<double, 3>> x;
  std::vector<std::array<double, 3>> z;

  NormalKnots(std::uint32_t pieces, std::uint32_t first, unsigned shift) {
    for (std::uint32_t k = 0; k < pieces; ++k) {
      const auto begin = [&](std::uint32_t piece) {
        return std::bit_cast<double>(static_cast<std::uint64_t>(first + piece) << shift);
      };
      const double low = begin(k);
      const double high = begin(k + 1);
      x.push_back({low, 0.5 * (low + high), high});
      std::array<double, 3> numbers{};
      for (std::size_t j = 0; j < 3; ++j) {
        const double chance = std::min(0.5, x.back()[j] * 0x1p-32);
        numbers[j] = -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * chance);
      }
      z.push_back(numbers);
    }
  }
};

}  // namespace

Parabola Parabola::through(double x0, double y0, double x1, double y1, double x2, double y2) {
  const double first = (y1 - y0) / (x1 - x0);
  const double second = ((y2 - y1) / (x2 - x1) - first) / (x2 - x0);
  Parabola p;
  p.c2 = second;
  p.c1 = first - second * (x0 + x1);
  p.c0 = y0 - x0 * (first - second * x1);
  return p;
}

CurveTable::CurveTable(std::function<double(double)> f, double end, std::size_t pieces)
    : f_(std::move(f)), end_(end), pieces_per_unit_(static_cast<double>(pieces) / end) {
  const double step = end / static_cast<double>(pieces);
  // One more than is asked for: a number just below the end may be rounded up to it.
  for (std::size_t k = 0; k <= pieces; ++k) {
    const double x0 = step * static_cast<double>(k);
    const double x1 = x0 + 0.5 * step;
    const double x2 = x0 + step;
    pieces_.push_back(Parabola::through(x0, f_(x0), x1, f_(x1), x2, f_(x2)));
  }
}

QuantileTable::QuantileTable(const std::function<double(double)>& value) {
  static const NormalKnots kKnots(kOctaves << kBits, kFirst, kShift);
  pieces_.reserve(2 * kKnots.x.size());
  for (std::size_t k = 0; k < kKnots.x.size(); ++k) {
    const auto& x = kKnots.x[k];
    const auto& z = kKnots.z[k];
    for (const double sign : {1.0, -1.0}) {
      pieces_.push_back(Parabola::through(x[0], value(sign * z[0]), x[1], value(sign * z[1]), x[2],
                                          value(sign * z[2])));
    }
  }
}

std::shared_ptr<const QuantileTable> QuantileTable::of(const Parameter& parameter) {
  constexpr std::size_t kMostKept = 32;
  using Key = std::tuple<Family, double, double>;
  static std::mutex mutex;
  static std::map<Key, std::shared_ptr<const QuantileTable>> kept;
  const std::scoped_lock lock(mutex);
  const Key key{parameter.family, parameter.mean, parameter.sd};
  if (const auto found = kept.find(key); found != kept.end()) return found->second;
  if (kept.size() >= kMostKept) kept.clear();
  auto table = std::make_shared<const QuantileTable>([&](double z) { return parameter.at(z); });
  kept.emplace(key, table);
  return table;
}

const QuantileTable& QuantileTable::normal() {
  static const QuantileTable kNormal([](double z) { return z; });
  return kNormal;
}

}  // namespace endplate::recovery
