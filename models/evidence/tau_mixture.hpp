#pragma once
// The between-study spread tau of one quantity as a distribution over a grid, so that what is not
// known of it widens every interval. The prior on tau is log-normal and estimated from all
// quantities (spread_model.hpp); the likelihood is the restricted one of the quantity's own
// studies. Informative priors of this form: Turner, Jackson, Wei, Thompson and Higgins, Stat Med
// 2015;34:984.
#include <span>
#include <vector>

#include "models/evidence/random_effects.hpp"

namespace endplate::evidence {

// Values of tau in mm at which it is weighed: 0.2 to 200, evenly spaced in the logarithm.
std::span<const double> tau_grid();

// Logarithm of the restricted likelihood of `effects` at each value of the grid.
std::vector<double> tau_log_likelihood(std::span<const Effect> effects);

struct LogNormalPrior {
  double median = 1.0;       // of tau, mm
  double log_scatter = 1.0;  // standard deviation of log(tau)
};

// Posterior chance of each value of the grid. An empty likelihood leaves the prior as it is.
std::vector<double> tau_posterior(std::span<const double> log_likelihood,
                                  const LogNormalPrior& prior);

class TauMixture {
 public:
  TauMixture(std::span<const Effect> effects, const LogNormalPrior& prior);

  double mean() const { return mean_; }                      // of the pooled mean
  double standard_error() const { return standard_error_; }  // of the pooled mean, tau unknown
  double median_tau() const { return median_tau_; }
  // Weights of the studies in the mean, averaged over tau.
  const std::vector<double>& weights() const { return weights_; }

  // Central intervals at `level` in (0, 1) for: the mean over all studies; the mean that a new
  // study of very many limbs would find; and that value with an independent normal error of the
  // given standard deviation on top (a single limb: the spread between limbs; a study of n limbs:
  // its standard error).
  Interval mean_interval(double level) const;
  Interval new_study_interval(double level) const { return new_value_interval(level, 0.0); }
  Interval new_value_interval(double level, double extra_sd) const;

  // Standard deviation and median of the same.
  double new_value_sd(double extra_sd) const;
  double new_value_median() const { return quantile(0.5, true, 0.0); }

 private:
  struct Component {
    double tau = 0.0;
    double chance = 0.0;
    double mean = 0.0;
    double standard_error = 0.0;
  };
  double quantile(double p, bool with_tau, double extra_sd) const;

  std::vector<Component> components_;
  std::vector<double> weights_;
  double mean_ = 0.0;
  double standard_error_ = 0.0;
  double median_tau_ = 0.0;
};

}  // namespace endplate::evidence
