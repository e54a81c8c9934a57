#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/stitch_borders.h>
#include <CGAL/Surface_mesh.h>

#include "geometry/mesh_repair_steps.hpp"
#include "geometry/surface_mesh_bridge.hpp"

namespace endplate::geometry {

std::size_t sew_boundaries(TriangleMesh& mesh) {
  using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
  auto surface = to_surface<CGAL::Surface_mesh<Kernel::Point_3>>(mesh);
  const std::size_t sewn = CGAL::Polygon_mesh_processing::stitch_borders(surface);
  if (sewn > 0) mesh = from_surface(surface);
  return sewn;
}

}  // namespace endplate::geometry
