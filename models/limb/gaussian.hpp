#pragma once
// The multivariate normal distribution and its conditioning on linear combinations that are known
// exactly or with a normal error.
#include <Eigen/Core>

namespace endplate::limb {

struct Gaussian {
  Eigen::VectorXd mean;
  Eigen::MatrixXd covariance;  // symmetric, positive semidefinite

  // Of the linear combination `weights` of the variables.
  double mean_of(const Eigen::VectorXd& weights) const { return weights.dot(mean); }
  double sd_of(const Eigen::VectorXd& weights) const;
};

// What is known: `combinations` (one row an observation) times the variables, plus an error of
// covariance `error`, equals `values`. An empty `error` is none: the values are exact.
struct Observation {
  Eigen::MatrixXd combinations;
  Eigen::VectorXd values;
  Eigen::MatrixXd error{};
};

// mean + gain (values - combinations mean), covariance - gain combinations covariance, with
// gain = C H' (H C H' + E)^+. The pseudo-inverse lets one exact observation repeat another.
class Conditioning {
 public:
  Conditioning(const Gaussian& prior, const Observation& observation);

  Gaussian posterior(const Gaussian& prior) const;
  // Turns a draw from the prior into one from the posterior (conditioning by kriging), so that the
  // same random numbers give limbs that differ only by what was measured. `error_draw`: a draw from
  // the error of the observation; empty where that is exact, and for the posterior mean.
  Eigen::VectorXd correct(const Eigen::VectorXd& prior_draw,
                          const Eigen::VectorXd& error_draw = {}) const;

  // Log density of the observation under the prior, up to a constant shared by all priors of the
  // same combinations.
  double log_density() const { return log_density_; }
  // Squared Mahalanobis distance of the observation from the prior, and its degrees of freedom.
  double distance_squared() const { return distance_squared_; }
  int rank() const { return rank_; }
  // Largest part of the observation that no value of the variables explains: 0 when observations
  // that repeat one another agree.
  double contradiction() const { return contradiction_; }

 private:
  Observation observation_;
  Eigen::MatrixXd gain_;
  double log_density_ = 0.0;
  double distance_squared_ = 0.0;
  int rank_ = 0;
  double contradiction_ = 0.0;
};

}  // namespace endplate::limb
