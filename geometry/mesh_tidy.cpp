#include "geometry/mesh_tidy.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <set>

namespace endplate::geometry {

std::size_t keep_triangles(TriangleMesh& mesh, const std::function<bool(std::size_t)>& keep) {
  std::size_t kept = 0;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    if (keep(t)) mesh.triangles[kept++] = mesh.triangles[t];
  }
  const std::size_t dropped = mesh.triangles.size() - kept;
  mesh.triangles.resize(kept);
  return dropped;
}

std::size_t drop_triangles_with_repeated_corner(TriangleMesh& mesh) {
  return keep_triangles(mesh, [&](std::size_t t) {
    const auto& [a, b, c] = mesh.triangles[t];
    return a != b && b != c && c != a;
  });
}

std::size_t drop_doubled_triangles(TriangleMesh& mesh) {
  std::set<std::array<std::uint32_t, 3>> seen;
  return keep_triangles(mesh, [&](std::size_t t) {
    auto corners = mesh.triangles[t];
    std::ranges::sort(corners);
    return seen.insert(corners).second;
  });
}

}  // namespace endplate::geometry
