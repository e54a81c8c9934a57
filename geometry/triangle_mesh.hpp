#pragma once
// A triangle mesh as plain arrays. Lengths in mm, in the frame of whoever made it.
#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <vector>

namespace endplate::geometry {

struct TriangleMesh {
  std::vector<Eigen::Vector3d> vertices_mm;
  // Indices of vertices, counter-clockwise seen from outside.
  std::vector<std::array<std::uint32_t, 3>> triangles;
};

}  // namespace endplate::geometry
