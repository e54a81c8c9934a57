#pragma once
// Shortest ways over a sight graph from a few seeds to every vertex, and their lengths once the
// slight bends of the graph are pulled straight.
#include <cstdint>
#include <vector>

#include "geometry/sight_graph.hpp"

namespace endplate::geometry {

struct Seed {
  std::uint32_t vertex;
  double distance_mm;
  float arriving_rad;  // direction back to the source about the vertex
  ArcRange onward;
};

constexpr std::uint32_t kSeed = 0x80000000U;

// How a vertex was reached.
struct WalkLabel {
  float along_graph_mm;   // infinite where nothing leads
  std::uint32_t came_by;  // arc, or kSeed + number of the seed
};

// The last corner that the way to a vertex goes round, laid into the vertex's plane.
struct StraightLabel {
  float before_mm;     // distance of that corner from the source
  float straight_mm;   // from that corner to the vertex
  float arriving_rad;  // direction back to it about the vertex
  float settled_mm;    // along_graph_mm that this belongs to
  // Of the way's last leg before that corner, so that the corner can still be pulled over: how long
  // it is (0 if nothing is known of it), and how far the way turns less than it might on either
  // side before the corner lets go.
  float leg_mm;
  float spare_left_rad;
  float spare_right_rad;
};

struct Walk {
  std::vector<WalkLabel> labels;
  std::vector<StraightLabel> straight;
};

// A vertex from which the wanted point is seen.
struct Goal {
  std::uint32_t vertex;
  double distance_mm;
};

// With goals, stops as soon as the nearest way to them is known; vertices farther away may then
// lack a label.
Walk walk_from(const SightGraph& graph, const std::vector<Seed>& seeds,
               const std::vector<Goal>& goals = {});

// Going straight on for `length_mm` from `vertex`, which was reached as `before` says, in the
// direction `leaving_rad`: the law of cosines over the bend, unless the way bends round a corner.
// `arriving_rad`: direction of that line about its end, kept or turned in the answer.
StraightLabel pulled_straight(const StraightLabel& before, const SightVertex& vertex,
                              float leaving_rad, float length_mm, float arriving_rad);

}  // namespace endplate::geometry
