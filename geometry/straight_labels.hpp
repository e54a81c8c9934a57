#pragma once
// The lengths of a walk's ways once the slight bends of the graph are pulled straight.
#include <vector>

#include "geometry/sight_walk.hpp"

namespace endplate::geometry {

// The last corner that the way to a vertex goes round, laid into the vertex's plane.
struct StraightLabel {
  float before_mm;     // distance of that corner from the source, infinite where nothing leads
  float straight_mm;   // from that corner to the vertex
  float arriving_rad;  // direction back to it about the vertex
  // Of the way's last leg before that corner, so that the corner can still be pulled over: how long
  // it is (0 if nothing is known of it), and how far the way turns less than it might on either
  // side before the corner lets go.
  float leg_mm;
  float spare_left_rad;
  float spare_right_rad;
};

// By vertex.
std::vector<StraightLabel> straight_labels(const SightGraph& graph, const std::vector<Seed>& seeds,
                                           const Walk& walk);

// Going straight on for `length_mm` from `vertex`, which was reached as `before` says, in the
// direction `leaving_rad`: the law of cosines over the bend, unless the way bends round a corner.
// `arriving_rad`: direction of that line about its end, kept or turned in the answer.
StraightLabel pulled_straight(const StraightLabel& before, const SightVertex& vertex,
                              float leaving_rad, float length_mm, float arriving_rad);

}  // namespace endplate::geometry
