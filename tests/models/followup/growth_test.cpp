#include "models/followup/growth.hpp"

#include <catch2/catch.hpp>
#include <cmath>

using namespace endplate::followup;
using endplate::recovery::Course;
using endplate::recovery::Slowing;

namespace {

const Slowing kSlowing{150.0, 750.0};

Growth growing(double ready_days, double rate) {
  return {Course::State::growth, ready_days, rate, 400.0, 0.0};
}
Growth still(Course::State state) {
  return {state, 0.0, 0.0, 400.0, 0.0};
}

}  // namespace

TEST_CASE("the expected front waits, grows and ends with the nerve", "[followup]") {
  const Growth growth = growing(20.0, 1.5);
  CHECK(expected_front_mm(growth, 10.0, kSlowing) == 0.0);
  // 150 mm at a mean of 1.5 mm a day.
  CHECK(expected_front_mm(growth, 120.0, kSlowing) == Approx(150.0));
  CHECK(expected_front_mm(growth, 2000.0, kSlowing) == 400.0);
  CHECK(expected_front_mm(still(Course::State::none), 500.0, kSlowing) == 0.0);
  Growth grafted = growth;
  grafted.start_mm = -20.0;
  CHECK(expected_front_mm(grafted, 120.0, kSlowing) == Approx(130.0));
}

TEST_CASE("two points weigh patients by the normal law of their joint error", "[followup]") {
  const std::vector<Growth> patients{growing(20.0, 1.5), still(Course::State::none),
                                     still(Course::State::block), still(Course::State::not_below)};
  // Points at 0 and 150 mm expected; 5 mm off and right. Errors of 10 mm each, 6 mm shared.
  TinelEvidence evidence{{10.0, 120.0}, {5.0, 150.0}, Eigen::MatrixXd(2, 2)};
  evidence.covariance << 136.0, 36.0, 36.0, 136.0;
  const auto fit = likelihoods(patients, evidence, kSlowing, 0.05);
  // By hand: the inverse of the covariance is (136, -36; -36, 136)/17200.
  const double grows = 25.0 * 136.0 / 17200.0;
  const double stands = (25.0 * 136.0 - 2.0 * 36.0 * 5.0 * 150.0 + 150.0 * 150.0 * 136.0) / 17200.0;
  CHECK(fit.least_chi_square == Approx(grows));
  CHECK(fit.relative[0] == Approx(1.0));
  CHECK(fit.relative[1] == Approx(std::exp(-0.5 * (stands - grows))));
  CHECK(fit.relative[2] == Approx(0.05 * fit.relative[1]));
  CHECK(fit.relative[3] == 0.0);
}

TEST_CASE("resampling draws each patient as often as its weight asks", "[followup]") {
  const std::vector<double> weights{0.0, 1.0, 3.0, 0.0, 4.0, 0.0};
  const auto drawn = resample(weights, 800);
  REQUIRE(drawn.size() == 800);
  CHECK(std::ranges::count(drawn, 1U) == 100);
  CHECK(std::ranges::count(drawn, 2U) == 300);
  CHECK(std::ranges::count(drawn, 4U) == 400);
}
