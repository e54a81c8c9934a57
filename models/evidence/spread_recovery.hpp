#pragma once
// A standard deviation from what else a study prints of its spread, for normal data.
// Wan X, Wang W, Liu J, Tong T, BMC Med Res Methodol 2014;14:135 (equations 9, 12 and 16).
#include <optional>

namespace endplate::evidence {

struct MeanAndSd {
  double mean = 0.0;
  double sd = 0.0;
};

// n > 1 throughout; the figures in ascending order.
double sd_from_range(double min, double max, double n);
double sd_from_quartiles(double q1, double q3, double n);
MeanAndSd from_median_and_range(double min, double median, double max, double n);
MeanAndSd from_median_and_quartiles(double q1, double median, double q3, double n);
MeanAndSd from_five_numbers(double min, double q1, double median, double q3, double max, double n);

// The older rule of Hozo, Djulbegovic and Hozo, BMC Med Res Methodol 2005;5:13, kept for
// comparison: range / 4 up to 70 limbs, range / 6 beyond, a formula with the median up to 15.
double sd_from_range_hozo(double min, double median, double max, double n);

}  // namespace endplate::evidence
