#pragma once
// A closed skin-like surface: an arm of adult length with a bent elbow, a palm and five digits.
#include "geometry/triangle_mesh.hpp"

namespace endplate::benchmarks {

// A Delaunay surface of about even triangles; `edge_mm` bounds their circumradius away from the
// digits, which get finer ones. Takes seconds.
geometry::TriangleMesh arm_mesh(double edge_mm);

}  // namespace endplate::benchmarks
