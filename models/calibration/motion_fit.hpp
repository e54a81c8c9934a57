#pragma once
// The tether lengths of the nerves' beds, fitted to published excursions and strains.
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/limb/motion_measure.hpp"

namespace endplate::calibration {

// One standard deviation between limbs: the printed one, or from the range.
double published_sd(const limb::MotionMeasure& measure);
double published_middle(const limb::MotionMeasure& measure);

// A published row beside the model.
struct MotionReading {
  limb::MotionMeasure measure;
  double fitted = 0.0;    // by the fit to all judged rows
  double left_out = 0.0;  // by the fit to the judged rows of other studies

  bool right_direction() const { return left_out * measure.sign > 0.0; }
};

struct MotionFit {
  limb::MotionParameters parameters;
  std::vector<MotionReading> readings;  // of every measure
};

// `start` gives where the search begins and what is not fitted.
Expected<MotionFit> fit_motion(const limb::MotionModel& model,
                               const std::vector<limb::MotionMeasure>& measures,
                               const limb::MotionParameters& start);

}  // namespace endplate::calibration
