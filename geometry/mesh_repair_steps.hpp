#pragma once
// The single repairs, by CGAL's Polygon_mesh_processing. Each may throw std::exception.
#include <cstddef>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct Orienting {
  std::size_t turned_triangles = 0;
  std::size_t split_vertices = 0;  // copies made where edges or vertices are not manifold
};

// Turns triangles so that neighbours face the same way, and cuts the mesh open along edges where
// three or more triangles meet or neighbours cannot agree, and at vertices where fans only touch.
// Asks for three different corners a triangle. Manifold and consistent afterwards.
Orienting orient_neighbours(TriangleMesh& mesh);

// The next three ask for a manifold, consistent mesh and leave one.

// Takes out triangles whose corners lie on one line by joining vertices and turning edges; false
// when some had to stay.
bool remove_triangles_without_area(TriangleMesh& mesh);

// Joins boundary edges that lie at the same place and are two of a kind. How many pairs.
std::size_t sew_boundaries(TriangleMesh& mesh);

struct HoleFilling {
  std::size_t closed = 0;
  std::size_t failed = 0;
};

// Closes every hole of a circumference up to `limit_mm` with triangles between the vertices of its
// rim, of least area where the hole is small; no new vertices, no rounding of the patch.
HoleFilling fill_holes(TriangleMesh& mesh, double limit_mm);

}  // namespace endplate::geometry
