#pragma once
// What a place of a surface sees along straight lines: the triangles about it are unfolded into the
// plane one after another, and a vertex is seen where the line to it stays inside them. Such a line
// is a geodesic, though not always the shortest one.
// Source: windows of Chen, Han. Shortest paths on a polyhedron. 1990 (recalled), without pruning
// and within a radius.
#include <Eigen/Core>
#include <cstdint>
#include <optional>
#include <vector>

#include "geometry/flat_faces.hpp"
#include "geometry/surface_point.hpp"

namespace endplate::geometry {

// An edge seen from the viewpoint, unfolded into the viewpoint's plane with the viewpoint as zero.
struct SightWindow {
  Eigen::Vector2d right, left;          // ends of the edge
  Eigen::Vector2d right_ray, left_ray;  // what lies between them is seen
  std::uint32_t half_edge;              // on the near side
  std::uint32_t parent;                 // window before this one, FlatFaces::kNone at the first
};

struct SeenVertex {
  std::uint32_t vertex;
  double distance_mm;
  double leaving_rad;         // about the viewpoint, if that is a vertex
  double arriving_rad;        // direction back to the viewpoint, about the seen vertex
  Eigen::Vector2d place;      // in the viewpoint's plane
  std::uint32_t last_window;  // the last one passed, FlatFaces::kNone if none is
};

// A point of the surface that was looked for.
struct SeenPoint {
  double distance_mm;
  Eigen::Vector2d place;
  std::uint32_t last_window;
};

// Holds the answer of the latest look; keep one and look often.
class StraightSight {
 public:
  explicit StraightSight(const FlatFaces& faces) : faces_(&faces) {}

  // `within_mm`: how far to look.
  void look_from_vertex(std::uint32_t vertex, double within_mm);
  // `sought`: reported by seen_point() if it is seen within the radius.
  void look_from_point(const SurfacePoint& point, double within_mm,
                       const SurfacePoint* sought = nullptr);

  // A vertex may be seen along several lines, and is then here as often.
  const std::vector<SeenVertex>& seen() const { return seen_; }
  const std::optional<SeenPoint>& seen_point() const { return seen_point_; }
  const SightWindow& window(std::uint32_t index) const { return windows_[index]; }

 private:
  void begin(double within_mm, const SurfacePoint* sought);
  void see_through(std::uint32_t index);
  void look_for_point(const SightWindow& window, std::uint32_t h, const Eigen::Vector2d& apex,
                      std::uint32_t index);
  void add(const SightWindow& window);

  const FlatFaces* faces_;
  const SurfacePoint* sought_ = nullptr;
  double within_mm_ = 0.0;
  double turned_rad_ = 0.0;  // of the plane against the vertex's own directions
  std::size_t most_windows_ = 0;
  std::vector<SightWindow> windows_;
  std::vector<SeenVertex> seen_;
  std::optional<SeenPoint> seen_point_;
};

}  // namespace endplate::geometry
