#include "geometry/sight_walk.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace endplate::geometry {
namespace {

constexpr float kInfinite = std::numeric_limits<float>::infinity();
constexpr float kPi = std::numbers::pi_v<float>;
// Buckets of the queue to the longest arc: fine enough that few vertices are settled twice.
constexpr float kBucketsPerArc = 32.0F;
// How many vertices before its turn the memory of one is asked for.
constexpr std::size_t kAhead = 5;
// How much longer the graph's ways may be than straight ones: a share of all ways, and more near
// the source, where a way has few arcs to choose from. Found by trial. On irregular triangles the
// graph is 0.09 % too long in the mean and a share of 0.0015 would do; on the rows and rings of a
// limb's skin the same gap between arcs comes again and again, and ways stay too long if they are
// not pulled straight further than that. From 0.01 on, ways that do go round something are pulled
// straight by more than half a per cent.
constexpr float kAstrayShare = 0.006F;
constexpr float kAstrayNear = 0.1F;

// Taylor's series for the slight bends that nearly all are, to a float's last digits: the library's
// functions took a quarter of the time of a query.
constexpr float kSlight = 0.25F;

float sine(float x) {
  if (x > kSlight) return std::sin(x);
  const float square = x * x;
  return x * (1.0F + square * (-1.0F / 6.0F + square * (1.0F / 120.0F)));
}

float cosine(float x) {
  if (x > kSlight) return std::cos(x);
  const float square = x * x;
  return 1.0F + square * (-0.5F + square * (1.0F / 24.0F - square * (1.0F / 720.0F)));
}

// For y that is not negative.
float arc_tangent(float y, float x) {
  if (!(y <= kSlight * x) || x <= 0.0F) return std::atan2(y, x);
  const float ratio = y / x;
  const float square = ratio * ratio;
  return ratio *
         (1.0F + square * (-1.0F / 3.0F +
                           square * (0.2F + square * (-1.0F / 7.0F + square * (1.0F / 9.0F)))));
}

StraightLabel straight_from(float before_mm, float straight_mm, float arriving_rad) {
  return {before_mm, straight_mm, arriving_rad, 0.0F, 0.0F, 0.0F, 0.0F};
}

// Makes one straight line of `leg_mm` and of what `label` holds, between which the way bends by
// `bend_rad`, more than 0 to the left. How much the line turns about its beginning, likewise.
float pull(StraightLabel& label, float leg_mm, float bend_rad) {
  const float bend = std::abs(bend_rad);
  // The beginning lies `along` and `across` from the end, seen along the line.
  const float along = label.straight_mm + leg_mm * cosine(bend);
  const float across = leg_mm * sine(bend);
  const float turn = arc_tangent(across, along);
  label.straight_mm = std::sqrt(along * along + across * across);
  label.arriving_rad += bend_rad > 0.0F ? turn : -turn;
  return bend_rad > 0.0F ? bend - turn : turn - bend;
}

// A queue of buckets by length (Dial. Commun ACM 1969;12:632, recalled): the order within a bucket
// does not matter, since a vertex that becomes nearer is settled again.
class Walker {
 public:
  Walker(const SightGraph& graph, const std::vector<Seed>& seeds) : graph_(graph), seeds_(seeds) {
    walk_.labels.assign(graph.vertices.size(), {kInfinite, kSeed});
    walk_.straight.assign(graph.vertices.size(), {0.0F, 0.0F, 0.0F, -1.0F, 0.0F, 0.0F, 0.0F});
    double longest = static_cast<double>(graph.longest_arc_mm);
    per_mm_ = kBucketsPerArc / std::max(graph.longest_arc_mm, 1e-6F);
    for (const Seed& seed : seeds) longest = std::max(longest, seed.distance_mm);
    std::size_t ring = 1;
    while (ring < static_cast<std::size_t>(longest * static_cast<double>(per_mm_)) + 3) ring *= 2;
    buckets_.resize(ring);
    mask_ = ring - 1;
  }

  Walk run(const std::vector<Goal>& goals) {
    for (std::uint32_t i = 0; i < seeds_.size(); ++i)
      offer(seeds_[i].vertex, static_cast<float>(seeds_[i].distance_mm), kSeed + i);
    spread(goals);
    if (goals.empty() || nearest_mm(goals) == kInfinite) reach_the_rest();
    return std::move(walk_);
  }

 private:
  void spread(const std::vector<Goal>& goals) {
    for (std::size_t now = 0; waiting_ > 0; ++now) {
      if (!goals.empty() && static_cast<float>(now) > nearest_mm(goals) * per_mm_) break;
      std::vector<std::uint32_t>& bucket = buckets_[now & mask_];
      // Short arcs put more into the bucket that is being emptied.
      for (std::size_t i = 0; i < bucket.size(); ++i) {
        if (i + kAhead < bucket.size()) expect(bucket[i + kAhead]);
        settle(bucket[i]);
      }
      waiting_ -= bucket.size();
      bucket.clear();
    }
  }

  float nearest_mm(const std::vector<Goal>& goals) const {
    float nearest = kInfinite;
    for (const Goal& goal : goals)
      nearest = std::min(
          nearest, walk_.labels[goal.vertex].along_graph_mm + static_cast<float>(goal.distance_mm));
    return nearest;
  }

  // Going on about straight ahead may leave a vertex out, at a sharp tip or in a fold: there every
  // arc is followed.
  void reach_the_rest() {
    every_arc_ = true;
    for (std::uint32_t v = 0; v < graph_.vertices.size(); ++v) {
      if (walk_.labels[v].along_graph_mm != kInfinite) continue;
      const SightVertex& at = graph_.vertices[v];
      for (std::uint32_t arc = at.first_arc; arc < at.first_arc + at.arc_count; ++arc) {
        const std::uint32_t reached = graph_.arcs[arc].head;
        if (walk_.straight[reached].settled_mm < 0.0F) continue;
        const SightVertex& from = graph_.vertices[reached];
        follow(from.first_arc, from.first_arc + from.arc_count,
               walk_.labels[reached].along_graph_mm);
      }
    }
    spread({});
  }

