#include "models/recovery/growth.hpp"

#include <catch2/catch.hpp>
#include <cmath>

using endplate::recovery::ArrivalLaw;
using endplate::recovery::Slowing;

TEST_CASE("the mean rate over the reference distance is the rate that was given", "[recovery]") {
  const Slowing slowing{150.0, 750.0};
  for (const double rate : {0.8, 1.4, 2.2}) {
    CHECK(slowing.transit_days(150.0, rate) == Approx(150.0 / rate));
  }
}

TEST_CASE("the transit time is the integral of distance over the local rate", "[recovery]") {
  const Slowing slowing{150.0, 750.0};
  const double rate = 1.4;
  // Local rate falls as exp(-x/750); its value at the lesion follows from the reference distance.
  const double at_lesion = rate * 750.0 * (std::exp(150.0 / 750.0) - 1.0) / 150.0;
  for (const double distance : {40.0, 200.0, 600.0}) {
    double days = 0.0;
    constexpr int kSteps = 20000;
    for (int k = 0; k < kSteps; ++k) {
      const double x = (k + 0.5) * distance / kSteps;
      days += distance / kSteps / (at_lesion * std::exp(-x / 750.0));
    }
    CHECK(slowing.transit_days(distance, rate) == Approx(days).epsilon(1e-6));
  }
}

TEST_CASE("the advance of the front is the inverse of the transit time", "[recovery]") {
  const Slowing slowing{150.0, 750.0};
  for (const double distance : {0.0, 10.0, 150.0, 650.0}) {
    const double days = slowing.transit_days(distance, 1.3);
    CHECK(slowing.advance_mm(days, 1.3) == Approx(distance).margin(1e-9));
  }
}

TEST_CASE("without a delay the law of arrival is a shifted lognormal", "[recovery]") {
  const ArrivalLaw law{100.0, 20.0, 0.0, 150.0, 0.36};
  CHECK(law.cdf(270.0) == Approx(0.5));
  CHECK(law.quantile(0.95) == Approx(120.0 + 150.0 * std::exp(0.36 * 1.6448536269514722)));
  CHECK(law.cdf(119.0) == 0.0);
}

TEST_CASE("the quantile of the law of arrival is the inverse of its distribution", "[recovery]") {
  const ArrivalLaw law{30.0, 49.0, 9.9, 200.0, 0.36};
  for (const double chance : {0.01, 0.05, 0.5, 0.95, 0.99}) {
    CHECK(law.cdf(law.quantile(chance)) == Approx(chance).margin(1e-8));
  }
}
