#pragma once
// What is shown of an uncertain quantity, in the unit of whoever holds it.
#include <span>

namespace endplate {

struct Summary {
  double mean = 0.0;
  double sd = 0.0;
  double p05 = 0.0;
  double p50 = 0.0;
  double p95 = 0.0;
};

// Of a normal distribution. sd >= 0.
Summary summarise_normal(double mean, double sd);

// Of a sample; percentiles by linear interpolation (type 7 of Hyndman and Fan, Am Stat
// 1996;50:361). `values` must not be empty; the order of its elements does not matter.
Summary summarise_sample(std::span<const double> values);

}  // namespace endplate
