#pragma once
// The distances of an answer as a tape over the skin would measure them; for distance.cpp only.
//
// The model's tape on the mean limb in the pose, longer or shorter by as much as the answer's
// straight distance (where it has one; else its own kind of distance) differs from the model's, and
// with that distance's spread. A tape is never shorter than nothing.
#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "models/limb/distance.hpp"
#include "models/limb/measured_limb.hpp"

namespace endplate::limb {

struct TapeEnds {
  Eigen::Vector3d landmark_mm;
  Eigen::Vector3d place_mm;    // on the nerve
  double correction_mm = 0.0;  // what the studies add to the model
  double sd_mm = 0.0;
};

// A distance on its way into an answer.
struct TapedDistance {
  Distance distance;
  std::optional<TapeEnds> tape;
  std::string no_tape{};  // why there are no ends
};

// The whole skin is prepared once, in half a second; each distance then takes some 2 ms.
void measure_over_skin(const MeasuredLimb& limb, std::vector<TapedDistance>& found);

}  // namespace endplate::limb
