#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/border.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Polygon_mesh_processing/triangulate_hole.h>
#include <CGAL/Surface_mesh.h>

#include <iterator>
#include <vector>

#include "geometry/mesh_repair_steps.hpp"
#include "geometry/surface_mesh_bridge.hpp"

namespace endplate::geometry {

namespace {

namespace pmp = CGAL::Polygon_mesh_processing;
using Surface = CGAL::Surface_mesh<CGAL::Exact_predicates_inexact_constructions_kernel::Point_3>;

// The search for the patch of least area takes the cube of the number of edges: a second at 500.
constexpr std::size_t kMostEdgesForSearch = 200;

bool fill(Surface& surface, Surface::Halfedge_index rim) {
  const std::size_t edges = CGAL::halfedges_around_face(rim, surface).size();
  std::vector<Surface::Face_index> patch;
  pmp::triangulate_hole(
      surface, rim, std::back_inserter(patch),
      CGAL::parameters::use_2d_constrained_delaunay_triangulation(edges > kMostEdgesForSearch)
          .do_not_use_cubic_algorithm(edges > kMostEdgesForSearch));
  return !patch.empty();
}

}  // namespace

HoleFilling fill_holes(TriangleMesh& mesh, double limit_mm) {
  auto surface = to_surface<Surface>(mesh);
  std::vector<Surface::Halfedge_index> rims;
  pmp::extract_boundary_cycles(surface, std::back_inserter(rims));
  HoleFilling filling;
  for (const auto rim : rims) {
    if (CGAL::to_double(pmp::face_border_length(rim, surface)) > limit_mm) continue;
    ++(fill(surface, rim) ? filling.closed : filling.failed);
  }
  if (filling.closed > 0) mesh = from_surface(surface);
  return filling;
}

}  // namespace endplate::geometry
