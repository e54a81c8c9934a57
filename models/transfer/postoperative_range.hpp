#pragma once
// How far the joints move after a nerve transfer: the gap must stay closed in all of it.
#include <string>
#include <vector>

#include "models/limb/pose.hpp"

namespace endplate::transfer {

struct JointRange {
  std::string joint;  // key of a case's pose, "elbow_flexion_deg"
  double low_deg = 0.0;
  double high_deg = 0.0;
  std::string reason;  // with the rows of joints.csv
};

// Shoulder to fingers, as a limb is moved at the table before the wound is closed.
const std::vector<JointRange>& postoperative_range();

// Each joint of `ranges` at its lowest, middle and highest angle, in every combination; a single
// straight pose where there are none.
std::vector<limb::Pose> postures(const std::vector<JointRange>& ranges);

}  // namespace endplate::transfer
