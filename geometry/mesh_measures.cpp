#include "geometry/mesh_measures.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <numbers>

namespace endplate::geometry {

namespace {

// Of 36 pi V^2 / A^3, which is 1 for a ball and 0 for a flat sheet. A sheet that bulges by 0.3 % of
// its width has about this (`assumed`: rounding and noise of a scan bulge less).
constexpr double kLeastRoundness = 1e-4;

double signed_volume(const Eigen::Vector3d& a, const Eigen::Vector3d& b, const Eigen::Vector3d& c) {
  return a.dot(b.cross(c)) / 6.0;
}

}  // namespace

double triangle_area_mm2(const TriangleMesh& mesh, std::size_t triangle) {
  const auto& [a, b, c] = mesh.triangles[triangle];
  const auto& p = mesh.vertices_mm;
  return 0.5 * (p[b] - p[a]).cross(p[c] - p[a]).norm();
}

double length_mm(const TriangleMesh& mesh, const BoundaryLoop& loop) {
  double sum = 0.0;
  for (const EdgeUse& edge : loop.edges) {
    sum += (mesh.vertices_mm[edge.high] - mesh.vertices_mm[edge.low]).norm();
  }
  return sum;
}

Eigen::Vector3d centre_mm(const TriangleMesh& mesh, const BoundaryLoop& loop) {
  Eigen::Vector3d sum = Eigen::Vector3d::Zero();
  for (const std::uint32_t v : loop.vertices) sum += mesh.vertices_mm[v];
  return sum / static_cast<double>(loop.vertices.size());
}

bool ComponentMeasures::flat() const {
  const double area_cubed = area_mm2 * area_mm2 * area_mm2;
  return !(36.0 * std::numbers::pi * capped_volume_mm3 * capped_volume_mm3 >
           kLeastRoundness * area_cubed);
}

std::vector<ComponentMeasures> measure_components(const TriangleMesh& mesh,
                                                  const MeshTopology& topology,
                                                  const std::vector<std::uint32_t>& component_of,
                                                  const std::vector<BoundaryLoop>& loops) {
  std::vector<ComponentMeasures> components(
      component_of.empty() ? 0 : 1U + std::ranges::max(component_of));
  const auto& p = mesh.vertices_mm;
  // Near the mesh, so that volumes are no small differences of large ones.
  const Eigen::Vector3d origin = p.empty() ? Eigen::Vector3d::Zero() : p[mesh.triangles[0][0]];
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& [a, b, c] = mesh.triangles[t];
    ComponentMeasures& component = components[component_of[t]];
    ++component.triangles;
    component.area_mm2 += triangle_area_mm2(mesh, t);
    component.capped_volume_mm3 += signed_volume(p[a] - origin, p[b] - origin, p[c] - origin);
    for (std::size_t side = 0; side < 3; ++side) {
      if (topology.uses(topology.edge_of(t, side)).size() == 1) component.closed = false;
    }
  }
  for (const BoundaryLoop& loop : loops) {
    const Eigen::Vector3d middle = centre_mm(mesh, loop) - origin;
    for (const EdgeUse& edge : loop.edges) {
      const auto& from = p[edge.upward ? edge.high : edge.low];
      const auto& to = p[edge.upward ? edge.low : edge.high];
      components[component_of[edge.triangle]].capped_volume_mm3 +=
          signed_volume(from - origin, to - origin, middle);
    }
  }
  return components;
}

}  // namespace endplate::geometry
