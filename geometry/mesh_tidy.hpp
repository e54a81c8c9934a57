#pragma once
// Triangles that add nothing to a mesh. Indices must be in range; each says how many triangles
// went.
#include <cstddef>
#include <functional>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// Keeps the triangles of which `keep`, given their number, is true.
std::size_t keep_triangles(TriangleMesh& mesh, const std::function<bool(std::size_t)>& keep);

std::size_t drop_triangles_with_repeated_corner(TriangleMesh& mesh);
// Further triangles on the same three corners, whichever way they face.
std::size_t drop_doubled_triangles(TriangleMesh& mesh);

}  // namespace endplate::geometry
