#include "models/recovery/mean_chance.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace endplate::recovery {

double mean_chance(double logit, double spread) {
  constexpr double kReach = 6.0;  // standard deviations
  const auto weighed = [&](double z) {
    return boost::math::pdf(boost::math::normal(), z) / (1.0 + std::exp(-(logit + spread * z)));
  };
  return boost::math::quadrature::gauss<double, 30>::integrate(weighed, -kReach, kReach);
}

}  // namespace endplate::recovery
