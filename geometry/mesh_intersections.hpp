#pragma once
// Triangles without area and triangles that cross, by CGAL's exact predicates.
#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// For every triangle whether its corners lie exactly on one line.
std::vector<bool> triangles_without_area(const TriangleMesh& mesh);

struct SelfIntersections {
  std::size_t pairs = 0;
  bool complete = true;  // false: the count was given up, there may be more
};

// Pairs of triangles that meet elsewhere than at corners or edges that they share; corners at the
// same point are shared whatever their index. Left out: triangles without area, and pairs with the
// same three corners. Gives up after 10,000 pairs or when boxes overlap so much (on average more
// than 200 a triangle) that the count would take minutes.
SelfIntersections count_self_intersections(const TriangleMesh& mesh);

// The same pairs by the numbers of their triangles, at most `most` of them.
std::vector<std::array<std::uint32_t, 2>> crossing_pairs(const TriangleMesh& mesh,
                                                         std::size_t most);

}  // namespace endplate::geometry
