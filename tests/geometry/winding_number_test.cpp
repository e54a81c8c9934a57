#include "geometry/winding_number.hpp"

#include <catch2/catch.hpp>

#include "../support/meshes.hpp"

namespace endplate::geometry {

TEST_CASE("A cube winds once round what it holds and not at all round what it does not",
          "[geometry][winding]") {
  const TriangleMesh cube = test::cube(10.0);
  const auto winding = [&](const Eigen::Vector3d& p) {
    return winding_number(cube.vertices_mm, cube.triangles, p);
  };
  CHECK(winding({5.0, 5.0, 5.0}) == Approx(1.0));
  CHECK(winding({0.1, 9.9, 0.2}) == Approx(1.0));
  CHECK(winding({-0.1, 5.0, 5.0}) == Approx(0.0).margin(1e-12));
  CHECK(winding({100.0, 5.0, 5.0}) == Approx(0.0).margin(1e-12));
}

}  // namespace endplate::geometry
