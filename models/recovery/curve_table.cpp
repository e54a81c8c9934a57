#include "models/recovery/curve_table.hpp"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <map>
#include <mutex>
#include <numbers>
#include <tuple>

namespace endplate::recovery {
namespace {

// Standard normal numbers at both ends and the middle of each piece of the lower tail, and at the
// end of the last.
std::vector<double> normal_knots(int first, int pieces) {
  std::vector<double> knots;
  for (int k = first; k <= first + pieces; ++k) {
    const double begin = Octaves::begin(k);
    for (const double x : {begin, 0.5 * (begin + Octaves::begin(k + 1))}) {
      const double chance = std::min(0.5, x * 0x1p-32);
      knots.push_back(-std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * chance));
    }
  }
  return knots;
}

}  // namespace

Parabola Parabola::through(double begin, double middle, double end, double width) {
  Parabola p;
  p.c0 = static_cast<float>(begin);
  p.c1 = static_cast<float>((4.0 * middle - 3.0 * begin - end) / width);
  p.c2 = static_cast<float>(2.0 * (begin - 2.0 * middle + end) / (width * width));
  return p;
}

double Octaves::begin(int k) {
  const int octave = k >= 0 ? k / kPieces : -((kPieces - 1 - k) / kPieces);
  return std::ldexp(1.0 + static_cast<double>(k - octave * kPieces) / kPieces, octave);
}

Parabola Octaves::over(int k, const std::function<double(double)>& f) {
  const double x0 = begin(k);
  const double x2 = begin(k + 1);
  return Parabola::through(f(x0), f(0.5 * (x0 + x2)), f(x2), kWidth);
}

CurveTable::CurveTable(const std::function<double(double)>& f) {
  for (int k = 0; k < kOctaves * Octaves::kPieces; ++k) pieces_.push_back(Octaves::over(k, f));
}

double CurveTable::sum(std::span<const float> x) const {
  // Four sums of up to so many groups are taken in single precision, then in double.
  constexpr std::size_t kTogether = 256;
  double sum = 0.0;
  for (std::size_t begin = 0; begin < x.size(); begin += kTogether) {
    const std::size_t n = std::min(kTogether, x.size() - begin);
    FourFloats sums{};
    by_fours(n, [&](std::size_t i, std::size_t count) {
      FourFloats values = four(load_four<FourFloats>(x.data() + begin + i, count));
      for (std::size_t lane = count; lane < kFour; ++lane) values[lane] = 0.0F;
      sums += values;
    });
    sum += double{sums[0] + sums[1]} + double{sums[2] + sums[3]};
  }
  return sum;
}

QuantileTable::QuantileTable(const std::function<double(double)>& value) {
  constexpr int kPieces = kOctaves * Octaves::kPieces;
  static const std::vector<double> kKnots = normal_knots(kFirst, kPieces);
  pieces_.reserve(std::size_t{2} * (kPieces + 1));
  for (std::size_t k = 0; k < kPieces; ++k) {
    for (const double sign : {1.0, -1.0}) {
      const auto at = [&](std::size_t knot) { return value(sign * kKnots[2 * k + knot]); };
      pieces_.push_back(Parabola::through(at(0), at(1), at(2), Octaves::kWidth));
    }
  }
  // The words next to the middle are rounded up to the end of the last piece.
  for (int side = 0; side < 2; ++side) {
    pieces_.push_back({.c0 = static_cast<float>(value(0.0))});
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

void QuantileTable::fill(std::span<const std::uint32_t> words, std::span<float> into) const {
  by_fours(words.size(), [&](std::size_t i, std::size_t count) {
    store_four(four(load_four<FourInts>(words.data() + i, count)), into.data() + i, count);
  });
}

void QuantileTable::add(std::span<const std::uint32_t> words, std::span<const float> before,
                        std::span<float> into) const {
  by_fours(words.size(), [&](std::size_t i, std::size_t count) {
    const auto values = four(load_four<FourInts>(words.data() + i, count));
    store_four(load_four<FourFloats>(before.data() + i, count) + values, into.data() + i, count);
  });
}

}  // namespace endplate::recovery
