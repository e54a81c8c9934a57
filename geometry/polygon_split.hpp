#pragma once
// Polygons cut into triangles, concave ones and those that are not quite flat as well.
#include <array>
#include <cstddef>
#include <vector>

#include "geometry/mesh_codec.hpp"

namespace endplate::geometry {

// Triangles of one polygon of 4 or more corners, by CGAL's triangulate_faces (the better diagonal
// of a quadrilateral, a constrained Delaunay triangulation of more corners). A polygon without area
// or one that crosses itself becomes a fan: its triangles keep their neighbours joined.
std::vector<std::array<std::size_t, 3>> split_polygon(const std::vector<Eigen::Vector3d>& points,
                                                      const std::vector<std::size_t>& polygon);

}  // namespace endplate::geometry
