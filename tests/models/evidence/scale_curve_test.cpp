#include "models/evidence/scale_curve.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <stdexcept>
#include <vector>

using namespace endplate::evidence;

TEST_CASE("a scale curve recovers the curve that points were drawn from", "[evidence]") {
  const ScaleCurve truth{4.5, 0.11, 0.5};
  std::mt19937_64 random(3);
  std::normal_distribution<double> scatter(0.0, truth.log_scatter);
  std::uniform_real_distribution<double> distance(0.0, 250.0);
  std::vector<ScalePoint> points;
  for (int i = 0; i < 4000; ++i) {
    const double d = distance(random);
    points.push_back({d, std::log(truth.at(d)) + scatter(random), 0.0});
  }
  const ScaleCurve fit = fit_scale_curve(points);
  CHECK(fit.at_zero == Approx(truth.at_zero).epsilon(0.08));
  CHECK(fit.slope == Approx(truth.slope).epsilon(0.05));
  CHECK(fit.log_scatter == Approx(truth.log_scatter).epsilon(0.05));
}

TEST_CASE("what is uncertain about the points adds to the scatter of a scale curve", "[evidence]") {
  const std::vector<ScalePoint> sharp{{1, 1, 0}, {10, 2, 0}, {100, 3, 0}};
  std::vector<ScalePoint> vague = sharp;
  for (ScalePoint& p : vague) p.log_variance = 0.25;
  CHECK(std::pow(fit_scale_curve(vague).log_scatter, 2) ==
        Approx(std::pow(fit_scale_curve(sharp).log_scatter, 2) + 0.25));
}

TEST_CASE("two points make no scale curve", "[evidence]") {
  const std::vector<ScalePoint> two{{1, 1, 0}, {10, 2, 0}};
  CHECK_THROWS_AS(fit_scale_curve(two), std::invalid_argument);
}
