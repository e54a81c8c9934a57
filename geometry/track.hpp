#pragma once
// A straight way of a needle or a knife, mm.
#include <Eigen/Core>

namespace endplate::geometry {

// From where it begins to where it ends; both may be one place.
struct Track {
  Eigen::Vector3d from_mm = Eigen::Vector3d::Zero();
  Eigen::Vector3d to_mm = Eigen::Vector3d::Zero();
};

}  // namespace endplate::geometry
