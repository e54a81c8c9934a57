#pragma once
// Smooth functions that a forecast asks millions of times, as piecewise parabolas.
//
// Sampling by the inverse of the distribution function, itself made into a table once, is that of
// Hormann W, Leydold J, ACM Trans Model Comput Simul 2003;13:347 (there with cubic pieces).
#include <bit>
#include <cstdint>
#include <functional>
#include <memory>
#include <vector>

#include "models/recovery/parameters.hpp"

namespace endplate::recovery {

// Through both ends and the middle of its piece: c0 + x (c1 + x c2).
struct Parabola {
  double c0 = 0.0;
  double c1 = 0.0;
  double c2 = 0.0;
  double unused = 0.0;  // so that no parabola lies across two cache lines

  static Parabola through(double x0, double y0, double x1, double y1, double x2, double y2);
  double at(double x) const { return c0 + x * (c1 + x * c2); }
};

// A function on [0, end), which is asked as it is beyond.
class CurveTable {
 public:
  CurveTable() = default;
  CurveTable(std::function<double(double)> f, double end, std::size_t pieces);

  double at(double x) const {
    if (x < 0.0 || x >= end_) return f_(x);
    return pieces_[static_cast<std::size_t>(x * pieces_per_unit_)].at(x);
  }

 private:
  std::function<double(double)> f_;
  double end_ = 0.0;
  double pieces_per_unit_ = 0.0;
  std::vector<Parabola> pieces_;
};

// A quantity that grows smoothly with a standard normal number, at the quantile of a random word:
// the word's 2^32 values stand for the middles of as many equal parts of probability. The pieces
// get narrower by octaves toward both tails, 32 to an octave, so the normal number behind a value
// is right to about 1e-6 in the tails as well.
class QuantileTable {
 public:
  // value(z) at the standard normal number z.
  explicit QuantileTable(const std::function<double(double)>& value);
  // Of a parameter's own distribution; made once for equal parameters.
  static std::shared_ptr<const QuantileTable> of(const Parameter& parameter);
  // The standard normal number itself.
  static const QuantileTable& normal();

  double at(std::uint32_t word) const {
    const std::uint32_t upper = word >> 31U;
    // Distance from the nearer tail, in words; the middle of the word's part.
    const std::uint32_t from_tail = upper != 0 ? ~word : word;
    const double x = static_cast<double>(static_cast<std::int32_t>(from_tail)) + 0.5;
    const auto octaves = static_cast<std::uint32_t>(std::bit_cast<std::uint64_t>(x) >> kShift);
    return pieces_[((octaves - kFirst) << 1U) | upper].at(x);
  }

 private:
  static constexpr unsigned kBits = 5;  // pieces an octave: 2^5
  static constexpr unsigned kShift = 52 - kBits;
  static constexpr std::uint32_t kFirst = 1022U << kBits;  // of x = 0.5
  static constexpr std::uint32_t kOctaves = 32;            // up to x = 2^31

  std::vector<Parabola> pieces_;  // lower and upper tail in turn
};

}  // namespace endplate::recovery
