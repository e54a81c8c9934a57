#pragma once
// Shortest ways over a sight graph from a few seeds to every vertex.
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
  float along_graph_mm;     // infinite where nothing leads
  std::uint32_t came_by;    // arc, or kSeed + number of the seed
  std::uint32_t came_from;  // tail of that arc
  ArcRange onward;          // arcs to follow
};

struct WalkStep {
  std::uint32_t vertex;
  std::uint32_t came_by;
  std::uint32_t came_from;
  float length_mm;  // of that arc; 0 from a seed
  float along_graph_mm;
};

struct Walk {
  std::vector<WalkLabel> labels;
  // As they were settled, a tail before its heads. The few that came nearer afterwards come again.
  std::vector<WalkStep> steps;
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

}  // namespace endplate::geometry
