#pragma once
// A place on the skin as a surgeon marks it: from a landmark, so far along the limb and so far
// aside; or picked.
#include <Eigen/Core>
#include <optional>
#include <string>

#include "models/casefile/case.hpp"

namespace endplate::incision {

using casefile::Aside;

struct AtSkin {
  std::string landmark;   // standard term; empty where the place was picked
  double along_mm = 0.0;  // along the limb's segment, >= 0
  casefile::Toward toward = casefile::Toward::distal;
  double aside_mm = 0.0;  // across the limb, >= 0
  std::optional<Aside> aside;
  // The side of the limb whose skin is meant; absent: the skin nearest to the place.
  std::optional<Aside> surface;
  std::optional<Eigen::Vector3d> picked_mm;  // limb frame, in the pose; the skin nearest to it
};

}  // namespace endplate::incision
