#pragma once
// The place of a closed surface nearest to a place in space, and whether that lies inside, by
// CGAL's tree of boxes (AABB_tree, Side_of_triangle_mesh). Lengths in mm.
#include <Eigen/Core>
#include <memory>

#include "geometry/surface_point.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct ProbedPlace {
  SurfacePoint nearest;
  double distance_mm = 0.0;  // never negative
  bool inside = false;
};

class SurfaceProbe {
 public:
  // Takes a copy. The mesh must be closed and have a triangle; triangles counter-clockwise seen
  // from outside.
  explicit SurfaceProbe(const TriangleMesh& mesh);
  ~SurfaceProbe();
  SurfaceProbe(SurfaceProbe&&) noexcept;
  SurfaceProbe& operator=(SurfaceProbe&&) noexcept;
  SurfaceProbe(const SurfaceProbe&) = delete;
  SurfaceProbe& operator=(const SurfaceProbe&) = delete;

  ProbedPlace at(const Eigen::Vector3d& place_mm) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace endplate::geometry
