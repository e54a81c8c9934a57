#include "models/limb/gaussian.hpp"

#include <Eigen/Cholesky>
#include <Eigen/LU>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

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

TEST_CASE("lengths with an error agree with the precision form and with weighted draws",
          "[models][limb]") {
  const Gaussian prior = three();
  Observation noisy;
  noisy.combinations.resize(2, 3);
  noisy.combinations << 1.0, 0.0, 0.0, 0.0, 1.0, 1.0;
  noisy.values = Eigen::Vector2d(318.0, 405.0);
  noisy.error.resize(2, 2);
  noisy.error << 25.0, 6.0, 6.0, 64.0;
  const Conditioning conditioning(prior, noisy);
  const Gaussian posterior = conditioning.posterior(prior);

  // (C^-1 + H' E^-1 H)^-1, and that times C^-1 m + H' E^-1 v.
  const Eigen::MatrixXd to_error = noisy.combinations.transpose() * noisy.error.inverse();
  const Eigen::MatrixXd covariance =
      (prior.covariance.inverse() + to_error * noisy.combinations).inverse();
  const Eigen::VectorXd mean =
      covariance * (prior.covariance.inverse() * prior.mean + to_error * noisy.values);
  CHECK((posterior.mean - mean).norm() < 1e-9);
  CHECK((posterior.covariance - covariance).norm() < 1e-8);

  // Draws from the prior, each weighed by the chance of the reading, and draws made to fit it.
  std::mt19937_64 generator(17);
  std::normal_distribution<double> normal;
  const Eigen::MatrixXd root = prior.covariance.llt().matrixL();
  const Eigen::MatrixXd error_root = noisy.error.llt().matrixL();
  const auto normals = [&](Eigen::Index n) {
    return Eigen::VectorXd::NullaryExpr(n, [&] { return normal(generator); }).eval();
  };
  double weights = 0.0;
  Eigen::Vector3d weighed = Eigen::Vector3d::Zero();
  Eigen::Vector3d corrected = Eigen::Vector3d::Zero();
  Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
  constexpr int kDraws = 40000;
  for (int i = 0; i < kDraws; ++i) {
    const Eigen::VectorXd draw = prior.mean + root * normals(3);
    const Eigen::VectorXd off = noisy.values - noisy.combinations * draw;
    const double weight = std::exp(-0.5 * off.dot(noisy.error.inverse() * off));
    weights += weight;
    weighed += weight * draw;
    const Eigen::Vector3d fitted = conditioning.correct(draw, error_root * normals(2));
    corrected += fitted / kDraws;
    spread += (fitted - mean) * (fitted - mean).transpose() / kDraws;
  }
  CHECK((weighed / weights - mean).norm() < 0.3);
  CHECK((corrected - mean).norm() < 0.3);
  CHECK((spread - covariance).norm() < 0.03 * covariance.norm());
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
