#pragma once
// Between arrays and a half-edge mesh, for the .cpp files that know which mesh that is.
#include <cstdint>
#include <stdexcept>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// `Surface`: CGAL's Surface_mesh. Throws when the triangles are not manifold and consistent.
template <class Surface>
Surface to_surface(const TriangleMesh& mesh) {
  Surface surface;
  std::vector<typename Surface::Vertex_index> vertices;
  vertices.reserve(mesh.vertices_mm.size());
  for (const auto& p : mesh.vertices_mm) {
    vertices.push_back(surface.add_vertex(typename Surface::Point(p.x(), p.y(), p.z())));
  }
  for (const auto& [a, b, c] : mesh.triangles) {
    if (surface.add_face(vertices[a], vertices[b], vertices[c]) == Surface::null_face()) {
      throw std::runtime_error("triangles do not join to a surface");
    }
  }
  return surface;
}

// Leaves out what was removed.
template <class Surface>
TriangleMesh from_surface(Surface& surface) {
  surface.collect_garbage();
  TriangleMesh mesh;
  mesh.vertices_mm.reserve(surface.number_of_vertices());
  for (const auto v : surface.vertices()) {
    const auto& p = surface.point(v);
    mesh.vertices_mm.emplace_back(p.x(), p.y(), p.z());
  }
  mesh.triangles.reserve(surface.number_of_faces());
  for (const auto f : surface.faces()) {
    std::array<std::uint32_t, 3> triangle{};
    std::size_t corner = 0;
    for (const auto v : surface.vertices_around_face(surface.halfedge(f))) {
      triangle.at(corner++) = static_cast<std::uint32_t>(v.idx());
    }
    mesh.triangles.push_back(triangle);
  }
  return mesh;
}

}  // namespace endplate::geometry
