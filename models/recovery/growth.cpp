#include "models/recovery/growth.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>

namespace endplate::recovery {
namespace {

double normal_cdf(double z) {
  return boost::math::cdf(boost::math::normal(), z);
}

}  // namespace

double Slowing::effective_mm(double distance_mm) const {
  // The mean slowness over the reference distance is one over the given rate.
  const double reference = slowing_mm * std::expm1(reference_mm / slowing_mm) / reference_mm;
  return slowing_mm * std::expm1(distance_mm / slowing_mm) / reference;
}

double Slowing::transit_days(double distance_mm, double rate_mm_per_day) const {
  return effective_mm(distance_mm) / rate_mm_per_day;
}

double Slowing::advance_mm(double days, double rate_mm_per_day) const {
  const double reference = slowing_mm * std::expm1(reference_mm / slowing_mm) / reference_mm;
  return slowing_mm * std::log1p(days * rate_mm_per_day * reference / slowing_mm);
}

SlowingCurve::SlowingCurve(const Slowing& slowing)
    : per_mm_(static_cast<float>(1.0 / slowing.slowing_mm)),
      scale_mm_(static_cast<float>(slowing.reference_mm /
                                   std::expm1(slowing.reference_mm / slowing.slowing_mm))) {}

double ArrivalLaw::cdf(double days) const {
  const double mean_start = start_days + delay_mean_days;
  const auto transit_cdf = [&](double t) {
    return t <= 0.0 ? 0.0 : normal_cdf(std::log(t / transit_median_days) / transit_log_sd);
  };
  if (delay_sd_days <= 0.0) return transit_cdf(days - mean_start);
  const auto integrand = [&](double z) {
    return boost::math::pdf(boost::math::normal(), z) *
           transit_cdf(days - mean_start - delay_sd_days * z);
  };
  return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(integrand, -8.0, 8.0, 10,
                                                                       1e-10);
}

double ArrivalLaw::mean() const {
  return start_days + delay_mean_days +
         transit_median_days * std::exp(0.5 * transit_log_sd * transit_log_sd);
}

double ArrivalLaw::sd() const {
  const double s2 = transit_log_sd * transit_log_sd;
  const double transit_variance =
      transit_median_days * transit_median_days * std::exp(s2) * std::expm1(s2);
  return std::sqrt(delay_sd_days * delay_sd_days + transit_variance);
}

double ArrivalLaw::quantile(double chance) const {
  double low = start_days + delay_mean_days - 9.0 * delay_sd_days;
  double high = mean() + 12.0 * sd();
  while (cdf(high) < chance) high += sd();
  std::uintmax_t steps = 200;
  const auto bracket =
      boost::math::tools::toms748_solve([&](double t) { return cdf(t) - chance; }, low, high,
                                        boost::math::tools::eps_tolerance<double>(40), steps);
  return 0.5 * (bracket.first + bracket.second);
}

}  // namespace endplate::recovery
