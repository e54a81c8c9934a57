#pragma once
// Smooth functions that a forecast asks millions of times, as piecewise parabolas in single
// precision, four numbers at once.
//
// Sampling by the inverse of the distribution function, itself made into a table once, is that of
// Hormann W, Leydold J, ACM Trans Model Comput Simul 2003;13:347 (there with cubic pieces).
#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <vector>

#include "models/recovery/four.hpp"
#include "models/recovery/parameters.hpp"

namespace endplate::recovery {

// c0 + x (c1 + x c2), where x counts from the piece's beginning.
struct alignas(16) Parabola {
  float c0 = 0.0F;
  float c1 = 0.0F;
  float c2 = 0.0F;
  float unused = 0.0F;  // so that one load fetches a whole parabola

  // Through both ends and the middle of a piece that is `width` wide.
  static Parabola through(double begin, double middle, double end, double width);
};

// Pieces of equal width, 32 to each octave of a positive number: which one is told by the leading
// bits of the number, how far into it by the bits that follow.
class Octaves {
 public:
  static constexpr int kPieces = 32;          // an octave
  static constexpr int kShift = 23 - 5;       // of a float's 23 bits, 5 tell the piece: 2^5
  static constexpr int kWidth = 1 << kShift;  // of a piece, in units of the number's last bit
  struct Place {
    FourInts piece;     // counted from that in which 1 lies
    FourFloats offset;  // in units of the number's last bit
  };
  static Place place_of(FourFloats x) {
    const FourInts bits = std::bit_cast<FourInts>(x);
    return {(bits >> kShift) - kOne, __builtin_convertvector(bits & (kWidth - 1), FourFloats)};
  }
  // f over piece k, counted likewise.
  static Parabola over(int k, const std::function<double(double)>& f);
  // Where piece k begins.
  static double begin(int k);

  // At these pieces of a table, so far from their beginnings.
  static FourFloats at(const Parabola* table, FourInts pieces, FourFloats offset) {
    const auto piece = std::bit_cast<FourWords>(pieces);
    // Four parabolas, made into four of each coefficient.
    const auto a = load_four<FourFloats>(&table[piece[0]].c0);
    const auto b = load_four<FourFloats>(&table[piece[1]].c0);
    const auto c = load_four<FourFloats>(&table[piece[2]].c0);
    const auto d = load_four<FourFloats>(&table[piece[3]].c0);
    const FourFloats ab01 = __builtin_shufflevector(a, b, 0, 4, 1, 5);
    const FourFloats cd01 = __builtin_shufflevector(c, d, 0, 4, 1, 5);
    const FourFloats ab23 = __builtin_shufflevector(a, b, 2, 6, 3, 7);
    const FourFloats cd23 = __builtin_shufflevector(c, d, 2, 6, 3, 7);
    const FourFloats c0 = __builtin_shufflevector(ab01, cd01, 0, 1, 4, 5);
    const FourFloats c1 = __builtin_shufflevector(ab01, cd01, 2, 3, 6, 7);
    const FourFloats c2 = __builtin_shufflevector(ab23, cd23, 0, 1, 4, 5);
    return c0 + offset * (c1 + offset * c2);
  }

 private:
  static constexpr int kOne = 127 * kPieces;
};

// A function that falls off smoothly from day 1 to day 2^16, and is as good as constant before and
// after.
class CurveTable {
 public:
  explicit CurveTable(const std::function<double(double)>& f);

  float at(float x) const { return four(FourFloats{x, x, x, x})[0]; }
  // Of all together.
  double sum(std::span<const float> x) const;

 private:
  static constexpr int kOctaves = 16;

  FourFloats four(FourFloats x) const {
    constexpr FourFloats kFirst{1.0F, 1.0F, 1.0F, 1.0F};
    constexpr FourFloats kLast{65535.0F, 65535.0F, 65535.0F, 65535.0F};
    x = x > kFirst ? x : kFirst;
    x = x < kLast ? x : kLast;
    const Octaves::Place place = Octaves::place_of(x);
    return Octaves::at(pieces_.data(), place.piece, place.offset);
  }

  std::vector<Parabola> pieces_;
};

// A quantity that grows smoothly with a standard normal number, at the quantile of a random word:
// the word's 2^32 values stand for the middles of as many equal parts of probability. The pieces
// get narrower by octaves toward both tails, so the normal number behind a value is right to about
// 1e-6 in the tails as well.
class QuantileTable {
 public:
  // value(z) at the standard normal number z.
  explicit QuantileTable(const std::function<double(double)>& value);
  // Of a parameter's own distribution; made once for equal parameters.
  static std::shared_ptr<const QuantileTable> of(const Parameter& parameter);
  // The standard normal number itself.
  static const QuantileTable& normal();

  float at(std::uint32_t word) const {
    const auto bits = std::bit_cast<std::int32_t>(word);
    return four(FourInts{bits, bits, bits, bits})[0];
  }
  // Of every word. The spans have the same length.
  void fill(std::span<const std::uint32_t> words, std::span<float> into) const;
  // The same added to what was before.
  void add(std::span<const std::uint32_t> words, std::span<const float> before,
           std::span<float> into) const;

 private:
  static constexpr int kFirst = -Octaves::kPieces;  // of 0.5
  static constexpr int kOctaves = 32;               // up to 2^31

  FourFloats four(FourInts word) const {
    const FourInts upper = word >> 31;  // -1 in the upper half
    // Distance from the nearer tail, in words; the middle of the word's part.
    const FourInts from_tail = word ^ upper;
    const FourFloats x = __builtin_convertvector(from_tail, FourFloats) + 0.5F;
    const Octaves::Place place = Octaves::place_of(x);
    return Octaves::at(pieces_.data(), ((place.piece - kFirst) << 1) - upper, place.offset);
  }

  std::vector<Parabola> pieces_;  // lower and upper tail in turn
};

}  // namespace endplate::recovery
