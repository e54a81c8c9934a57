#pragma once
// A way over a surface through a row of triangles, each sharing an edge with the next: the shortest
// line through the row, and rows that pass a vertex on its other side where that is shorter.
// Sources: funnel of Lee, Preparata. Euclidean shortest paths in the presence of rectilinear
// barriers. Networks 1984;14:393 (recalled); going round vertices after Xin, Wang. Efficiently
// determining a locally exact shortest path on polyhedral surfaces. Comput Aided Des 2007;39:1081
// (recalled).
#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

#include "geometry/flat_faces.hpp"
#include "geometry/surface_point.hpp"

namespace endplate::geometry {

// A vertex, or a point within the first or last triangle of the row.
using StripEnd = std::variant<std::uint32_t, SurfacePoint>;

struct FaceStrip {
  StripEnd from, to;
  std::uint32_t first_triangle = 0;
  // Half-edges crossed, each on the side that is left.
  std::vector<std::uint32_t> gates;

  std::uint32_t last_triangle(const FlatFaces& faces) const {
    return gates.empty() ? first_triangle : faces.twin(gates.back()) / 3;
  }
};

// Gates from the triangle `from` round `vertex`, a corner of it, to the first triangle with all of
// `wanted` among its corners or, if that is empty, to the triangle `to`. None if an open edge is in
// the way.
struct Rotation {
  std::uint32_t vertex;
  std::uint32_t from;
  bool counter_clockwise;
};
std::optional<std::vector<std::uint32_t>> go_round_to_triangle(const FlatFaces& faces,
                                                               const Rotation& rotation,
                                                               std::uint32_t to);
std::optional<std::vector<std::uint32_t>> go_round_to_vertex(const FlatFaces& faces,
                                                             const Rotation& rotation,
                                                             std::uint32_t to);

// Where a line crosses a gate: 0 at the half-edge's origin, 1 at its end.
struct StripLine {
  double length_mm = 0.0;
  std::vector<double> crossings;  // one a gate
};

// The shortest line through the row, after moving the row over vertices until nothing is gained.
StripLine tighten(const FlatFaces& faces, FaceStrip& strip);

// Takes out gates that are crossed to and fro.
void drop_detours(const FlatFaces& faces, std::vector<std::uint32_t>& gates);

}  // namespace endplate::geometry
