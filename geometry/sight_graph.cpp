#include "geometry/sight_graph.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

#include "geometry/straight_sight.hpp"

namespace endplate::geometry {
namespace {

constexpr double kPi = std::numbers::pi;
// An arc is spared when two others together are longer by less than this share (this and the next
// found by trial, docs/surface-distance.md)...
constexpr float kSparedShare = 0.004F;
// ...and bend so slightly where they meet that the second one is surely followed.
constexpr float kSparedBend_rad = 0.13F;
constexpr std::uint32_t kMostArcs = 0xffff;  // what an ArcRange can hold

struct RawArc {
  std::uint32_t head;
  float length_mm;
  float leaving_rad;
  float arriving_rad;
};

std::vector<float> radii(const FlatFaces& faces, double in_edges) {
  std::vector<float> radius_mm(faces.vertex_count(), 0.0F);
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    double sum = 0.0;
    for (const std::uint32_t h : faces.leaving(v))
      sum += faces.length_mm(h) + faces.length_mm(FlatFaces::next(h)) +
             faces.length_mm(FlatFaces::previous(h));
    const auto count = static_cast<double>(3 * faces.leaving(v).size());
    if (count > 0.0) radius_mm[v] = static_cast<float>(in_edges * sum / count);
  }
  return radius_mm;
}

// Every arc by its tail. Both ends may have found one.
std::vector<std::vector<RawArc>> look_all_round(const FlatFaces& faces,
                                                const std::vector<float>& radius_mm) {
  std::vector<std::vector<RawArc>> from(faces.vertex_count());
  StraightSight sight(faces);
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    sight.look_from_vertex(v, static_cast<double>(radius_mm[v]));
    for (const SeenVertex& s : sight.seen()) {
      if (s.vertex == v) continue;
      const auto length = static_cast<float>(s.distance_mm);
      const auto leaving = static_cast<float>(s.leaving_rad);
      const auto arriving = static_cast<float>(s.arriving_rad);
      from[v].push_back({s.vertex, length, leaving, arriving});
      from[s.vertex].push_back({v, length, arriving, leaving});
    }
  }
  return from;
}

// Keeps the shortest arc to each vertex and orders them by it.
void tidy(std::vector<RawArc>& arcs) {
  std::ranges::sort(arcs, [](const RawArc& a, const RawArc& b) {
    return a.head != b.head ? a.head < b.head : a.length_mm < b.length_mm;
  });
  const auto repeated = std::ranges::unique(arcs, {}, &RawArc::head);
  arcs.erase(repeated.begin(), repeated.end());
}

// Whether going by `near` does as well as the arc to `far`, both from one vertex with the whole
// angle `whole_rad` (0 at a border). `of_near`: the tidy arcs of the near one, which may look less
// far or past a tear.
bool replaces(const RawArc& near, const std::vector<RawArc>& of_near, const RawArc& far,
              float whole_rad) {
  const float between = std::abs(far.leaving_rad - near.leaving_rad);
  const float turn = whole_rad > 0.0F ? std::min(between, whole_rad - between) : between;
  const float rest_mm = far.length_mm - near.length_mm;
  // For a slight turn: the bend where the two meet, then how much longer they are.
  if (turn * far.length_mm > kSparedBend_rad * rest_mm) return false;
  if (0.5F * turn * turn * near.length_mm > kSparedShare * rest_mm) return false;
  const auto on = std::ranges::lower_bound(of_near, far.head, {}, &RawArc::head);
  return on != of_near.end() && on->head == far.head &&
         near.length_mm + on->length_mm <= (1.0F + kSparedShare) * far.length_mm;
}

// So that the directions about every vertex fit into 16 bits.
float direction_step_rad(const FlatFaces& faces) {
  double widest = 0.0;
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    widest = std::max(widest, faces.total_angle(v));
  }
  return static_cast<float>(std::max(widest, kPi) / std::numeric_limits<std::uint16_t>::max());
}

// The arcs of one vertex that are worth keeping, by the angle at which they leave.
std::vector<RawArc> spare(std::vector<RawArc> arcs, float whole_rad,
                          const std::vector<std::vector<RawArc>>& from) {
  std::ranges::sort(arcs, {}, &RawArc::length_mm);
  std::vector<RawArc> kept;
  for (const RawArc& far : arcs) {
    const bool replaced = std::ranges::any_of(
        kept, [&](const RawArc& near) { return replaces(near, from[near.head], far, whole_rad); });
    if (!replaced) kept.push_back(far);
  }
  if (kept.size() > kMostArcs) kept.resize(kMostArcs);
  std::ranges::sort(kept, {}, &RawArc::leaving_rad);
  return kept;
}

}  // namespace

ArcRange onward_from(const SightGraph& graph, std::uint32_t vertex, float arriving_rad) {
  const SightVertex& at = graph.vertices[vertex];
  const auto all = static_cast<std::ptrdiff_t>(at.arc_count);
  const auto whole = static_cast<double>(at.whole_rad);
  // A shortest way leaves at least pi on both sides, less the bend that the graph needs.
  const double half = std::max(0.5 * whole - kPi, 0.0) + kMostBend_rad;
  if (2.0 * half >= whole) return {0, static_cast<std::uint16_t>(all)};
  const auto begin = graph.directions.begin() + at.first_arc;
  const auto index_of = [&](double rad) {
    const double wrapped = rad - whole * std::floor(rad / whole);
    const auto steps = static_cast<float>(wrapped) / graph.direction_step_rad;
    return std::ranges::lower_bound(begin, begin + all, steps, std::less<float>(),
                                    &ArcDirections::leaving) -
           begin;
  };
  const double ahead = static_cast<double>(arriving_rad) + 0.5 * whole;
  auto first = index_of(ahead - half);
  auto last = index_of(ahead + half);
  if (first == last) {  // straight ahead falls into a gap: one on each side
    first += all - 1;
    last += all + 1;
  }
  if (last <= first) last += all;
  return {static_cast<std::uint16_t>(first % all),
          static_cast<std::uint16_t>(std::min(last - first, all))};
}

SightGraph make_sight_graph(const FlatFaces& faces, double in_edges) {
  const std::vector<float> radius_mm = radii(faces, in_edges);
  std::vector<std::vector<RawArc>> from = look_all_round(faces, radius_mm);
  std::ranges::for_each(from, tidy);

  SightGraph graph;
  graph.direction_step_rad = direction_step_rad(faces);
  const auto in_steps = [&](float rad) {
    return static_cast<std::uint16_t>(std::lround(rad / graph.direction_step_rad));
  };
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    const float whole = faces.closed(v) ? static_cast<float>(faces.total_angle(v)) : 0.0F;
    const std::vector<RawArc> arcs = spare(from[v], whole, from);
    graph.vertices.push_back({static_cast<std::uint32_t>(graph.arcs.size()),
                              static_cast<std::uint32_t>(arcs.size()), whole, radius_mm[v]});
    for (const RawArc& arc : arcs) {
      graph.arcs.push_back({arc.head, arc.length_mm, {}});
      graph.directions.push_back({in_steps(arc.leaving_rad), in_steps(arc.arriving_rad)});
      graph.longest_arc_mm = std::max(graph.longest_arc_mm, arc.length_mm);
    }
  }
  for (std::size_t a = 0; a < graph.arcs.size(); ++a) {
    SightArc& arc = graph.arcs[a];
    arc.onward = onward_from(graph, arc.head, graph.radians(graph.directions[a].arriving));
  }
  return graph;
}

}  // namespace endplate::geometry
