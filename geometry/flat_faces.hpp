#pragma once
// The inner geometry of a triangle mesh: which triangles meet, how long edges are, and the angles
// about each vertex. Enough to lay neighbouring triangles side by side into a plane.
//
// Half-edge h = 3 f + k runs from corner k of triangle f to corner k + 1. Angles in radians,
// lengths in mm. An edge is open (no twin) at a border, where more than two triangles meet, where
// two triangles disagree about their outside, and where its ends coincide: straight lines stop
// there.
#include <Eigen/Core>
#include <cstdint>
#include <span>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

class FlatFaces {
 public:
  static constexpr std::uint32_t kNone = 0xffffffffU;

  // Every index lies within the mesh and every coordinate is finite.
  explicit FlatFaces(const TriangleMesh& mesh);

  static std::uint32_t next(std::uint32_t h) { return h % 3 == 2 ? h - 2 : h + 1; }
  static std::uint32_t previous(std::uint32_t h) { return h % 3 == 0 ? h + 2 : h - 1; }

  std::uint32_t origin(std::uint32_t h) const { return origin_[h]; }
  std::uint32_t twin(std::uint32_t h) const { return twin_[h]; }
  double length_mm(std::uint32_t h) const { return length_mm_[h]; }
  // The third corner of the triangle in the frame whose x axis is the half-edge, whose y axis lies
  // to its left and whose unit is its length.
  const Eigen::Vector2d& apex(std::uint32_t h) const { return apex_[h]; }
  // Angle of the triangle at the half-edge's origin.
  double corner(std::uint32_t h) const { return corner_[h]; }
  // Direction of the half-edge about its origin, counter-clockwise from an arbitrary zero.
  double direction(std::uint32_t h) const { return direction_[h]; }
  // All corners about a vertex together: 2 pi where the surface is flat.
  double total_angle(std::uint32_t vertex) const { return total_angle_[vertex]; }
  // The triangles about the vertex close a single ring.
  bool closed(std::uint32_t vertex) const { return closed_[vertex] != 0; }
  // Half-edges that leave the vertex, counter-clockwise within each ring or fan.
  std::span<const std::uint32_t> leaving(std::uint32_t vertex) const {
    return {leaving_.data() + first_leaving_[vertex], leaving_.data() + first_leaving_[vertex + 1]};
  }
  std::size_t vertex_count() const { return total_angle_.size(); }

 private:
  void measure(const TriangleMesh& mesh);
  void pair_edges();
  void go_round_vertices();

  std::vector<std::uint32_t> origin_, twin_;
  std::vector<double> length_mm_, corner_, direction_;
  std::vector<Eigen::Vector2d> apex_;
  std::vector<double> total_angle_;
  std::vector<char> closed_;
  std::vector<std::uint32_t> first_leaving_, leaving_;
};

}  // namespace endplate::geometry
