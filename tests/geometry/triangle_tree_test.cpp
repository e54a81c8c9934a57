#include "geometry/triangle_tree.hpp"

#include <catch2/catch.hpp>

#include "../support/meshes.hpp"

namespace endplate::geometry {

using Eigen::Vector3d;

TEST_CASE("A ray meets a cube where it enters and where it leaves", "[geometry][tree]") {
  const TriangleTree tree(test::cube(10.0));
  const auto hits = tree.along({4.0, 3.0, -5.0}, {0.0, 0.0, 2.5});
  REQUIRE(hits.size() == 2);
  CHECK(hits[0].distance_mm == Approx(5.0));
  CHECK(hits[0].point_mm.isApprox(Vector3d(4.0, 3.0, 0.0)));
  CHECK(hits[1].distance_mm == Approx(15.0));
  CHECK(tree.along({4.0, 3.0, -5.0}, {0.0, 0.0, -1.0}).empty());
  CHECK(tree.along({4.0, 3.0, 5.0}, {0.0, 0.0, 1.0}).size() == 1);
}

TEST_CASE("Triangles keep their numbers although one has no area", "[geometry][tree]") {
  TriangleMesh mesh = test::cube(10.0);
  mesh.triangles.insert(mesh.triangles.begin(), {0, 0, 1});
  const auto hits = TriangleTree(mesh).along({4.0, 3.0, -5.0}, {0.0, 0.0, 1.0});
  REQUIRE(hits.size() == 2);
  for (const auto& hit : hits) {
    for (const std::uint32_t v : mesh.triangles[hit.triangle]) {
      CHECK(mesh.vertices_mm[v].z() == Approx(hit.point_mm.z()));
    }
  }
}

TEST_CASE("The nearest point of a cube lies on its nearest face, edge or corner",
          "[geometry][tree]") {
  const TriangleTree tree(test::cube(10.0));
  CHECK(tree.nearest({5.0, 6.0, 8.0}).distance_mm == Approx(2.0));
  CHECK(tree.nearest({13.0, 14.0, 5.0}).distance_mm == Approx(5.0));
  CHECK(tree.nearest({-1.0, -2.0, -2.0}).point_mm.norm() == Approx(0.0).margin(1e-12));
}

}  // namespace endplate::geometry
