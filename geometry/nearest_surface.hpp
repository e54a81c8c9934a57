#pragma once
// The place of a surface that is nearest to a point.
#include <Eigen/Core>
#include <cstdint>
#include <memory>

#include "geometry/surface_point.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct NearestPlace {
  SurfacePoint on_mesh;
  Eigen::Vector3d position_mm = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitX();  // of the triangle, outward, length 1
  double distance_mm = 0.0;
  bool on_rim =
      false;  // on an edge that has one triangle only: the surface may end before its time
};

// Built once for a mesh (CGAL's AABB tree), then asked often; asking from several threads is safe.
class NearestSurface {
 public:
  // Expects a mesh as mesh_repair.hpp leaves it: some triangles, all with an area.
  explicit NearestSurface(const TriangleMesh& mesh);
  ~NearestSurface();
  NearestSurface(NearestSurface&&) noexcept;
  NearestSurface& operator=(NearestSurface&&) noexcept;
  NearestSurface(const NearestSurface&) = delete;
  NearestSurface& operator=(const NearestSurface&) = delete;

  NearestPlace nearest(const Eigen::Vector3d& point_mm) const;

 private:
  struct Tree;
  std::unique_ptr<const Tree> tree_;
};

}  // namespace endplate::geometry
