#pragma once
// What geometry/surface_distance.cpp keeps of a mesh between questions.
#include <cstdint>
#include <optional>
#include <vector>

#include "geometry/flat_faces.hpp"
#include "geometry/sight_graph.hpp"
#include "geometry/sight_walk.hpp"
#include "geometry/straight_sight.hpp"
#include "geometry/surface_distance.hpp"

namespace endplate::geometry {

// Vertices are numbered anew, neighbours near one another, triangles are not.
struct PreparedSurface {
  TriangleMesh mesh;
  FlatFaces faces;
  SightGraph graph;
  std::vector<std::uint32_t> number_of;  // new number by the caller's
};

// A place of the surface and what it sees.
struct Lookout {
  SurfacePoint point;
  std::optional<std::uint32_t> vertex;  // if it is one
  std::vector<SeenVertex> seen;         // nearest sight of each; only itself if it is a vertex
  double radius_mm = 0.0;
};

// Throws std::invalid_argument if the point is not one of the surface.
Lookout look_out(const PreparedSurface& surface, const SurfacePoint& point);
Lookout look_out(const PreparedSurface& surface, std::uint32_t new_number);

std::vector<Seed> seeds_of(const PreparedSurface& surface, const Lookout& lookout);

// The straight line between two points, if one sees the other.
std::optional<double> straight_mm(const PreparedSurface& surface, const Lookout& from,
                                  const Lookout& to);

std::optional<SurfacePath> shortest_path(const PreparedSurface& surface, const Lookout& from,
                                         const Lookout& to);

}  // namespace endplate::geometry
