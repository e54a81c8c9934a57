#pragma once
// Small surfaces for tests of distances: quick to make, the same on every machine.
#include <cstdint>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::test {

// `cells` x `cells` squares of 1 mm in the plane z = 0, cut in two; the inner vertices moved about
// at random within the plane so that no row of them is straight.
geometry::TriangleMesh flat_plate(int cells, std::uint32_t seed = 1);

// A sphere about zero: an icosahedron whose triangles are cut into four `times` over.
geometry::TriangleMesh sphere(double radius_mm, int times);

// A closed, bent, tapering tube with rounded ends, 25 to 12 mm thick and 160 mm long, its vertices
// moved about on the surface: an arm without a hand.
geometry::TriangleMesh bent_tube(int around, int along, std::uint32_t seed = 1);

// The same surface with its vertices and triangles in another order; `number[v]` is the new number.
struct Shuffled {
  geometry::TriangleMesh mesh;
  std::vector<std::uint32_t> number;
};
Shuffled shuffled(const geometry::TriangleMesh& mesh, std::uint32_t seed);

// Both surfaces in one mesh, the second's vertices after the first's.
geometry::TriangleMesh joined(const geometry::TriangleMesh& a, const geometry::TriangleMesh& b);

}  // namespace endplate::test
