#pragma once
// What is right and wrong with a mesh, in numbers.
#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

enum class Facing {
  outward,
  inward,
  mixed,   // neighbours face different ways, or some components outward and some inward
  unknown  // a nearly flat sheet, or three triangles meet at an edge
};

struct MeshHole {
  std::size_t edges = 0;
  double circumference_mm = 0.0;
  Eigen::Vector3d centre_mm = Eigen::Vector3d::Zero();
};

struct MeshPart {
  std::size_t triangles = 0;
  double area_mm2 = 0.0;
};

// Triangles with a corner twice and further copies of a triangle are counted, and left out of all
// else.
struct MeshCheck {
  bool closed = false;                      // no hole
  std::vector<MeshHole> holes;              // the longest first; open ends are holes as well
  std::size_t non_manifold_edges = 0;       // three triangles or more
  std::size_t non_manifold_vertices = 0;    // fans of triangles that touch at a point only
  std::size_t inconsistent_edges = 0;       // of two triangles that face different ways
  Facing facing = Facing::unknown;          // of an open mesh: with its holes capped
  std::size_t degenerate_triangles = 0;     // a corner twice, or all three exactly on one line
  std::size_t doubled_triangles = 0;        // further triangles on the same three corners
  std::vector<MeshPart> components;         // joined across edges, the largest area first
  std::size_t self_intersections = 0;       // pairs of triangles
  bool self_intersections_complete = true;  // false: at least so many
  Eigen::Vector3d box_low_mm = Eigen::Vector3d::Zero();
  Eigen::Vector3d box_high_mm = Eigen::Vector3d::Zero();
  double area_mm2 = 0.0;
  // Only of a closed mesh that is manifold along its edges and consistently oriented; below 0 when
  // it faces inward.
  std::optional<double> volume_mm3;
};

// Vertices are told apart by their index: merge identical ones before, as read_mesh_file does.
// Refuses only what is no mesh (no triangle, indices out of range, coordinates not finite).
GeometryResult<MeshCheck> check_mesh(const TriangleMesh& mesh);

}  // namespace endplate::geometry
