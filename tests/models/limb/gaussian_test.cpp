#include "models/limb/gaussian.hpp"

#include <Eigen/LU>
#include <catch2/catch.hpp>
#include <cmath>

using endplate::limb::Conditioning;
using endplate::limb::Gaussian;
using endplate::limb::Observation;

namespace {

Gaussian three() {
  Gaussian prior;
  prior.mean = Eigen::Vector3d(300.0, 245.0, 180.0);
  prior.covariance.resize(3, 3);
  prior.covariance << 300.0, 120.0, 60.0, 120.0, 240.0, 70.0, 60.0, 70.0, 100.0;
  return prior;
}

}  // namespace

TEST_CASE("one measured length moves the others by covariance over variance", "[models][limb]") {
  const Gaussian prior = three();
  const Observation forearm{Eigen::RowVector3d(0.0, 1.0, 0.0), Eigen::VectorXd::Constant(1, 265.0)};
  const Gaussian posterior = Conditioning(prior, forearm).posterior(prior);

  CHECK(posterior.mean[1] == Approx(265.0).epsilon(1e-12));
  CHECK(posterior.mean[0] == Approx(300.0 + 120.0 / 240.0 * 20.0));
  CHECK(posterior.mean[2] == Approx(180.0 + 70.0 / 240.0 * 20.0));
  CHECK(posterior.covariance(2, 2) == Approx(100.0 - 70.0 * 70.0 / 240.0));
  CHECK(posterior.covariance(0, 2) == Approx(60.0 - 120.0 * 70.0 / 240.0));
  CHECK(std::abs(posterior.covariance(1, 1)) < 1e-9);
}

TEST_CASE("two measured lengths agree with the partitioned inverse", "[models][limb]") {
  const Gaussian prior = three();
  Observation both;
  both.combinations.resize(2, 3);
  both.combinations << 1.0, 0.0, 0.0, 0.0, 1.0, 1.0;  // the arm, and forearm plus hand
  both.values = Eigen::Vector2d(310.0, 410.0);

  const Eigen::MatrixXd cross = prior.covariance * both.combinations.transpose();
  const Eigen::Matrix2d own = both.combinations * cross;
  const Eigen::VectorXd mean =
      prior.mean + cross * own.inverse() * (both.values - both.combinations * prior.mean);
  const Eigen::MatrixXd covariance = prior.covariance - cross * own.inverse() * cross.transpose();

  const Conditioning conditioning(prior, both);
  const Gaussian posterior = conditioning.posterior(prior);
  CHECK((posterior.mean - mean).norm() < 1e-9);
  CHECK((posterior.covariance - covariance).norm() < 1e-8);
  CHECK(conditioning.rank() == 2);
  const Eigen::Vector2d surprise = both.values - both.combinations * prior.mean;
  CHECK(conditioning.distance_squared() == Approx(surprise.dot(own.inverse() * surprise)));
  CHECK(conditioning.log_density() ==
        Approx(-0.5 * surprise.dot(own.inverse() * surprise) - 0.5 * std::log(own.determinant())));
}

TEST_CASE("a length given twice counts once, and a contradiction is measured", "[models][limb]") {
  const Gaussian prior = three();
  const auto given = [&](double sum_mm) {
    Observation observation;
    observation.combinations.resize(3, 3);
    observation.combinations << 1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 1.0, 1.0, 0.0;
    observation.values = Eigen::Vector3d(310.0, 250.0, sum_mm);
    return Conditioning(prior, observation);
  };
  CHECK(given(560.0).rank() == 2);
  CHECK(given(560.0).contradiction() < 1e-9);
  // 9 mm too long: the least change of the three spreads it equally.
  CHECK(given(569.0).contradiction() == Approx(3.0));
}
