#pragma once
// Points of nerves found by ultrasound on one measured limb, as they narrow its distances at rest.
#include "models/limb/found_distances.hpp"
#include "models/limb/level_spread.hpp"
#include "models/limb/measured_limb.hpp"

namespace endplate::limb {

class FoundOnLimb {
 public:
  // `limb` and `spread` must outlive it; `spread` is null where nothing was found.
  FoundOnLimb(const MeasuredLimb& limb, const LevelSpread* spread) : limb_(limb), spread_(spread) {}

  // A distance that was read, with what was known of it before and the error of the reading, mm.
  void add(const NerveMeasure& measure, double mean_mm, double sd_mm, double read_mm,
           double error_mm) {
    found_.add(prior_of(measure, mean_mm, sd_mm), read_mm, error_mm);
  }
  // Call once after the last add() and before narrowed().
  void finish() { found_.finish(); }

  FoundDistances::Narrowed narrowed(const NerveMeasure& measure, double mean_mm,
                                    double sd_mm) const {
    if (spread_ == nullptr) return {mean_mm, sd_mm};
    return found_.narrow(prior_of(measure, mean_mm, sd_mm));
  }

 private:
  DistancePrior prior_of(const NerveMeasure& measure, double mean_mm, double sd_mm) const;
  MovingPoint moving(PointRef ref, const Eigen::Vector3d& distal) const;

  const MeasuredLimb& limb_;
  const LevelSpread* spread_;
  FoundDistances found_;
};

}  // namespace endplate::limb
