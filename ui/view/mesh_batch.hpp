#pragma once
// Triangles for one drawing call, made of many named things.
#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace endplate::ui {

struct MeshBatch {
  std::vector<float> points;           // three a vertex, mm
  std::vector<float> normals;          // three a vertex, unit, outward
  std::vector<std::uint32_t> corners;  // three a triangle
  std::vector<std::uint32_t> items;    // by vertex: the thing that it belongs to

  std::size_t vertices() const { return items.size(); }
  std::size_t triangles() const { return corners.size() / 3; }
};

// With normals smoothed over each vertex's triangles.
void add_mesh(MeshBatch& batch, std::span<const Eigen::Vector3d> vertices_mm,
              std::span<const std::array<std::uint32_t, 3>> triangles, std::uint32_t item);

// A closed tube along a line of at least two points; its vertices depend on their number alone.
void add_tube(MeshBatch& batch, std::span<const Eigen::Vector3d> line_mm, double radius_mm,
              int sides, std::uint32_t item);

enum class Dot { ball, small_ball, diamond };
void add_dot(MeshBatch& batch, const Eigen::Vector3d& place_mm, double radius_mm, Dot dot,
             std::uint32_t item);

}  // namespace endplate::ui
