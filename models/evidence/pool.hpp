#pragma once
// One quantity pooled over its studies.
#include <optional>
#include <vector>

#include "models/evidence/estimate.hpp"
#include "models/evidence/quantity.hpp"
#include "models/evidence/random_effects.hpp"
#include "models/evidence/spread_model.hpp"
#include "models/evidence/study_effect.hpp"
#include "models/evidence/tau_mixture.hpp"

namespace endplate::evidence {

struct PooledQuantity {
  std::vector<StudyEffect> studies;
  std::vector<double> weights;  // of the studies in the estimate; they sum to 1
  Estimate estimate;            // mm; its sign as in Quantity::axis
  RandomEffects reml;           // what the studies alone say, without the floor, for comparison
  RandomEffects dersimonian_laird;
  RandomEffects paule_mandel;
  double floor_tau_mm = 0.0;  // the spread between studies expected at this distance
  TauMixture mixture;         // intervals for the mean and for a new study

  // Central interval for one limb of a population like the studied ones.
  Interval limb_interval(double level) const {
    return mixture.new_value_interval(level, estimate.between_limb_sd);
  }
};

// Nothing when no row of the quantity can be pooled, or when it is a prevalence.
std::optional<PooledQuantity> pool(const Quantity& quantity, const SpreadModel& spread);

}  // namespace endplate::evidence
