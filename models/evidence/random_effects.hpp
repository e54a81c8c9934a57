#pragma once
// The random-effects model of meta-analysis: study i reports effect y_i with sampling variance v_i;
// its own true value scatters about the common mean with variance tau^2.
#include <span>
#include <vector>

namespace endplate::evidence {

struct Effect {
  double value = 0.0;
  double variance = 0.0;  // of `value` by sampling within the study, > 0
};

enum class TauMethod {
  reml,               // restricted maximum likelihood, by Fisher scoring (Viechtbauer, J Educ Behav
                      // Stat 2005;30:261)
  dersimonian_laird,  // method of moments (DerSimonian and Laird, Control Clin Trials 1986;7:177)
  paule_mandel        // Q(tau^2) = k - 1 (Paule and Mandel, J Res Natl Bur Stand 1982;87:377)
};

struct Interval {
  double low = 0.0;
  double high = 0.0;
};

struct RandomEffects {
  double mean = 0.0;
  double standard_error = 0.0;  // of `mean`, given tau
  double tau_squared = 0.0;
  double q = 0.0;          // Cochran's Q under equal effects, k - 1 degrees of freedom
  double q_p_value = 1.0;  // chance of a larger Q when the studies agree
  double i_squared = 0.0;  // share of the variance that is between studies, 0 to 1 (Higgins and
                           // Thompson, Stat Med 2002;21:1539, with this tau_squared)
  std::vector<double> weights;  // of the studies in `mean`; they sum to 1
};

// At least one effect; with a single one tau^2 is 0 and says nothing.
RandomEffects random_effects(std::span<const Effect> effects, TauMethod method);

// The same at a given tau^2.
RandomEffects random_effects_at(std::span<const Effect> effects, double tau_squared);

// Central intervals at `level` by the normal distribution, tau taken as known: for the mean, and
// for the true mean of a new study (Higgins, Thompson and Spiegelhalter, J R Stat Soc A
// 2009;172:137).
Interval confidence_interval(const RandomEffects& fit, double level);
Interval prediction_interval(const RandomEffects& fit, double level);

// Logarithm of the restricted likelihood of tau^2, without its constant.
double restricted_log_likelihood(std::span<const Effect> effects, double tau_squared);

}  // namespace endplate::evidence
