#pragma once
// Proportions pooled as counts: the number of events of a study is binomial, and the logit of its
// proportion is normal between studies (binomial-normal mixed model; Stijnen, Hamza and Ozdemir,
// Stat Med 2010;29:3046). Small samples and shares near 0 or 1 need no correction.
#include <span>
#include <string>
#include <vector>

#include "models/evidence/tau_mixture.hpp"

namespace endplate::evidence {

struct Count {
  double events = 0.0;  // 0 to n
  double n = 0.0;       // >= 1
};

struct LogitNormal {
  double mean = 0.0;  // logit of the proportion of a typical study
  double standard_error = 0.0;
  double tau = 0.0;             // standard deviation between studies, on the logit scale
  double log_likelihood = 0.0;  // with the binomial constants
};

// Log-likelihood of one set of studies; tau >= 0.
double logit_normal_log_likelihood(std::span<const Count> counts, double mean, double tau);

// Maximum likelihood. At least one study, and not all of them all-or-none, where the maximum is at
// infinity (throws std::invalid_argument).
LogitNormal fit_logit_normal(std::span<const Count> counts);

// The same at a given tau; the standard error is that of the mean alone.
LogitNormal fit_logit_normal_at(std::span<const Count> counts, double tau);

// The one tau under which all groups of studies together are most likely, each with its own mean,
// by adjusted profile likelihood; groups of a single study or of all-or-none say nothing. 0 when no
// group says anything.
double common_tau(std::span<const std::vector<Count>> groups);

struct PooledProportion {
  double share = 0.0;  // 0 to 1, of a typical study
  Interval mean_interval;
  Interval new_study_interval;
  LogitNormal maximum_likelihood;  // of these studies alone; all zero where it does not exist
  double tau = 0.0;                // used: the larger of that and the floor
  bool at_floor = false;
};

// Intervals at `level`. `floor_tau` is the spread between studies to reckon with at the least,
// since two or three studies say little about it. A single study keeps its exact interval (Clopper
// and Pearson, Biometrika 1934;26:404) for the mean.
PooledProportion pool_proportions(std::span<const Count> counts, double floor_tau, double level);

}  // namespace endplate::evidence
