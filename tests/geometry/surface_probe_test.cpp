#include "geometry/surface_probe.hpp"

#include <catch2/catch.hpp>

#include "tests/support/meshes.hpp"

using Eigen::Vector3d;
using endplate::geometry::position_mm;
using endplate::geometry::SurfaceProbe;

TEST_CASE("the nearest place of a cube and the side of it are those of geometry", "[geometry]") {
  const auto cube = endplate::test::cube(10.0);
  const SurfaceProbe probe(cube);
  struct Expected {
    Vector3d place, nearest;
    bool inside;
  };
  for (const auto& [place, nearest, inside] :
       {Expected{{5, 4, 9}, {5, 4, 10}, true}, Expected{{5, 4, 13}, {5, 4, 10}, false},
        Expected{{12, 12, 3}, {10, 10, 3}, false}, Expected{{-1, -2, -3}, {0, 0, 0}, false}}) {
    const auto found = probe.at(place);
    CAPTURE(place.transpose());
    CHECK((position_mm(cube, found.nearest) - nearest).norm() < 1e-9);
    CHECK(found.distance_mm == Approx((place - nearest).norm()));
    CHECK(found.inside == inside);
  }
}

TEST_CASE("the weights of a probed place are those of its triangle's corners", "[geometry]") {
  const auto cube = endplate::test::cube(10.0);
  const SurfaceProbe probe(cube);
  const auto& found = probe.at({1.0, 7.0, -4.0}).nearest;
  double sum = 0.0;
  for (const double w : found.weights) {
    CHECK(w >= 0.0);
    sum += w;
  }
  CHECK(sum == Approx(1.0));
}
