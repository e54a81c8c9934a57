#pragma once
// The mean of a chance whose log odds are normal.

namespace endplate::recovery {

// E[1/(1+exp(-(logit + spread z)))] with z standard normal; spread >= 0. Gauss-Legendre, 30 points.
double mean_chance(double logit, double spread);

}  // namespace endplate::recovery
