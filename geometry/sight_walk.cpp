#include "geometry/sight_walk.hpp"

#include <algorithm>
#include <limits>
#include <utility>

namespace endplate::geometry {
namespace {

constexpr float kInfinite = std::numeric_limits<float>::infinity();
// Buckets of the queue to the longest arc: fine enough that few vertices are settled twice.
constexpr float kBucketsPerArc = 32.0F;
// How many vertices before its turn the memory of one is asked for.
constexpr std::size_t kAhead = 5;

// A queue of buckets by length (Dial. Commun ACM 1969;12:632, recalled): the order within a bucket
// does not matter, since a vertex that becomes nearer is settled again.
class Walker {
 public:
  Walker(const SightGraph& graph, const std::vector<Seed>& seeds) : graph_(graph), seeds_(seeds) {
    walk_.labels.assign(graph.vertices.size(), {kInfinite, kSeed, 0, {}});
    walk_.steps.reserve(graph.vertices.size() + graph.vertices.size() / 8);
    settled_.assign(graph.vertices.size(), 0);
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
      offer(seeds_[i].vertex, {static_cast<float>(seeds_[i].distance_mm), kSeed + i,
                               seeds_[i].vertex, seeds_[i].onward});
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
        if (settled_[reached] == 0) continue;
        const SightVertex& from = graph_.vertices[reached];
        follow(reached, from.first_arc, from.first_arc + from.arc_count);
      }
    }
    spread({});
  }

  void offer(std::uint32_t vertex, const WalkLabel& offered) {
    WalkLabel& label = walk_.labels[vertex];
    if (offered.along_graph_mm >= label.along_graph_mm) return;
    label = offered;
    settled_[vertex] = 0;
    buckets_[static_cast<std::size_t>(offered.along_graph_mm * per_mm_) & mask_].push_back(vertex);
    ++waiting_;
  }

  // Asks for what settling the vertex will read, since it lies anywhere in memory.
  void expect(std::uint32_t vertex) const {
    const SightArc* arc =
        graph_.arcs.data() + graph_.vertices[vertex].first_arc + walk_.labels[vertex].onward.first;
    __builtin_prefetch(arc);
    __builtin_prefetch(arc + 5);
  }

  void settle(std::uint32_t vertex) {
    if (settled_[vertex] != 0) return;
    settled_[vertex] = 1;
    const WalkLabel label = walk_.labels[vertex];
    const float length_mm = label.came_by < kSeed ? graph_.arcs[label.came_by].length_mm : 0.0F;
    walk_.steps.push_back(
        {vertex, label.came_by, label.came_from, length_mm, label.along_graph_mm});
    const SightVertex& at = graph_.vertices[vertex];
    ArcRange range = label.onward;
    if (every_arc_) range = {0, static_cast<std::uint16_t>(at.arc_count)};
    const std::uint32_t last = range.first + range.count;
    follow(vertex, at.first_arc + range.first, at.first_arc + std::min(last, at.arc_count));
    if (last > at.arc_count) follow(vertex, at.first_arc, at.first_arc + last - at.arc_count);
  }

  void follow(std::uint32_t from, std::uint32_t arc, std::uint32_t end) {
    const float from_mm = walk_.labels[from].along_graph_mm;
    for (; arc < end; ++arc) {
      const SightArc& along = graph_.arcs[arc];
      offer(along.head, {from_mm + along.length_mm, arc, from, along.onward});
    }
  }

  const SightGraph& graph_;
  const std::vector<Seed>& seeds_;
  Walk walk_;
  std::vector<char> settled_;  // by vertex, and not come nearer since
  std::vector<std::vector<std::uint32_t>> buckets_;
  float per_mm_ = 1.0F;
  std::size_t mask_ = 0;
  std::size_t waiting_ = 0;
  bool every_arc_ = false;
};

}  // namespace

Walk walk_from(const SightGraph& graph, const std::vector<Seed>& seeds,
               const std::vector<Goal>& goals) {
  return Walker(graph, seeds).run(goals);
}

}  // namespace endplate::geometry
