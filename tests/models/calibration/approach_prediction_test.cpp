#include "models/calibration/approach_prediction.hpp"

#include <catch2/catch.hpp>

namespace endplate::calibration {
namespace {

incision::ApproachMeasure printing(double mean_mm, double sd_mm, double limbs) {
  incision::ApproachMeasure measure;
  measure.published.mean_mm = mean_mm;
  measure.published.sd_mm = sd_mm;
  measure.published.limbs = limbs;
  return measure;
}

ApproachPrediction predicting(double mean_mm) {
  return {std::nullopt, incision::LimbDistance::normal(mean_mm, 1.0)};
}

}  // namespace

TEST_CASE("studies as far apart as their limbs leave two chances in three", "[calibration]") {
  // One standard deviation of a normal distribution: 68.27 %.
  const std::vector measures{printing(50.0, 5.0, 1e9)};
  const std::vector predictions{predicting(80.0)};
  CHECK(expected_within(measures, predictions, {5.0, 0.0, 0.0}) == Approx(0.6827).margin(1e-4));
}

TEST_CASE("the sampling error of a small series lowers what can be expected", "[calibration]") {
  const std::vector predictions{predicting(50.0)};
  // sqrt(3^2 + 8^2 / 4) = 5 against a spread of 8: 89.04 %.
  CHECK(expected_within({printing(50.0, 8.0, 4.0)}, predictions, {3.0, 0.0, 0.0}) ==
        Approx(0.8904).margin(1e-4));
}

TEST_CASE("rows without a printed spread are not expected to be met", "[calibration]") {
  incision::ApproachMeasure bare;
  bare.published.mean_mm = 50.0;
  CHECK(expected_within({bare}, {predicting(50.0)}, {5.0, 0.0, 0.0}) == 0.0);
}

}  // namespace endplate::calibration
