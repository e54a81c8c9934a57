#pragma once
#include <Eigen/Geometry>

namespace endplate::geometry {

// A turn by the right-hand rule about a line through `centre`. `axis`: of length 1; radians.
inline Eigen::Isometry3d turn_about(const Eigen::Vector3d& centre, const Eigen::Vector3d& axis,
                                    double angle_rad) {
  return Eigen::Translation3d(centre) * Eigen::AngleAxisd(angle_rad, axis) *
         Eigen::Translation3d(-centre);
}

}  // namespace endplate::geometry