  void offer(std::uint32_t vertex, float along_mm, std::uint32_t by) {
    WalkLabel& label = walk_.labels[vertex];
    if (along_mm >= label.along_graph_mm) return;
    label = {along_mm, by};
    if (by < kSeed) __builtin_prefetch(&graph_.details[by]);
    buckets_[static_cast<std::size_t>(along_mm * per_mm_) & mask_].push_back(vertex);
    ++waiting_;
  }

  // Asks for what settling the vertex will read, since it lies anywhere in memory.
  void expect(std::uint32_t vertex) const {
    const std::uint32_t by = walk_.labels[vertex].came_by;
    const std::uint32_t first = by < kSeed ? graph_.details[by].onward.first : 0;
    const SightArc* arc = graph_.arcs.data() + graph_.vertices[vertex].first_arc + first;
    __builtin_prefetch(arc);
    __builtin_prefetch(arc + 8);
  }

  void settle(std::uint32_t vertex) {
    const WalkLabel label = walk_.labels[vertex];
    StraightLabel& straight = walk_.straight[vertex];
    if (straight.settled_mm == label.along_graph_mm) return;
    ArcRange range{};
    if (label.came_by >= kSeed) {
      const Seed& seed = seeds_[label.came_by - kSeed];
      range = seed.onward;
      straight = straight_from(0.0F, static_cast<float>(seed.distance_mm), seed.arriving_rad);
    } else {
      const ArcDetail& arc = graph_.details[label.came_by];
      range = arc.onward;
      straight = straight_along(arc, label.along_graph_mm);
    }
    straight.settled_mm = label.along_graph_mm;
    const SightVertex& at = graph_.vertices[vertex];
    if (every_arc_) range = {0, static_cast<std::uint16_t>(at.arc_count)};
    const std::uint32_t last = range.first + range.count;
    follow(at.first_arc + range.first, at.first_arc + std::min(last, at.arc_count),
           label.along_graph_mm);
    if (last > at.arc_count)
      follow(at.first_arc, at.first_arc + last - at.arc_count, label.along_graph_mm);
  }

  // A way that is pulled straight by more than the graph can be astray did go round something: it
  // bends at the arc's tail after all.
  StraightLabel straight_along(const ArcDetail& arc, float along_mm) const {
    const StraightLabel& before = walk_.straight[arc.tail];
    const SightVertex& tail = graph_.vertices[arc.tail];
    const StraightLabel pulled =
        pulled_straight(before, tail, arc.leaving_rad, arc.length_mm, arc.arriving_rad);
    const float astray_mm =
        kAstrayShare * along_mm + kAstrayNear * tail.radius_mm * tail.radius_mm / along_mm;
    if (along_mm - pulled.before_mm - pulled.straight_mm <= astray_mm) return pulled;
    return straight_from(before.before_mm + before.straight_mm, arc.length_mm, arc.arriving_rad);
  }

  void follow(std::uint32_t arc, std::uint32_t end, float from_mm) {
    for (; arc < end; ++arc)
      offer(graph_.arcs[arc].head, from_mm + graph_.arcs[arc].length_mm, arc);
  }

  const SightGraph& graph_;
  const std::vector<Seed>& seeds_;
  Walk walk_;
  std::vector<std::vector<std::uint32_t>> buckets_;
  float per_mm_ = 1.0F;
  std::size_t mask_ = 0;
  std::size_t waiting_ = 0;
  bool every_arc_ = false;
};

}  // namespace

StraightLabel pulled_straight(const StraightLabel& before, const SightVertex& vertex,
                              float leaving_rad, float length_mm, float arriving_rad) {
  const float whole = vertex.whole_rad;
  const float corner_mm = before.before_mm + before.straight_mm;
  if (whole == 0.0F) return straight_from(corner_mm, length_mm, arriving_rad);
  float left = leaving_rad - before.arriving_rad;
  while (left < 0.0F) left += whole;
  while (left >= whole) left -= whole;
  const float right = whole - left;
  if (left >= kPi && right >= kPi) {
    StraightLabel round = straight_from(corner_mm, length_mm, arriving_rad);
    round.leg_mm = before.straight_mm;
    round.spare_left_rad = left - kPi;
    round.spare_right_rad = right - kPi;
    return round;
  }
  StraightLabel pulled = before;
  pulled.straight_mm = length_mm;
  pulled.arriving_rad = arriving_rad;
  const float turn = pull(pulled, before.straight_mm, left < right ? kPi - left : right - kPi);
  if (before.leg_mm == 0.0F) return pulled;
  // The line has turned about the last corner too, and may come free of it.
  pulled.spare_left_rad -= turn;
  pulled.spare_right_rad += turn;
  if (pulled.spare_left_rad >= 0.0F && pulled.spare_right_rad >= 0.0F) return pulled;
  pulled.before_mm -= before.leg_mm;
  pull(pulled, before.leg_mm,
       pulled.spare_left_rad < 0.0F ? -pulled.spare_left_rad : pulled.spare_right_rad);
  pulled.leg_mm = 0.0F;
  return pulled;
}

Walk walk_from(const SightGraph& graph, const std::vector<Seed>& seeds,
               const std::vector<Goal>& goals) {
  return Walker(graph, seeds).run(goals);
}

}  // namespace endplate::geometry
