#pragma once
// The page under docs/ that sets published movements of nerves beside the model's, in Markdown.
#include <string>

#include "models/calibration/motion_fit.hpp"

namespace endplate::calibrate {

std::string motion_page(const calibration::MotionFit& fit);

// Of the judged rows, how many lie within the published spread between limbs when their study is
// left out; and of all, how many have the right direction.
struct MotionShares {
  int rows = 0;
  int right_direction = 0;
  int judged = 0;
  int within = 0;
};
MotionShares motion_shares(const calibration::MotionFit& fit);

}  // namespace endplate::calibrate
