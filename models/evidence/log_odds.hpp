#pragma once
// Log odds of a chance and back. 0 < chance < 1.
#include <cmath>

namespace endplate::evidence {

// 90 % of a normal quantity lie within so many standard deviations of its mean.
inline constexpr double kNinetyPerCentInSd = 1.6448536269514722;

inline double logit(double chance) {
  return std::log(chance / (1.0 - chance));
}

inline double from_logit(double log_odds) {
  return 1.0 / (1.0 + std::exp(-log_odds));
}

}  // namespace endplate::evidence
