#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/repair_degeneracies.h>
#include <CGAL/Surface_mesh.h>

#include "geometry/mesh_repair_steps.hpp"
#include "geometry/surface_mesh_bridge.hpp"

namespace endplate::geometry {

bool remove_triangles_without_area(TriangleMesh& mesh) {
  using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
  auto surface = to_surface<CGAL::Surface_mesh<Kernel::Point_3>>(mesh);
  const bool all = CGAL::Polygon_mesh_processing::remove_degenerate_faces(surface);
  mesh = from_surface(surface);
  return all;
}

}  // namespace endplate::geometry
