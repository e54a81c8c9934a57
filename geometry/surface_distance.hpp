#pragma once
// Distances over a surface as a tape would measure them, and the way the tape takes.
//
// Prepared once for a mesh, then asked for many sources. All lengths in mm; triangles and vertices
// are numbered as in the mesh. A point that cannot be reached over the surface is at an infinite
// distance and has no path.
//
// Method: shortest ways over a graph of straight lines between vertices within sight, with the
// graph's slight bends pulled straight (geometry/sight_graph.hpp and sight_walk.hpp name the
// sources; pulling bends straight by the law of cosines is this project's own). Exact within sight
// of the source and wherever the surface unfolds into a plane. Elsewhere the distances of a field
// err both ways; docs/surface-distance.md shows by how much. A path is exact for its own way: a
// line over the surface that no small change makes shorter.
#include <Eigen/Core>
#include <cstdint>
#include <expected>
#include <memory>
#include <optional>
#include <vector>

#include "geometry/surface_point.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

enum class SurfaceFault {
  no_triangles,
  no_such_vertex,  // a triangle names one that is not there
  not_finite,      // a coordinate is not a finite number
  too_large,       // more than 2^24 triangles or 2^31 arcs
};

struct SurfacePath {
  double length_mm = 0.0;
  // From the first point to the second, straight between neighbours, each piece within a triangle.
  std::vector<Eigen::Vector3d> points_mm;
};

// How far the vertices look. A path is pulled taut in any case, so that a short sight does for
// paths, in a third of the time to prepare; a field needs the long one.
enum class Sight { for_paths, for_fields };

struct PreparedSurface;

// Distances from one source. Stays valid after the SurfaceDistance it came from is gone.
class DistanceField {
 public:
  // One for each vertex of the mesh.
  const std::vector<double>& at_vertices_mm() const { return at_vertices_mm_; }
  // Between vertices: straight from the vertices in sight of the point, not interpolated.
  // Throws std::invalid_argument if the point is not one of the surface.
  double at_mm(const SurfacePoint& point) const;

 private:
  friend class SurfaceDistance;
  struct Ways;
  DistanceField() = default;
  std::shared_ptr<const PreparedSurface> surface_;
  std::shared_ptr<const Ways> ways_;
  std::vector<double> at_vertices_mm_;
};

class SurfaceDistance {
 public:
  // A border, a hole, several pieces, triangles without area and edges where more than two
  // triangles meet are tolerated; lines go straight over an edge only where two triangles meet and
  // agree about their outside.
  static std::expected<SurfaceDistance, SurfaceFault> prepare(const TriangleMesh& mesh,
                                                              Sight sight = Sight::for_fields);

  // Throw std::invalid_argument if the vertex or point is not one of the surface.
  DistanceField from_vertex(std::uint32_t vertex) const;
  DistanceField from(const SurfacePoint& source) const;

  // None if no way leads from one to the other.
  std::optional<SurfacePath> path(const SurfacePoint& from, const SurfacePoint& to) const;
  // The length of that path; infinite if there is none.
  double between_mm(const SurfacePoint& a, const SurfacePoint& b) const;

  // The vertex as a point of one of its triangles; throws std::invalid_argument if it has none.
  SurfacePoint point_at(std::uint32_t vertex) const;

 private:
  explicit SurfaceDistance(std::shared_ptr<const PreparedSurface> surface);
  std::shared_ptr<const PreparedSurface> surface_;
};

}  // namespace endplate::geometry
