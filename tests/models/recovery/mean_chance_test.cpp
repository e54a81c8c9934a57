#include "models/recovery/mean_chance.hpp"

#include <catch2/catch.hpp>
#include <cmath>

using endplate::recovery::mean_chance;

TEST_CASE("the mean chance without a spread is the chance itself", "[recovery]") {
  CHECK(mean_chance(0.0, 0.0) == Approx(0.5));
  CHECK(mean_chance(2.0, 0.0) == Approx(1.0 / (1.0 + std::exp(-2.0))));
}

TEST_CASE("a spread draws the mean chance toward a half", "[recovery]") {
  CHECK(mean_chance(2.0, 1.0) < mean_chance(2.0, 0.0));
  CHECK(mean_chance(-2.0, 1.0) > mean_chance(-2.0, 0.0));
  CHECK(mean_chance(0.0, 2.0) == Approx(0.5));
  CHECK(mean_chance(1.5, 1.2) + mean_chance(-1.5, 1.2) == Approx(1.0));
}

TEST_CASE("the mean chance is the integral over the normal", "[recovery]") {
  // A plain sum over a fine grid.
  double sum = 0.0;
  constexpr double kStep = 1e-3;
  for (double z = -9.0; z < 9.0; z += kStep) {
    sum += kStep * std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::acos(-1.0)) /
           (1.0 + std::exp(-(1.3 + 0.9 * z)));
  }
  CHECK(mean_chance(1.3, 0.9) == Approx(sum).epsilon(1e-6));
}
