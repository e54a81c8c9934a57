#pragma once
// Which triangles of a mesh meet at which edges and vertices, for damaged meshes as well: nothing
// is asked of the mesh but indices in range and three different corners in every triangle.
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// Side s of a triangle goes from its corner s to its corner (s + 1) % 3.
struct EdgeUse {
  std::uint32_t low = 0;  // the two vertices, low < high
  std::uint32_t high = 0;
  std::uint32_t triangle = 0;
  std::uint8_t side = 0;
  bool upward = false;  // the side goes from low to high
};

// A closed row of edges with one triangle each: vertex i, vertex i + 1, ..., back to the first.
struct BoundaryLoop {
  std::vector<std::uint32_t> vertices;
  // The uses of its edges; use i joins vertices i and i + 1.
  std::vector<EdgeUse> edges;
};

class MeshTopology {
 public:
  explicit MeshTopology(const TriangleMesh& mesh);

  std::size_t edge_count() const { return begins_.size() - 1; }
  std::span<const EdgeUse> uses(std::size_t edge) const {
    return std::span(uses_).subspan(begins_[edge], begins_[edge + 1] - begins_[edge]);
  }
  std::size_t edge_of(std::size_t triangle, std::size_t side) const {
    return edge_of_[triangle][side];
  }

  std::size_t boundary_edges() const;
  std::size_t non_manifold_edges() const;  // three triangles or more
  std::size_t inconsistent_edges() const;  // two triangles that run along it the same way
  // Vertices whose triangles are not all joined across edges at the vertex (a bow tie).
  std::size_t non_manifold_vertices() const;

  // For every triangle the number of its component, from 0: triangles joined across edges.
  std::vector<std::uint32_t> components() const;

  // Every boundary edge lies in exactly one loop, and a loop comes by each vertex once. Where three
  // or more triangles meet at an edge a loop takes any next edge, and may then not be closed.
  std::vector<BoundaryLoop> boundary_loops() const;

 private:
  std::vector<std::array<std::uint32_t, 3>> triangles_;
  std::size_t vertex_count_;
  std::vector<EdgeUse> uses_;  // sorted by edge
  std::vector<std::size_t> begins_;
  std::vector<std::array<std::size_t, 3>> edge_of_;
};

}  // namespace endplate::geometry
