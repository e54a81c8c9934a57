#pragma once
// A place on a triangle mesh: a triangle and weights of its three corners.
#include <array>
#include <cstdint>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct SurfacePoint {
  std::uint32_t triangle = 0;
  // Barycentric weights of the triangle's corners, in their order: none negative, sum 1.
  std::array<double, 3> weights{1.0, 0.0, 0.0};
};

inline Eigen::Vector3d position_mm(const TriangleMesh& mesh, const SurfacePoint& point) {
  const auto& corners = mesh.triangles[point.triangle];
  return point.weights[0] * mesh.vertices_mm[corners[0]] +
         point.weights[1] * mesh.vertices_mm[corners[1]] +
         point.weights[2] * mesh.vertices_mm[corners[2]];
}

}  // namespace endplate::geometry
