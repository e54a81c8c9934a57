#pragma once
// Where rays meet triangles and which triangle is nearest, by CGAL's tree of boxes.
#include <Eigen/Core>
#include <cstddef>
#include <memory>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct RayHit {
  std::size_t triangle = 0;
  double distance_mm = 0.0;  // from the ray's origin
  Eigen::Vector3d point_mm = Eigen::Vector3d::Zero();
};

struct NearestPoint {
  std::size_t triangle = 0;
  double distance_mm = 0.0;
  Eigen::Vector3d point_mm = Eigen::Vector3d::Zero();
};

class TriangleTree {
 public:
  // Of at least one triangle. Triangles without area meet no ray.
  explicit TriangleTree(const TriangleMesh& mesh);
  ~TriangleTree();
  TriangleTree(TriangleTree&&) noexcept;
  TriangleTree& operator=(TriangleTree&&) noexcept;
  TriangleTree(const TriangleTree&) = delete;
  TriangleTree& operator=(const TriangleTree&) = delete;

  // The nearest first; a ray through an edge may name both of its triangles. `direction` of any
  // length above 0.
  std::vector<RayHit> along(const Eigen::Vector3d& origin_mm,
                            const Eigen::Vector3d& direction) const;
  NearestPoint nearest(const Eigen::Vector3d& point_mm) const;

 private:
  struct Tree;
  std::unique_ptr<Tree> tree_;
};

}  // namespace endplate::geometry
