#include "geometry/mesh_check.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <exception>
#include <functional>

#include "geometry/mesh_intersections.hpp"
#include "geometry/mesh_measures.hpp"
#include "geometry/mesh_tidy.hpp"
#include "geometry/mesh_topology.hpp"
#include "geometry/mesh_vertices.hpp"

namespace endplate::geometry {

namespace {

Facing facing_of(const MeshCheck& check, const std::vector<ComponentMeasures>& components) {
  if (check.inconsistent_edges > 0) return Facing::mixed;
  if (check.non_manifold_edges > 0) return Facing::unknown;
  bool outward = false;
  bool inward = false;
  for (const ComponentMeasures& component : components) {
    if (component.flat()) return Facing::unknown;
    (component.capped_volume_mm3 > 0.0 ? outward : inward) = true;
  }
  if (outward && inward) return Facing::mixed;
  return outward ? Facing::outward : Facing::inward;
}

MeshCheck check(TriangleMesh mesh) {
  MeshCheck result;
  Eigen::AlignedBox3d box;
  for (const auto& triangle : mesh.triangles) {
    for (const std::uint32_t corner : triangle) box.extend(mesh.vertices_mm[corner]);
  }
  result.box_low_mm = box.min();
  result.box_high_mm = box.max();
  result.degenerate_triangles =
      static_cast<std::size_t>(std::ranges::count(triangles_without_area(mesh), true));
  drop_triangles_with_repeated_corner(mesh);
  result.doubled_triangles = drop_doubled_triangles(mesh);

  const MeshTopology topology(mesh);
  result.non_manifold_edges = topology.non_manifold_edges();
  result.non_manifold_vertices = topology.non_manifold_vertices();
  result.inconsistent_edges = topology.inconsistent_edges();
  const std::vector<BoundaryLoop> loops = topology.boundary_loops();
  for (const BoundaryLoop& loop : loops) {
    result.holes.push_back({loop.edges.size(), length_mm(mesh, loop), centre_mm(mesh, loop)});
  }
  std::ranges::sort(result.holes, std::greater{}, &MeshHole::circumference_mm);
  const auto components = measure_components(mesh, topology, topology.components(), loops);
  double volume_mm3 = 0.0;
  for (const ComponentMeasures& component : components) {
    result.components.push_back({component.triangles, component.area_mm2});
    result.area_mm2 += component.area_mm2;
    volume_mm3 += component.capped_volume_mm3;
  }
  std::ranges::sort(result.components, std::greater{}, &MeshPart::area_mm2);
  result.closed = result.holes.empty() && !mesh.triangles.empty();
  if (!mesh.triangles.empty()) result.facing = facing_of(result, components);
  if (result.closed && result.non_manifold_edges == 0 && result.inconsistent_edges == 0) {
    result.volume_mm3 = volume_mm3;
  }
  const SelfIntersections crossings = count_self_intersections(mesh);
  result.self_intersections = crossings.pairs;
  result.self_intersections_complete = crossings.complete;
  return result;
}

}  // namespace

GeometryResult<MeshCheck> check_mesh(const TriangleMesh& mesh) {
  if (const auto fault = fault_of_arrays(mesh)) return std::unexpected(*fault);
  try {
    return check(mesh);
  } catch (const std::exception& error) {
    return std::unexpected(
        GeometryProblem{"the surface cannot be checked: " + std::string(error.what()),
                        "export it again with fewer triangles"});
  }
}

}  // namespace endplate::geometry
