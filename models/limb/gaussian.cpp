#include "models/limb/gaussian.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace endplate::limb {

double Gaussian::sd_of(const Eigen::VectorXd& weights) const {
  return std::sqrt(std::max(0.0, weights.dot(covariance * weights)));
}

Conditioning::Conditioning(const Gaussian& prior, const Observation& observation)
    : observation_(observation) {
  const Eigen::MatrixXd& h = observation_.combinations;
  const Eigen::MatrixXd cross = prior.covariance * h.transpose();
  if (h.rows() == 0) {
    gain_ = cross;
    return;
  }
  const Eigen::VectorXd surprise = observation_.values - h * prior.mean;
  Eigen::MatrixXd own = h * cross;
  if (observation_.error.size() > 0) own += observation_.error;
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(own);
  const Eigen::VectorXd& values = solver.eigenvalues();
  const Eigen::MatrixXd& vectors = solver.eigenvectors();
  const double smallest = 1e-9 * values.cwiseAbs().maxCoeff();

  Eigen::MatrixXd inverse = Eigen::MatrixXd::Zero(h.rows(), h.rows());
  Eigen::VectorXd unexplained = surprise;
  for (Eigen::Index i = 0; i < values.size(); ++i) {
    if (values[i] <= smallest) continue;
    const auto direction = vectors.col(i);
    const double along = direction.dot(surprise);
    inverse += direction * direction.transpose() / values[i];
    unexplained -= direction * along;
    distance_squared_ += along * along / values[i];
    log_density_ -= 0.5 * (along * along / values[i] + std::log(values[i]));
    ++rank_;
  }
  contradiction_ = unexplained.cwiseAbs().maxCoeff();
  gain_ = cross * inverse;
}

Gaussian Conditioning::posterior(const Gaussian& prior) const {
  const Eigen::MatrixXd& h = observation_.combinations;
  if (h.rows() == 0) return prior;
  Gaussian result{correct(prior.mean), prior.covariance - gain_ * h * prior.covariance};
  result.covariance = 0.5 * (result.covariance + result.covariance.transpose()).eval();
  return result;
}

Eigen::VectorXd Conditioning::correct(const Eigen::VectorXd& prior_draw,
                                      const Eigen::VectorXd& error_draw) const {
  if (observation_.combinations.rows() == 0) return prior_draw;
  Eigen::VectorXd surprise = observation_.values - observation_.combinations * prior_draw;
  if (error_draw.size() > 0) surprise -= error_draw;
  return prior_draw + gain_ * surprise;
}

}  // namespace endplate::limb
