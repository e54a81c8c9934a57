#pragma once
// Repairs of a scanned surface that are safe, each told in words; the rest is refused.
#include <cstddef>
#include <string>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

// What to do with the longest hole when it is over the limit: where the arm was cut from the body.
enum class OpenEnd {
  none,        // there is none: such a hole is refused
  leave_open,  // it stays
  cap          // it is closed by triangles between the vertices of its rim
};

struct RepairOptions {
  // Parts with a smaller share of the whole area are dropped (`assumed`: specks and stray surfaces
  // of a scan; a limb is one part).
  double least_component_share = 0.01;
  // Holes up to this circumference are closed; 0 closes none.
  double close_holes_up_to_mm = 0.0;
  OpenEnd open_end = OpenEnd::none;
  // More pairs of crossing triangles than this are refused: no repair of them is safe.
  std::size_t most_self_intersections = 0;
};

struct RepairedMesh {
  // Manifold, consistently oriented, every part facing outward, without triangles whose corners lie
  // exactly on one line; closed but for an end left open.
  TriangleMesh mesh;
  std::vector<std::string> done;  // in order; empty when nothing was wrong
};

// Refuses what is no mesh, what falls into small parts (less than half of the area in parts that
// are kept), holes over the limit, a sheet too flat to tell its outside, triangles that cross, and
// whatever the repairs leave behind. A point at which two fans touch becomes two vertices at one
// place: merging vertices again would undo that. Two holes that touch there become one.
GeometryResult<RepairedMesh> repair_mesh(TriangleMesh mesh, const RepairOptions& options);

}  // namespace endplate::geometry
