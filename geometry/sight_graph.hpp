#pragma once
// A sparse graph over the vertices of a surface: arcs are straight lines to vertices within sight,
// so that a shortest way over the graph is a way over the surface with few and slight bends.
// Sources: Ying, Wang, He. Saddle vertex graph. ACM Trans Graph 2013; Wang, Fang, Wu, Xin, He.
// Discrete geodesic graph. Comput Aided Geom Des 2017;52-53:262 (its abstract read, the method
// recalled: dropping arcs that two others replace, and going on only about straight ahead).
#include <cstdint>
#include <vector>

#include "geometry/flat_faces.hpp"
#include "geometry/large_pages.hpp"

namespace endplate::geometry {

// The arcs of a vertex that are worth following: `count` of them from its `first`, over the end of
// its list back to the beginning.
struct ArcRange {
  std::uint16_t first;
  std::uint16_t count;
};

// What is read of an arc to follow it.
struct SightArc {
  std::uint32_t head;
  float length_mm;
  ArcRange onward;  // arcs of the head
};

// In steps of SightGraph::direction_step_rad, some 0.1 mrad. Few bytes matter here: a query reads
// this of one arc a vertex, which lie anywhere.
struct ArcDirections {
  std::uint16_t leaving;   // about the tail (FlatFaces::direction)
  std::uint16_t arriving;  // direction back to the tail, about the head
};

struct SightVertex {
  std::uint32_t first_arc;
  std::uint32_t arc_count;  // at most 65,535
  float whole_rad;  // all angles about the vertex; 0 where its triangles do not close a ring
  float radius_mm;  // how far it looks
};

struct SightGraph {
  std::vector<SightVertex> vertices;
  // Those of one vertex follow one another by the angle at which they leave.
  LargeTable<SightArc> arcs;
  LargeTable<ArcDirections> directions;  // by arc
  float direction_step_rad = 1.0F;
  float radians(std::uint16_t steps) const {
    return direction_step_rad * static_cast<float>(steps);
  }

  float longest_arc_mm = 0.0F;
};

// How far from straight ahead arcs are followed. With 0.2 some vertices of a fingertip are reached
// only by ways a fifth too long.
constexpr double kMostBend_rad = 0.3;

// Each vertex looks `in_edges` mean lengths of the edges about it far.
SightGraph make_sight_graph(const FlatFaces& faces, double in_edges);

// The arcs of `vertex` to follow when coming from the direction `arriving_rad`.
ArcRange onward_from(const SightGraph& graph, std::uint32_t vertex, float arriving_rad);

}  // namespace endplate::geometry
