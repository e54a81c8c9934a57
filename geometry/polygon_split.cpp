#include "geometry/polygon_split.hpp"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/triangulate_faces.h>
#include <CGAL/Surface_mesh.h>

#include <exception>

namespace endplate::geometry {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Triangles = std::vector<std::array<std::size_t, 3>>;

Triangles fan(const std::vector<std::size_t>& polygon) {
  Triangles triangles;
  for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
    triangles.push_back({polygon[0], polygon[i], polygon[i + 1]});
  }
  return triangles;
}

}  // namespace

Triangles split_polygon(const std::vector<Eigen::Vector3d>& points,
                        const std::vector<std::size_t>& polygon) {
  Mesh mesh;
  std::vector<Mesh::Vertex_index> corners;
  for (const std::size_t i : polygon) {
    const auto& p = points[i];
    corners.push_back(mesh.add_vertex({p.x(), p.y(), p.z()}));
  }
  mesh.add_face(corners);
  try {
    if (!CGAL::Polygon_mesh_processing::triangulate_faces(mesh)) return fan(polygon);
  } catch (const std::exception&) {  // its sides cross
    return fan(polygon);
  }
  Triangles triangles;
  for (const auto face : mesh.faces()) {
    std::array<std::size_t, 3> triangle{};
    std::size_t count = 0;
    for (const auto v : mesh.vertices_around_face(mesh.halfedge(face))) {
      if (count == 3 || v.idx() >= polygon.size()) return fan(polygon);
      triangle[count++] = polygon[v.idx()];
    }
    triangles.push_back(triangle);
  }
  return triangles.size() + 2 == polygon.size() ? triangles : fan(polygon);
}

}  // namespace endplate::geometry
