#pragma once
// The exponential function in single precision, of four numbers at once, without a table.
#include "models/recovery/four.hpp"

namespace endplate::recovery {

// Right to 2e-7 of its value for -87 < x < 88; anything beyond.
inline FourFloats quick_exp(FourFloats x) {
  // Added to a small number, it leaves the nearest integer in the lowest bits.
  constexpr float kRound = 0x1.8p23F;
  // The logarithm of 2 in two parts, the first short enough to be multiplied without rounding
  // (Cody WJ, Waite W, Software manual for the elementary functions, 1980).
  constexpr float kLog2High = 0x1.63p-1F;
  constexpr float kLog2Low = -0x1.bd0106p-13F;
  const FourFloats rounded = x * 0x1.715476p0F + kRound;
  const FourFloats power = rounded - kRound;
  const FourFloats rest = (x - power * kLog2High) - power * kLog2Low;
  // The series of the exponential function; the next term would be under 6e-9.
  FourFloats series = rest * (1.0F / 5040.0F) + 1.0F / 720.0F;
  series = series * rest + 1.0F / 120.0F;
  series = series * rest + 1.0F / 24.0F;
  series = series * rest + 1.0F / 6.0F;
  series = series * rest + 0.5F;
  series = series * rest + 1.0F;
  series = series * rest + 1.0F;
  constexpr std::int32_t kMantissa = 23;
  constexpr std::int32_t kOne = 127 << kMantissa;
  const FourInts exponent = std::bit_cast<FourInts>(rounded) << kMantissa;
  return series * std::bit_cast<FourFloats>(exponent + kOne);
}

}  // namespace endplate::recovery
