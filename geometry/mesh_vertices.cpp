#include "geometry/mesh_vertices.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace endplate::geometry {

namespace {

constexpr double kLargestCoordinate = 1e9;

auto coordinates(const Eigen::Vector3d& p) {
  return std::tuple(p.x(), p.y(), p.z());
}

}  // namespace

std::vector<std::uint32_t> first_vertex_at_each_place(const TriangleMesh& mesh) {
  const auto& points = mesh.vertices_mm;
  std::vector<std::uint32_t> order(points.size());
  std::iota(order.begin(), order.end(), 0U);
  std::ranges::sort(order, [&](std::uint32_t a, std::uint32_t b) {
    const auto pa = coordinates(points[a]);
    const auto pb = coordinates(points[b]);
    return pa != pb ? pa < pb : a < b;
  });
  std::vector<std::uint32_t> first(points.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    const bool same = i > 0 && points[order[i]] == points[order[i - 1]];
    first[order[i]] = same ? first[order[i - 1]] : order[i];
  }
  return first;
}

std::size_t drop_unused_vertices(TriangleMesh& mesh) {
  constexpr auto kUnused = std::numeric_limits<std::uint32_t>::max();
  std::vector<std::uint32_t> place(mesh.vertices_mm.size(), kUnused);
  for (const auto& triangle : mesh.triangles) {
    for (const std::uint32_t corner : triangle) place[corner] = 0;
  }
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < place.size(); ++i) {
    if (place[i] == kUnused) continue;
    mesh.vertices_mm[kept] = mesh.vertices_mm[i];
    place[i] = kept++;
  }
  for (auto& triangle : mesh.triangles) {
    for (std::uint32_t& corner : triangle) corner = place[corner];
  }
  const std::size_t dropped = mesh.vertices_mm.size() - kept;
  mesh.vertices_mm.resize(kept);
  return dropped;
}

std::size_t merge_identical_vertices(TriangleMesh& mesh) {
  const std::vector<std::uint32_t> first = first_vertex_at_each_place(mesh);
  for (auto& triangle : mesh.triangles) {
    for (std::uint32_t& corner : triangle) corner = first[corner];
  }
  // The merged ones are unused now, and so were others perhaps: only the merged are counted and go.
  std::vector<std::uint32_t> place(first.size());
  std::uint32_t kept = 0;
  for (std::uint32_t i = 0; i < first.size(); ++i) {
    if (first[i] != i) continue;
    mesh.vertices_mm[kept] = mesh.vertices_mm[i];
    place[i] = kept++;
  }
  for (auto& triangle : mesh.triangles) {
    for (std::uint32_t& corner : triangle) corner = place[corner];
  }
  const std::size_t merged = first.size() - kept;
  mesh.vertices_mm.resize(kept);
  return merged;
}

std::optional<GeometryProblem> fault_of_arrays(const TriangleMesh& mesh) {
  for (std::size_t i = 0; i < mesh.vertices_mm.size(); ++i) {
    const auto& p = mesh.vertices_mm[i];
    if (!p.allFinite()) {
      return GeometryProblem{
          "vertex " + std::to_string(i + 1) + " has a coordinate that is not finite",
          "export the file again"};
    }
    if (p.cwiseAbs().maxCoeff() > kLargestCoordinate) {
      return GeometryProblem{
          "vertex " + std::to_string(i + 1) + " lies more than a thousand million units away",
          "remove stray points and export the file again"};
    }
  }
  if (mesh.triangles.empty()) {
    return GeometryProblem{"the mesh has no triangles", "export the surface again"};
  }
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    for (const std::uint32_t corner : mesh.triangles[i]) {
      if (corner < mesh.vertices_mm.size()) continue;
      return GeometryProblem{"triangle " + std::to_string(i + 1) + " names vertex " +
                                 std::to_string(corner) + " of " +
                                 std::to_string(mesh.vertices_mm.size()),
                             "export the file again"};
    }
  }
  return {};
}

}  // namespace endplate::geometry
