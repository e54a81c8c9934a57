#pragma once
#include <algorithm>

namespace endplate::geometry {

// From 0 to 1 as t goes from 0 to 1, level at both ends; constant beyond them.
inline double smooth_step(double t) {
  const double s = std::clamp(t, 0.0, 1.0);
  return s * s * (3.0 - 2.0 * s);
}

}  // namespace endplate::geometry
