// The way between two points of a surface: from the graph's arcs to a row of triangles, and the
// shortest line through it (geometry/face_strip.hpp).
#include <algorithm>
#include <cmath>
#include <limits>
#include <ranges>
#include <stdexcept>
#include <utility>

#include "geometry/face_strip.hpp"
#include "geometry/prepared_surface.hpp"

namespace endplate::geometry {
namespace {

constexpr std::uint32_t kNone = FlatFaces::kNone;

// A straight piece of the way. Without gates it stays in a triangle, maybe on its edge.
struct Hop {
  std::uint32_t from;  // vertex, kNone for a source that is none
  std::uint32_t to;    // likewise for the end
  std::vector<std::uint32_t> gates;
  double leaving_rad;   // about `from`
  double arriving_rad;  // about `to`, back to `from`
};

std::vector<std::uint32_t> gates_to(const StraightSight& sight, std::uint32_t last_window) {
  std::vector<std::uint32_t> gates;
  for (std::uint32_t w = last_window; w != kNone; w = sight.window(w).parent)
    gates.push_back(sight.window(w).half_edge);
  std::ranges::reverse(gates);
  return gates;
}

std::optional<SeenVertex> nearest_sight(const StraightSight& sight, std::uint32_t vertex) {
  std::optional<SeenVertex> nearest;
  for (const SeenVertex& s : sight.seen())
    if (s.vertex == vertex && (!nearest || s.distance_mm < nearest->distance_mm)) nearest = s;
  return nearest;
}

// How far to look again for what was seen at this distance.
double again_mm(double distance_mm) {
  return 1.0001 * distance_mm + 1e-6;
}

Hop reversed(const FlatFaces& faces, const Hop& hop) {
  Hop back{hop.to, hop.from, {}, hop.arriving_rad, hop.leaving_rad};
  for (const std::uint32_t gate : std::views::reverse(hop.gates))
    back.gates.push_back(faces.twin(gate));
  return back;
}

std::optional<Hop> look_along(const PreparedSurface& surface, std::uint32_t from, std::uint32_t to,
                              double distance_mm) {
  StraightSight sight(surface.faces);
  sight.look_from_vertex(from, again_mm(distance_mm));
  const auto seen = nearest_sight(sight, to);
  if (!seen) return std::nullopt;
  return Hop{from, to, gates_to(sight, seen->last_window), seen->leaving_rad, seen->arriving_rad};
}

// Either end may have found the arc; the other one may just miss it by rounding.
Hop hop_between(const PreparedSurface& surface, std::uint32_t from, std::uint32_t to,
                double distance_mm) {
  if (auto hop = look_along(surface, from, to, distance_mm)) return *hop;
  if (auto hop = look_along(surface, to, from, distance_mm)) return reversed(surface.faces, *hop);
  throw std::logic_error("an arc of the graph cannot be found again");
}

Hop hop_from_point(const PreparedSurface& surface, const SurfacePoint& point, std::uint32_t to,
                   double distance_mm) {
  StraightSight sight(surface.faces);
  sight.look_from_point(point, again_mm(distance_mm));
  const auto seen = nearest_sight(sight, to);
  if (!seen) throw std::logic_error("a vertex in sight cannot be found again");
  return {kNone, to, gates_to(sight, seen->last_window), 0.0, seen->arriving_rad};
}

// From the source to the last vertex in sight of the end.
std::vector<Hop> hops_to(const PreparedSurface& surface, const Walk& walk, const Lookout& from,
                         std::uint32_t vertex) {
  std::vector<Hop> hops;
  while (walk.labels[vertex].came_by < kSeed) {
    const WalkLabel& label = walk.labels[vertex];
    const float length_mm = surface.graph.arcs[label.came_by].length_mm;
    hops.push_back(hop_between(surface, label.came_from, vertex, static_cast<double>(length_mm)));
    vertex = label.came_from;
  }
  if (!from.vertex) {
    const std::uint32_t seed = walk.labels[vertex].came_by - kSeed;
    hops.push_back(hop_from_point(surface, from.point, vertex, from.seen[seed].distance_mm));
  }
  std::ranges::reverse(hops);
  return hops;
}

// Joins hops to rows of triangles; a new row starts where none leads round a vertex.
class StripBuilder {
 public:
  StripBuilder(const PreparedSurface& surface, const Lookout& from, const Lookout& to)
      : faces_(surface.faces), from_(from), to_(to) {}

  std::vector<FaceStrip> build(const std::vector<Hop>& hops) {
    start(end_of(from_));
    for (const Hop& hop : hops) {
      if (!begun_) {
        strip_.first_triangle = first_triangle(hop);
        begun_ = true;
      } else {
        turn(hop);
      }
      strip_.gates.insert(strip_.gates.end(), hop.gates.begin(), hop.gates.end());
      arrived_rad_ = hop.arriving_rad;
    }
    finish(end_of(to_));
    return std::move(strips_);
  }

 private:
  static StripEnd end_of(const Lookout& lookout) {
    if (lookout.vertex) return *lookout.vertex;
    return lookout.point;
  }

