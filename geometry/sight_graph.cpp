#include "geometry/sight_graph.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "geometry/straight_sight.hpp"

namespace endplate::geometry {
namespace {

constexpr double kPi = std::numbers::pi;
// How far a vertex looks, in mean lengths of the edges about it. With the two other settings found
// by trial on an arm of 20,000 vertices: 3 doubles the error and halves the work of preparing.
constexpr double kRadiusInEdges = 4.0;
// An arc is spared when two others together are longer by less than this share.
constexpr double kSparedShare = 0.0005;
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

// Drops a vertex that is nearly behind another one: going by that one is hardly longer. All are
// seen from one vertex and none is passed over twice.
void spare(std::vector<SeenVertex>& seen, double whole_rad) {
  std::ranges::sort(seen, {}, &SeenVertex::distance_mm);
  std::vector<SeenVertex> kept;
  for (const SeenVertex& far : seen) {
    const bool replaced = std::ranges::any_of(kept, [&](const SeenVertex& near) {
      if (near.vertex == far.vertex) return true;
      const double between = std::abs(far.leaving_rad - near.leaving_rad);
      const double turn = std::min(between, std::abs(whole_rad - between));
      // How much longer the way by the near one is, for a slight turn.
      const double rest = far.distance_mm - near.distance_mm;
      return 0.5 * turn * turn * near.distance_mm <= kSparedShare * rest;
    });
    if (!replaced) kept.push_back(far);
  }
  seen.swap(kept);
}

// Arcs by tail. Both ends may have found one.
std::vector<std::vector<RawArc>> look_all_round(const FlatFaces& faces,
                                                const std::vector<float>& radius_mm) {
  std::vector<std::vector<RawArc>> from(faces.vertex_count());
  StraightSight sight(faces);
  std::vector<SeenVertex> seen;
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    sight.look_from_vertex(v, static_cast<double>(radius_mm[v]));
    seen = sight.seen();
    spare(seen, faces.total_angle(v));
    for (const SeenVertex& s : seen) {
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

// Keeps the shortest arc to each vertex and orders them by angle.
void tidy(std::vector<RawArc>& arcs) {
  std::ranges::sort(arcs, [](const RawArc& a, const RawArc& b) {
    return a.head != b.head ? a.head < b.head : a.length_mm < b.length_mm;
  });
  const auto repeated = std::ranges::unique(arcs, {}, &RawArc::head);
  arcs.erase(repeated.begin(), repeated.end());
  if (arcs.size() > kMostArcs) {
    std::ranges::nth_element(arcs, arcs.begin() + kMostArcs, {}, &RawArc::length_mm);
    arcs.resize(kMostArcs);
  }
  std::ranges::sort(arcs, {}, &RawArc::leaving_rad);
}

}  // namespace

ArcRange onward_from(const SightGraph& graph, std::uint32_t vertex, float arriving_rad) {
  const SightVertex& at = graph.vertices[vertex];
  const auto all = static_cast<std::ptrdiff_t>(at.arc_count);
  const auto whole = static_cast<double>(at.whole_rad);
  // A shortest way leaves at least pi on both sides, less the bend that the graph needs.
  const double half = std::max(0.5 * whole - kPi, 0.0) + kMostBend_rad;
  if (2.0 * half >= whole) return {0, static_cast<std::uint16_t>(all)};
  const auto begin = graph.details.begin() + at.first_arc;
  const auto index_of = [&](double rad) {
    const double wrapped = rad - whole * std::floor(rad / whole);
    return std::ranges::lower_bound(begin, begin + all, static_cast<float>(wrapped), {},
                                    &ArcDetail::leaving_rad) -
           begin;
  };
  const double ahead = static_cast<double>(arriving_rad) + 0.5 * whole;
  // One more on each side: straight ahead may fall into a gap.
  const auto first = index_of(ahead - half) + all - 1;
  auto last = index_of(ahead + half) + all + 1;
  if (last <= first) last += all;
  return {static_cast<std::uint16_t>(first % all),
          static_cast<std::uint16_t>(std::min(last - first, all))};
}

SightGraph make_sight_graph(const FlatFaces& faces) {
  const std::vector<float> radius_mm = radii(faces, kRadiusInEdges);
  std::vector<std::vector<RawArc>> from = look_all_round(faces, radius_mm);

  SightGraph graph;
  for (std::uint32_t v = 0; v < faces.vertex_count(); ++v) {
    tidy(from[v]);
    graph.vertices.push_back(
        {static_cast<std::uint32_t>(graph.arcs.size()), static_cast<std::uint32_t>(from[v].size()),
         faces.closed(v) ? static_cast<float>(faces.total_angle(v)) : 0.0F, radius_mm[v]});
    for (const RawArc& arc : from[v]) {
      graph.arcs.push_back({arc.head, arc.length_mm});
      graph.details.push_back({v, arc.length_mm, arc.leaving_rad, arc.arriving_rad, {}});
      graph.longest_arc_mm = std::max(graph.longest_arc_mm, arc.length_mm);
    }
  }
  for (std::size_t a = 0; a < graph.arcs.size(); ++a) {
    ArcDetail& arc = graph.details[a];
    arc.onward = onward_from(graph, graph.arcs[a].head, arc.arriving_rad);
  }
  return graph;
}

}  // namespace endplate::geometry
