#include "geometry/swept_solid.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "geometry/mesh_check.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector3d;

SweptRing ring(const Vector3d& centre, double a, double b) {
  return {centre, a, b, Vector3d::UnitX(), std::nullopt};
}

// A rod of length 60 with round ends of radius 10.
std::vector<SweptRing> rod() {
  return {ring({0.0, 0.0, 0.0}, 10.0, 10.0), ring({0.0, 0.0, 30.0}, 10.0, 10.0),
          ring({0.0, 0.0, 60.0}, 10.0, 10.0)};
}

MeshCheck check_of(const SweptSolid& solid) {
  return check_mesh(solid.mesh).value();
}

}  // namespace

TEST_CASE("A swept solid is closed, in one piece and faces outward", "[geometry][swept]") {
  // Up, sideways and bent, so that no direction is the lucky one.
  std::vector<SweptRing> bent;
  for (int k = 0; k <= 4; ++k) {
    const double a = 0.4 * k;
    bent.push_back(ring({15.0 * k, 80.0 * std::sin(a), 80.0 * std::cos(a)}, 4.0 + k, 9.0 - k));
    bent.back().toward = Vector3d(0.3, 1.0, 1.0);
  }
  for (const auto& rings : {rod(), bent}) {
    const MeshCheck check = check_of(sweep(rings, {}, 60.0));
    CHECK(check.closed);
    CHECK(check.components.size() == 1);
    CHECK(check.facing == Facing::outward);
    CHECK(check.self_intersections == 0);
    CHECK(check.degenerate_triangles == 0);
  }
}

TEST_CASE("A rod with round ends is a capsule from its first centre to its last",
          "[geometry][swept]") {
  const MeshCheck check = check_of(sweep(rod(), {96, 24, 1.0}, 60.0));
  CHECK(check.box_low_mm.z() == Approx(0.0).margin(1e-12));
  CHECK(check.box_high_mm.z() == Approx(60.0));
  const double ball = 4.0 / 3.0 * std::numbers::pi * 1000.0;
  const double side = std::numbers::pi * 100.0 * 40.0;
  CHECK(check.volume_mm3.value() == Approx(ball + side).epsilon(0.005));
}

TEST_CASE("The first half-axis points where it is told to", "[geometry][swept]") {
  const MeshCheck check = check_of(
      sweep({ring({0.0, 0.0, 0.0}, 12.0, 3.0), ring({0.0, 0.0, 80.0}, 12.0, 3.0)}, {}, 80.0));
  CHECK(check.box_high_mm.x() == Approx(12.0));
  CHECK(check.box_high_mm.y() == Approx(3.0));
}

TEST_CASE("Half-axes stay between their neighbours", "[geometry][swept]") {
  // A plain spline would swell to more than 10 between the two thick rings.
  const MeshCheck check =
      check_of(sweep({ring({0.0, 0.0, 0.0}, 1.0, 1.0), ring({0.0, 0.0, 20.0}, 10.0, 10.0),
                      ring({0.0, 0.0, 40.0}, 10.0, 10.0), ring({0.0, 0.0, 60.0}, 1.0, 1.0)},
                     {}, 60.0));
  CHECK(check.box_high_mm.x() <= 10.0 + 1e-9);
}

TEST_CASE("A ring may lie in a plane of its own", "[geometry][swept]") {
  // A plate whose path slants: its rings stay level.
  std::vector<SweptRing> rings{ring({0.0, 0.0, 0.0}, 2.0, 30.0), ring({0.0, 20.0, 40.0}, 2.0, 30.0),
                               ring({0.0, 40.0, 80.0}, 2.0, 30.0)};
  // Along z, of the row nearest to the middle ring.
  const auto span = [&] {
    const SweptSolid solid = sweep(rings, {}, 80.0);
    double row = 0.0;
    for (const double along : solid.along) {
      if (std::abs(along - 1.0) < std::abs(row - 1.0)) row = along;
    }
    double least = 1e9;
    double most = -1e9;
    for (std::size_t v = 0; v < solid.along.size(); ++v) {
      if (solid.along[v] != row) continue;
      least = std::min(least, solid.mesh.vertices_mm[v].z());
      most = std::max(most, solid.mesh.vertices_mm[v].z());
    }
    return most - least;
  };
  CHECK(span() > 20.0);
  for (SweptRing& r : rings) r.normal = -Vector3d::UnitZ();
  CHECK(span() < 1e-9);
  CHECK(check_of(sweep(rings, {}, 80.0)).facing == Facing::outward);
}

TEST_CASE("Solids made for one length have the same triangles whatever their size",
          "[geometry][swept]") {
  std::vector<SweptRing> large = rod();
  for (SweptRing& r : large) r.centre_mm *= 1.3;
  CHECK(sweep(large, {}, 60.0).mesh.triangles == sweep(rod(), {}, 60.0).mesh.triangles);
}

TEST_CASE("Each vertex knows its place along the curve", "[geometry][swept]") {
  const SweptSolid solid = sweep(rod(), {}, 60.0);
  REQUIRE(solid.along.size() == solid.mesh.vertices_mm.size());
  for (std::size_t v = 0; v < solid.along.size(); ++v) {
    CHECK(30.0 * solid.along[v] == Approx(solid.mesh.vertices_mm[v].z()).margin(1e-9));
  }
}

TEST_CASE("One ring makes no solid", "[geometry][swept]") {
  CHECK_THROWS_AS(sweep({ring({0.0, 0.0, 0.0}, 1.0, 1.0)}, {}, 1.0), std::invalid_argument);
}

}  // namespace endplate::geometry
