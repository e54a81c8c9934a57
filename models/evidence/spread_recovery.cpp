#include "models/evidence/spread_recovery.hpp"

#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <stdexcept>

namespace endplate::evidence {
namespace {

double normal_quantile(double p) {
  return boost::math::quantile(boost::math::normal(), p);
}

void require(double n) {
  if (!(n > 1.0)) throw std::invalid_argument("a spread needs more than one limb");
}

// Expected position of the extremes and of the quartiles of n normal values (Blom's scores).
double extreme(double n) {
  return normal_quantile((n - 0.375) / (n + 0.25));
}
double quartile(double n) {
  return normal_quantile((0.75 * n - 0.125) / (n + 0.25));
}

}  // namespace

double sd_from_range(double min, double max, double n) {
  require(n);
  return (max - min) / (2.0 * extreme(n));
}

double sd_from_quartiles(double q1, double q3, double n) {
  require(n);
  return (q3 - q1) / (2.0 * quartile(n));
}

MeanAndSd from_median_and_range(double min, double median, double max, double n) {
  return {(min + 2.0 * median + max) / 4.0, sd_from_range(min, max, n)};
}

MeanAndSd from_median_and_quartiles(double q1, double median, double q3, double n) {
  return {(q1 + median + q3) / 3.0, sd_from_quartiles(q1, q3, n)};
}

MeanAndSd from_five_numbers(double min, double q1, double median, double q3, double max, double n) {
  return {(min + 2.0 * q1 + 2.0 * median + 2.0 * q3 + max) / 8.0,
          0.5 * (sd_from_range(min, max, n) + sd_from_quartiles(q1, q3, n))};
}

double sd_from_range_hozo(double min, double median, double max, double n) {
  require(n);
  const double range = max - min;
  if (n <= 15.0) {
    const double skew = min - 2.0 * median + max;
    return std::sqrt((skew * skew / 4.0 + range * range) / 12.0);
  }
  return range / (n <= 70.0 ? 4.0 : 6.0);
}

}  // namespace endplate::evidence
