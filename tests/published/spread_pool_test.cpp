// A spread recovered from a range or from quartiles against the table of its publication.
#include <catch2/catch.hpp>
#include <cmath>
#include <utility>
#include <vector>

#include "models/evidence/spread_recovery.hpp"

using namespace endplate::evidence;

// Wan X, Wang W, Liu J, Tong T, BMC Med Res Methodol 2014;14:135, table 1: the exact expected range
// of n normal values of standard deviation 1, of which the formula is the approximation.
TEST_CASE("the spread from a range agrees with table 1 of Wan 2014", "[published]") {
  const std::vector<std::pair<double, double>> xi{
      {5, 2.326},  {8, 2.847},  {10, 3.078}, {12, 3.259}, {15, 3.472}, {20, 3.735},
      {25, 3.931}, {30, 4.086}, {35, 4.213}, {40, 4.322}, {45, 4.415}, {50, 4.498}};
  for (const auto& [n, expected_range] : xi) {
    INFO("n = " << n);
    CHECK(sd_from_range(0.0, expected_range, n) == Approx(1.0).epsilon(0.02));
  }
}

// The quartiles of a normal distribution lie 0.6745 standard deviations from its mean; the divisor
// of the paper's equation 16 tends to twice that.
TEST_CASE("the spread from quartiles tends to their range over 1.349", "[published]") {
  CHECK(sd_from_quartiles(-0.6745, 0.6745, 1e6) == Approx(1.0).epsilon(1e-4));
  CHECK(sd_from_quartiles(10.0, 20.0, 100) == Approx(10.0 / 1.349).epsilon(0.02));
}

// The estimators of the mean as the paper gives them for its three scenarios.
TEST_CASE("the mean from a median and range or quartiles follows Wan 2014", "[published]") {
  CHECK(from_median_and_range(2, 10, 30, 20).mean == Approx((2 + 20 + 30) / 4.0));
  CHECK(from_median_and_quartiles(4, 10, 13, 20).mean == Approx(9.0));
  const auto five = from_five_numbers(2, 4, 10, 13, 30, 20);
  CHECK(five.mean == Approx((2 + 8 + 20 + 26 + 30) / 8.0));
  CHECK(five.sd == Approx(0.5 * (sd_from_range(2, 30, 20) + sd_from_quartiles(4, 13, 20))));
}

// Hozo SP, Djulbegovic B, Hozo I, BMC Med Res Methodol 2005;5:13.
TEST_CASE("the older rule of Hozo 2005 is kept for comparison", "[published]") {
  CHECK(sd_from_range_hozo(0, 10, 40, 20) == Approx(10.0));
  CHECK(sd_from_range_hozo(0, 10, 60, 100) == Approx(10.0));
  CHECK(sd_from_range_hozo(0, 10, 20, 10) == Approx(std::sqrt(400.0 / 12.0)));
  // With 70 limbs the rule of four is too wide by a sixth.
  CHECK(sd_from_range(0, 40, 70) / sd_from_range_hozo(0, 10, 40, 70) == Approx(0.84).margin(0.02));
}
