#pragma once
// Which vertices of a mesh are the same point, and which are used at all. Indices must be in range.
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// For every vertex the lowest index of a vertex with exactly the same coordinates.
std::vector<std::uint32_t> first_vertex_at_each_place(const TriangleMesh& mesh);

// How many vertices went; the order of the others stays.
std::size_t merge_identical_vertices(TriangleMesh& mesh);
std::size_t drop_unused_vertices(TriangleMesh& mesh);

// What makes a mesh no mesh: no triangle, an index out of range, a coordinate that is not finite or
// so large (1e9) that a float has no digit left below the size of any limb.
std::optional<GeometryProblem> fault_of_arrays(const TriangleMesh& mesh);

}  // namespace endplate::geometry
