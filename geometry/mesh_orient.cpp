#include <CGAL/Polygon_mesh_processing/orient_polygon_soup.h>
#include <CGAL/Simple_cartesian.h>

#include <array>
#include <vector>

#include "geometry/mesh_repair_steps.hpp"

namespace endplate::geometry {

namespace {

struct Counter : CGAL::Polygon_mesh_processing::Default_orientation_visitor {
  Orienting* counts = nullptr;
  void duplicated_vertex(std::size_t, std::size_t) { ++counts->split_vertices; }
  void polygon_orientation_reversed(std::size_t) { ++counts->turned_triangles; }
};

}  // namespace

Orienting orient_neighbours(TriangleMesh& mesh) {
  std::vector<CGAL::Simple_cartesian<double>::Point_3> points;
  for (const auto& p : mesh.vertices_mm) points.emplace_back(p.x(), p.y(), p.z());
  std::vector<std::vector<std::size_t>> polygons;
  for (const auto& [a, b, c] : mesh.triangles) polygons.push_back({a, b, c});
  Orienting counts;
  Counter counter;
  counter.counts = &counts;
  CGAL::Polygon_mesh_processing::orient_polygon_soup(points, polygons,
                                                     CGAL::parameters::visitor(counter));
  mesh.vertices_mm.clear();
  for (const auto& p : points) mesh.vertices_mm.emplace_back(p.x(), p.y(), p.z());
  for (std::size_t t = 0; t < polygons.size(); ++t) {
    for (std::size_t i = 0; i < 3; ++i) {
      mesh.triangles[t].at(i) = static_cast<std::uint32_t>(polygons[t][i]);
    }
  }
  return counts;
}

}  // namespace endplate::geometry
