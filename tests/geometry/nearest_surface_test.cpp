#include "geometry/nearest_surface.hpp"

#include <catch2/catch.hpp>

#include "../support/damaged_meshes.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

TEST_CASE("the nearest place of a cube is found on a face, an edge and a corner",
          "[geometry][mesh]") {
  const TriangleMesh mesh = cube();
  const NearestSurface surface(mesh);
  const auto check = [&](const Eigen::Vector3d& p, const Eigen::Vector3d& nearest) {
    const NearestPlace place = surface.nearest(p);
    CHECK((place.position_mm - nearest).norm() < 1e-12);
    CHECK((position_mm(mesh, place.on_mesh) - nearest).norm() < 1e-12);
    CHECK(place.distance_mm == Approx((p - nearest).norm()).margin(1e-12));
    CHECK_FALSE(place.on_rim);
    return place;
  };
  CHECK((check({4, 7, 13}, {4, 7, 10}).normal - Eigen::Vector3d::UnitZ()).norm() < 1e-12);
  CHECK((check({-2, 3, 6}, {0, 3, 6}).normal + Eigen::Vector3d::UnitX()).norm() < 1e-12);
  check({4, 7, 9}, {4, 7, 10});  // from inside
  check({4, 13, 12}, {4, 10, 10});
  check({-1, -1, -1}, {0, 0, 0});
}

TEST_CASE("a place on the rim of an open surface is told", "[geometry][mesh]") {
  const NearestSurface surface(tube(40.0, 300.0, 24, 10, true));
  CHECK(surface.nearest({41, 0, 310}).on_rim);
  CHECK_FALSE(surface.nearest({41, 0, 290}).on_rim);
  CHECK_FALSE(surface.nearest({0, 0, -5}).on_rim);
}

TEST_CASE("the nearest place agrees with a search over many points of the surface",
          "[geometry][mesh]") {
  const TriangleMesh mesh = tube(40.0, 300.0, 12, 5, false);
  const NearestSurface surface(mesh);
  for (int k = 0; k < 20; ++k) {
    const Eigen::Vector3d p(70.0 * std::sin(3.0 * k), 60.0 * std::cos(5.0 * k), 17.0 * k - 20.0);
    double least = 1e9;
    for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
      for (int a = 0; a <= 40; ++a) {
        for (int b = 0; a + b <= 40; ++b) {
          const SurfacePoint q{t, {a / 40.0, b / 40.0, (40 - a - b) / 40.0}};
          least = std::min(least, (position_mm(mesh, q) - p).norm());
        }
      }
    }
    const double found = surface.nearest(p).distance_mm;
    CHECK(found <= least + 1e-9);
    CHECK(found > least - 1.0);
  }
}
