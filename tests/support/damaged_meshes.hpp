#pragma once
// Meshes with one damage each.
#include "meshes.hpp"

namespace endplate::test {

inline TriangleMesh without(TriangleMesh mesh, std::size_t triangle) {
  mesh.triangles.erase(mesh.triangles.begin() + static_cast<std::ptrdiff_t>(triangle));
  return mesh;
}

inline TriangleMesh inside_out(TriangleMesh mesh) {
  for (auto& triangle : mesh.triangles) std::swap(triangle[1], triangle[2]);
  return mesh;
}

// Two cubes that share one vertex, in one point.
inline TriangleMesh bow_tie() {
  TriangleMesh mesh = cube();
  add(mesh, cube(), {10.0, 10.0, 10.0});
  for (auto& triangle : mesh.triangles) {
    for (auto& corner : triangle) corner -= corner >= 8 ? 1 : 0;
  }
  mesh.vertices_mm.erase(mesh.vertices_mm.begin() + 8);
  return mesh;
}

// A fin that stands on an edge of a cube.
inline TriangleMesh three_on_an_edge() {
  TriangleMesh mesh = cube();
  mesh.vertices_mm.emplace_back(-0.05, -0.05, 5.0);
  mesh.triangles.push_back({0, 4, 8});
  return mesh;
}

// A fin along two edges of the wall of a limb that is cut at the top: to cut it off, the wall has
// to be cut open between them as well.
inline TriangleMesh long_fin() {
  TriangleMesh mesh = tube(40.0, 300.0, 24, 10, true);
  const auto tip = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  mesh.vertices_mm.emplace_back(40.5, 0.0, 150.0);
  mesh.triangles.push_back({4 * 24, 5 * 24, tip});
  mesh.triangles.push_back({5 * 24, 6 * 24, tip});
  return mesh;
}

// A triangle of a cube cut in two at the middle of its side, and the gap filled with a sliver whose
// corners lie on one line.
inline TriangleMesh with_sliver() {
  TriangleMesh mesh = cube();
  mesh.vertices_mm.emplace_back(5.0, 0.0, 0.0);
  mesh.triangles[4] = {0, 8, 5};  // of 0, 1, 5
  mesh.triangles.push_back({8, 1, 5});
  mesh.triangles.push_back({0, 1, 8});
  return mesh;
}

// A limb of radius 40, length 300, cut at the top, whose wall has been pulled through the other
// side.
inline TriangleMesh self_crossing() {
  TriangleMesh mesh = tube(40.0, 300.0, 24, 10, true);
  mesh.vertices_mm[std::size_t{5} * 24].x() = -60.0;
  return mesh;
}

// A band with one twist: it has no outside.
inline TriangleMesh moebius_band() {
  TriangleMesh mesh;
  constexpr std::uint32_t kAround = 24;
  for (std::uint32_t i = 0; i < kAround; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kAround;
    for (const double side : {-10.0, 10.0}) {
      const double r = 40.0 + side * std::cos(angle / 2.0);
      mesh.vertices_mm.emplace_back(r * std::cos(angle), r * std::sin(angle),
                                    side * std::sin(angle / 2.0));
    }
  }
  for (std::uint32_t i = 0; i < kAround; ++i) {
    const bool last = i + 1 == kAround;
    const std::uint32_t a = 2 * i;
    const std::uint32_t c = last ? 1 : a + 2;
    const std::uint32_t d = last ? 0 : a + 3;
    mesh.triangles.push_back({a, a + 1, c});
    mesh.triangles.push_back({a + 1, d, c});
  }
  return mesh;
}

}  // namespace endplate::test
