#include "geometry/mesh_intersections.hpp"

#include <catch2/catch.hpp>

#include "tests/support/meshes.hpp"

using namespace endplate;

TEST_CASE("pairs that cross are named by their triangles", "[geometry]") {
  geometry::TriangleMesh mesh = test::cube();
  CHECK(geometry::crossing_pairs(mesh, 100).empty());
  test::add(mesh, test::cube(), {5.0, 5.0, 5.0});
  const auto pairs = geometry::crossing_pairs(mesh, 1000);
  REQUIRE_FALSE(pairs.empty());
  CHECK(pairs.size() == geometry::count_self_intersections(mesh).pairs);
  for (const auto& [a, b] : pairs) {
    CHECK(a < 12);   // of the first cube
    CHECK(b >= 12);  // of the second
  }
  CHECK(geometry::crossing_pairs(mesh, 3).size() == 3);
}
