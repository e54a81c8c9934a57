#pragma once
// How long axons take over a distance, and the law of their arrival in closed form.
#include "models/recovery/parameters.hpp"
#include "models/recovery/quick_exp.hpp"

namespace endplate::recovery {

// Growth that slows with distance from the lesion: the local rate falls as exp(-x/slowing_mm), and
// the rate that is given is the mean over the first reference_mm, as clinical studies measured it
// (Seddon HJ, Medawar PB, Smith H, J Physiol 1943;102:191). Both lengths > 0.
struct Slowing {
  double reference_mm = 0.0;
  double slowing_mm = 0.0;

  // The distance which, at the given rate without slowing, takes as long. distance_mm >= 0.
  double effective_mm(double distance_mm) const;
  double transit_days(double distance_mm, double rate_mm_per_day) const;
  // The inverse: how far the front has come after growing for `days` >= 0.
  double advance_mm(double days, double rate_mm_per_day) const;
};

// The same distance as scale_mm (e^(x / slowing_mm) - 1), in single precision. So the exponential
// of a way from one place to another is the product of what each place contributes.
class SlowingCurve {
 public:
  SlowingCurve() = default;
  explicit SlowingCurve(const Slowing& slowing);

  float scale_mm() const { return scale_mm_; }
  FourFloats exponential(FourFloats distance_mm) const { return quick_exp(distance_mm * per_mm_); }
  // Right to a ten-thousandth of a millimetre over the lengths of an arm.
  float effective_mm(float distance_mm) const {
    const FourFloats four{distance_mm, distance_mm, distance_mm, distance_mm};
    return scale_mm_ * (exponential(four)[0] - 1.0F);
  }

 private:
  float per_mm_ = 0.0F;
  float scale_mm_ = 0.0F;
};

// Day of arrival = start + a normal delay + effective distance / lognormal rate.
//
// With delay_sd_days = 0 this is a shifted lognormal; else the normal delay is integrated out by
// Gauss-Kronrod quadrature.
struct ArrivalLaw {
  double start_days = 0.0;
  double delay_mean_days = 0.0;
  double delay_sd_days = 0.0;
  double transit_median_days = 0.0;  // > 0
  double transit_log_sd = 0.0;       // > 0

  double cdf(double days) const;
  double quantile(double chance) const;  // 0 < chance < 1
  double mean() const;
  double sd() const;
};

}  // namespace endplate::recovery