  void start(const StripEnd& from) {
    strip_ = {};
    strip_.from = from;
    begun_ = false;
  }

  void finish(const StripEnd& to) {
    strip_.to = to;
    strips_.push_back(std::move(strip_));
  }

  std::uint32_t first_triangle(const Hop& hop) const {
    if (!hop.gates.empty()) return hop.gates.front() / 3;
    if (hop.from == kNone) return from_.point.triangle;
    if (hop.to == kNone) return to_.point.triangle;
    for (const std::uint32_t h : faces_.leaving(hop.from))
      if (faces_.origin(FlatFaces::next(h)) == hop.to ||
          faces_.origin(FlatFaces::previous(h)) == hop.to)
        return h / 3;
    throw std::logic_error("an edge has no triangle");
  }

  // Round the hop's first vertex to its first triangle, by the smaller of the two angles.
  void turn(const Hop& hop) {
    const std::uint32_t vertex = hop.from;
    const double whole = faces_.total_angle(vertex);
    double left = hop.leaving_rad - arrived_rad_;
    if (faces_.closed(vertex)) left -= whole * std::floor(left / whole);
    const bool counter_clockwise = faces_.closed(vertex) ? left < whole - left : left > 0.0;
    for (const bool way : {counter_clockwise, !counter_clockwise}) {
      const Rotation rotation{vertex, strip_.last_triangle(faces_), way};
      const auto round = hop.gates.empty() && hop.to != kNone
                             ? go_round_to_vertex(faces_, rotation, hop.to)
                             : go_round_to_triangle(faces_, rotation, first_triangle(hop));
      if (!round) continue;
      strip_.gates.insert(strip_.gates.end(), round->begin(), round->end());
      return;
    }
    finish(vertex);
    start(vertex);
    strip_.first_triangle = first_triangle(hop);
    begun_ = true;
  }

  const FlatFaces& faces_;
  const Lookout& from_;
  const Lookout& to_;
  FaceStrip strip_;
  bool begun_ = false;
  double arrived_rad_ = 0.0;
  std::vector<FaceStrip> strips_;
};

class Polyline {
 public:
  explicit Polyline(const PreparedSurface& surface) : surface_(surface) {}

  void add(const StripEnd& end) {
    if (const auto* point = std::get_if<SurfacePoint>(&end))
      add(position_mm(surface_.mesh, *point));
    else
      add(surface_.mesh.vertices_mm[std::get<std::uint32_t>(end)]);
  }

  void add(const FaceStrip& strip, const StripLine& line) {
    add(strip.from);
    for (std::size_t i = 0; i < strip.gates.size(); ++i) {
      const std::uint32_t h = strip.gates[i];
      const double share = line.crossings[i];
      add((1.0 - share) * vertex(h) + share * vertex(FlatFaces::next(h)));
    }
    add(strip.to);
  }

  SurfacePath take() { return std::move(path_); }

 private:
  const Eigen::Vector3d& vertex(std::uint32_t h) const {
    return surface_.mesh.vertices_mm[surface_.faces.origin(h)];
  }

  void add(const Eigen::Vector3d& point) {
    if (!path_.points_mm.empty()) {
      const double step = (point - path_.points_mm.back()).norm();
      if (step == 0.0) return;
      path_.length_mm += step;
    }
    path_.points_mm.push_back(point);
  }

  const PreparedSurface& surface_;
  SurfacePath path_;
};

SurfacePath along(const PreparedSurface& surface, const Lookout& from, const Lookout& to,
                  const std::vector<Hop>& hops) {
  Polyline line(surface);
  for (FaceStrip& strip : StripBuilder(surface, from, to).build(hops)) {
    const StripLine taut = tighten(surface.faces, strip);
    line.add(strip, taut);
  }
  return line.take();
}

}  // namespace

std::optional<SurfacePath> shortest_path(const PreparedSurface& surface, const Lookout& from,
                                         const Lookout& to) {
  if (from.vertex && from.vertex == to.vertex)
    return SurfacePath{0.0, {surface.mesh.vertices_mm[*from.vertex]}};
  std::vector<Goal> goals;
  for (const SeenVertex& s : to.seen) goals.push_back({s.vertex, s.distance_mm});
  const Walk walk = walk_from(surface.graph, seeds_of(surface, from), goals);

  const SeenVertex* last = nullptr;
  double nearest_mm = std::numeric_limits<double>::infinity();
  for (const SeenVertex& s : to.seen) {
    const WalkLabel& label = walk.labels[s.vertex];
    const double along_mm = static_cast<double>(label.along_graph_mm) + s.distance_mm;
    if (along_mm < nearest_mm) {
      nearest_mm = along_mm;
      last = &s;
    }
  }
  if (last == nullptr) return std::nullopt;

  std::vector<Hop> hops = hops_to(surface, walk, from, last->vertex);
  if (!to.vertex)
    hops.push_back(reversed(surface.faces,
                            hop_from_point(surface, to.point, last->vertex, last->distance_mm)));
  return along(surface, from, to, hops);
}

}  // namespace endplate::geometry
