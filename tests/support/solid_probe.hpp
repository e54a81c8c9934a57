#pragma once
// Which points a closed mesh holds, and how deep, for many points.
#include <Eigen/Geometry>
#include <utility>

#include "geometry/triangle_mesh.hpp"
#include "geometry/triangle_tree.hpp"

namespace endplate::test {

class SolidProbe {
 public:
  explicit SolidProbe(const geometry::TriangleMesh& mesh) : tree_(mesh) {
    for (const auto& p : mesh.vertices_mm) box_.extend(p);
  }

  // By how many times a ray in a direction that no mesh was made along leaves the solid.
  bool holds(const Eigen::Vector3d& p) const {
    if (!box_.contains(p)) return false;
    int times = 0;
    double before = -1.0;
    for (const auto& hit : tree_.along(p, Eigen::Vector3d(0.3141, 0.5926, 0.7419))) {
      if (hit.distance_mm - before > 1e-9) ++times;
      before = hit.distance_mm;
    }
    return times % 2 == 1;
  }
  double distance_mm(const Eigen::Vector3d& p) const { return tree_.nearest(p).distance_mm; }
  double depth_mm(const Eigen::Vector3d& p) const { return holds(p) ? distance_mm(p) : 0.0; }
  // How far outside; 0 inside.
  double outside_mm(const Eigen::Vector3d& p) const { return holds(p) ? 0.0 : distance_mm(p); }

 private:
  geometry::TriangleTree tree_;
  Eigen::AlignedBox3d box_;
};

}  // namespace endplate::test
