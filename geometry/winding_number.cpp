#include "geometry/winding_number.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

namespace endplate::geometry {

double winding_number(const std::vector<Eigen::Vector3d>& vertices_mm,
                      const std::vector<std::array<std::uint32_t, 3>>& triangles,
                      const Eigen::Vector3d& point_mm) {
  double sum = 0.0;
  for (const auto& t : triangles) {
    const Eigen::Vector3d a = vertices_mm[t[0]] - point_mm;
    const Eigen::Vector3d b = vertices_mm[t[1]] - point_mm;
    const Eigen::Vector3d c = vertices_mm[t[2]] - point_mm;
    const double la = a.norm();
    const double lb = b.norm();
    const double lc = c.norm();
    sum += 2.0 * std::atan2(a.dot(b.cross(c)),
                            la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return sum / (4.0 * std::numbers::pi);
}

}  // namespace endplate::geometry
