#pragma once
// A positive quantity that grows with the size of what it belongs to:
//   value(d) = sqrt(a^2 + (b d)^2), with log-normal scatter about it.
#include <span>

namespace endplate::evidence {

struct ScaleCurve {
  double at_zero = 0.0;      // a, in the unit of the value
  double slope = 0.0;        // b, value per unit of d
  double log_scatter = 0.0;  // standard deviation of log(value) about the curve

  double at(double d) const;
};

struct ScalePoint {
  double d = 0.0;             // >= 0
  double log_value = 0.0;     // natural logarithm
  double log_variance = 0.0;  // of log_value, when it is itself uncertain
};

// Maximum likelihood for log-normal scatter. At least three points.
ScaleCurve fit_scale_curve(std::span<const ScalePoint> points);

}  // namespace endplate::evidence
