#include "geometry/surface_distance.hpp"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <stdexcept>

#include "tests/support/test_surfaces.hpp"

using Eigen::Vector3d;
using endplate::geometry::DistanceField;
using endplate::geometry::position_mm;
using endplate::geometry::SurfaceDistance;
using endplate::geometry::SurfaceFault;
using endplate::geometry::SurfacePoint;
using endplate::geometry::TriangleMesh;
using endplate::test::bent_tube;
using endplate::test::flat_plate;
using endplate::test::joined;
using endplate::test::shuffled;
using endplate::test::sphere;

namespace {

// The field's promise: half a per cent, and a hair near the source.
double margin_mm(double distance_mm) {
  return 0.005 * distance_mm + 0.05;
}

SurfacePoint point_of(const TriangleMesh& mesh, std::mt19937& chance) {
  const auto triangle = static_cast<std::uint32_t>(chance() % mesh.triangles.size());
  const double a = 1.0 + static_cast<double>(chance() % 1000);
  const double b = 1.0 + static_cast<double>(chance() % 1000);
  const double c = 1.0 + static_cast<double>(chance() % 1000);
  const double sum = a + b + c;
  return {triangle, {a / sum, b / sum, c / sum}};
}

// Distance of a point from the nearest triangle, by brute force over the mesh.
double off_surface_mm(const TriangleMesh& mesh, const Vector3d& p) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const auto& t : mesh.triangles) {
    const Vector3d& a = mesh.vertices_mm[t[0]];
    const Vector3d u = mesh.vertices_mm[t[1]] - a;
    const Vector3d v = mesh.vertices_mm[t[2]] - a;
    const Vector3d normal = u.cross(v);
    const double square = normal.squaredNorm();
    const double y = u.cross(p - a).dot(normal) / square;
    const double x = (p - a).cross(v).dot(normal) / square;
    if (x < -1e-9 || y < -1e-9 || x + y > 1.0 + 1e-9) continue;
    nearest = std::min(nearest, std::abs((p - a).dot(normal)) / std::sqrt(square));
  }
  return nearest;
}

}  // namespace

TEST_CASE("a plate is measured as with a ruler", "[geometry][surface_distance]") {
  const TriangleMesh plate = flat_plate(40);
  const SurfaceDistance surface = SurfaceDistance::prepare(plate).value();
  std::mt19937 chance(3);
  for (int i = 0; i < 5; ++i) {
    const SurfacePoint source = point_of(plate, chance);
    const Vector3d here = position_mm(plate, source);
    const DistanceField field = surface.from(source);
    for (std::size_t v = 0; v < plate.vertices_mm.size(); ++v) {
      const double ruler_mm = (plate.vertices_mm[v] - here).norm();
      // Exact but for vertices of the border, where the graph's bends stay.
      CHECK(field.at_vertices_mm()[v] == Approx(ruler_mm).epsilon(0.002).margin(1e-4));
    }
    for (int k = 0; k < 20; ++k) {
      const SurfacePoint to = point_of(plate, chance);
      const double ruler_mm = (position_mm(plate, to) - here).norm();
      CHECK(surface.between_mm(source, to) == Approx(ruler_mm).epsilon(1e-9));
      CHECK(field.at_mm(to) == Approx(ruler_mm).epsilon(0.002).margin(1e-4));
    }
  }
}

TEST_CASE("inside a plate the distances of a field are exact", "[geometry][surface_distance]") {
  const TriangleMesh plate = flat_plate(40);
  const SurfaceDistance surface = SurfaceDistance::prepare(plate).value();
  const std::uint32_t middle = 20 * 41 + 20;
  const DistanceField field = surface.from_vertex(middle);
  double worst = 0.0;
  for (std::size_t v = 0; v < plate.vertices_mm.size(); ++v) {
    const double ruler_mm = (plate.vertices_mm[v] - plate.vertices_mm[middle]).norm();
    if (ruler_mm > 0.0)
      worst = std::max(worst, std::abs(field.at_vertices_mm()[v] / ruler_mm - 1.0));
  }
  CHECK(worst < 1e-5);
}

TEST_CASE("round a sphere it is the arc of the great circle", "[geometry][surface_distance]") {
  constexpr double kRadius_mm = 50.0;
  const TriangleMesh ball = sphere(kRadius_mm, 4);
  const SurfaceDistance surface = SurfaceDistance::prepare(ball).value();
  for (const std::uint32_t source : {0U, 700U, 2000U}) {
    const DistanceField field = surface.from_vertex(source);
    for (std::size_t v = 0; v < ball.vertices_mm.size(); ++v) {
      const Vector3d& a = ball.vertices_mm[source];
      const Vector3d& b = ball.vertices_mm[v];
      const double arc_mm = kRadius_mm * std::atan2(a.cross(b).norm(), a.dot(b));
      // The faces cut below the sphere: 0.15 % shorter at this fineness.
      CHECK(std::abs(field.at_vertices_mm()[v] - arc_mm) <= 0.005 * arc_mm + 0.02);
    }
  }
}

TEST_CASE("the source is at no distance", "[geometry][surface_distance]") {
  const TriangleMesh tube = bent_tube(16, 30);
  const SurfaceDistance surface = SurfaceDistance::prepare(tube).value();
  std::mt19937 chance(5);
  CHECK(surface.from_vertex(17).at_vertices_mm()[17] == 0.0);
  for (int i = 0; i < 20; ++i) {
    const SurfacePoint source = point_of(tube, chance);
    CHECK(surface.from(source).at_mm(source) == 0.0);
    CHECK(surface.between_mm(source, source) == 0.0);
  }
  CHECK(surface.between_mm(surface.point_at(9), surface.point_at(9)) == 0.0);
}

TEST_CASE("distances are a metric and longer than the straight line",
          "[geometry][surface_distance]") {
  const TriangleMesh tube = bent_tube(20, 40);
  const SurfaceDistance surface = SurfaceDistance::prepare(tube).value();
  std::mt19937 chance(11);
  for (int i = 0; i < 30; ++i) {
    const SurfacePoint a = point_of(tube, chance);
    const SurfacePoint b = point_of(tube, chance);
    const SurfacePoint c = point_of(tube, chance);
    const DistanceField from_a = surface.from(a);
    const DistanceField from_b = surface.from(b);
    const double ab = from_a.at_mm(b);
    CHECK(std::abs(ab - from_b.at_mm(a)) <= margin_mm(ab));
    CHECK(from_a.at_mm(c) <= ab + from_b.at_mm(c) + margin_mm(ab));
    const double straight_mm = (position_mm(tube, a) - position_mm(tube, b)).norm();
    CHECK(ab >= straight_mm * (1.0 - 1e-6));

    const double path_mm = surface.between_mm(a, b);
    CHECK(path_mm >= straight_mm * (1.0 - 1e-12));
    CHECK(std::abs(path_mm - ab) <= margin_mm(ab));
    CHECK(std::abs(path_mm - surface.between_mm(b, a)) <= 0.002 * path_mm);
  }
}

TEST_CASE("the path lies on the surface and is as long as it says",
          "[geometry][surface_distance]") {
  const TriangleMesh tube = bent_tube(16, 30);
  const SurfaceDistance surface = SurfaceDistance::prepare(tube).value();
  std::mt19937 chance(13);
  for (int i = 0; i < 20; ++i) {
    const SurfacePoint a = point_of(tube, chance);
    const auto vertex = static_cast<std::uint32_t>(chance() % 400);
    const SurfacePoint b = i % 3 == 0 ? surface.point_at(vertex) : point_of(tube, chance);
    const auto path = surface.path(a, b);
    REQUIRE(path);
    REQUIRE(path->points_mm.size() >= 2);
    CHECK((path->points_mm.front() - position_mm(tube, a)).norm() < 1e-9);
    CHECK((path->points_mm.back() - position_mm(tube, b)).norm() < 1e-9);
    double length_mm = 0.0;
    for (std::size_t k = 1; k < path->points_mm.size(); ++k) {
      const Vector3d& from = path->points_mm[k - 1];
      const Vector3d& to = path->points_mm[k];
      length_mm += (to - from).norm();
      for (const double share : {0.0, 0.5, 1.0})
        CHECK(off_surface_mm(tube, from + share * (to - from)) < 1e-7);
    }
    CHECK(path->length_mm == Approx(length_mm).epsilon(1e-12));
  }
}

TEST_CASE("the numbering of a mesh does not matter", "[geometry][surface_distance]") {
  const TriangleMesh tube = bent_tube(20, 40);
  const auto other = shuffled(tube, 5);
  const DistanceField field = SurfaceDistance::prepare(tube).value().from_vertex(123);
  const DistanceField same =
      SurfaceDistance::prepare(other.mesh).value().from_vertex(other.number[123]);
  for (std::size_t v = 0; v < tube.vertices_mm.size(); ++v)
    CHECK(same.at_vertices_mm()[other.number[v]] ==
          Approx(field.at_vertices_mm()[v]).epsilon(1e-5).margin(1e-5));
}

TEST_CASE("what no way leads to is infinitely far", "[geometry][surface_distance]") {
  TriangleMesh two = joined(sphere(10.0, 1), sphere(10.0, 1));
  two.vertices_mm.emplace_back(0.0, 0.0, 0.0);  // of no triangle
  const SurfaceDistance surface = SurfaceDistance::prepare(two).value();
  const DistanceField field = surface.from_vertex(3);
  CHECK(std::isfinite(field.at_vertices_mm()[41]));
  CHECK(std::isinf(field.at_vertices_mm()[42]));
  CHECK(std::isinf(field.at_vertices_mm()[84]));
  const SurfacePoint there{100, {0.2, 0.3, 0.5}};
  CHECK(std::isinf(field.at_mm(there)));
  CHECK_FALSE(surface.path({3, {0.2, 0.3, 0.5}}, there));
  CHECK(std::isinf(surface.between_mm({3, {0.2, 0.3, 0.5}}, there)));
}

TEST_CASE("triangles without area and torn places are tolerated", "[geometry][surface_distance]") {
  const TriangleMesh plate = flat_plate(12);
  TriangleMesh broken = plate;
  // A vertex doubled with a sliver between the two, a triangle that is a line, one that is a point,
  // and an edge with a third triangle.
  const std::uint32_t middle = 6 * 13 + 6;
  const auto twin = static_cast<std::uint32_t>(broken.vertices_mm.size());
  broken.vertices_mm.push_back(broken.vertices_mm[middle]);
  for (std::size_t t = 0; t < broken.triangles.size(); t += 2)
    for (std::uint32_t& corner : broken.triangles[t])
      if (corner == middle) corner = twin;
  broken.triangles.push_back({middle, twin, middle + 1});
  broken.triangles.push_back({0, 1, 1});
  broken.triangles.push_back({5, 5, 5});
  broken.triangles.push_back({20, 21, 100});
  const SurfaceDistance surface = SurfaceDistance::prepare(broken).value();
  for (const std::uint32_t source : {0U, middle, twin, 30U}) {
    const DistanceField field = surface.from_vertex(source);
    for (std::uint32_t v = 0; v < plate.vertices_mm.size(); ++v) {
      const double ruler_mm = (broken.vertices_mm[v] - broken.vertices_mm[source]).norm();
      CHECK(field.at_vertices_mm()[v] >= ruler_mm - 1e-4);
      // Round the tear it is a cell or two farther.
      CHECK(field.at_vertices_mm()[v] <= 1.05 * ruler_mm + 2.0);
      const double path_mm = surface.between_mm(surface.point_at(source), surface.point_at(v));
      CHECK(path_mm >= ruler_mm - 1e-9);
      CHECK(path_mm <= 1.05 * ruler_mm + 2.0);
    }
  }
}

TEST_CASE("a surface that is none is told so", "[geometry][surface_distance]") {
  CHECK(SurfaceDistance::prepare({}).error() == SurfaceFault::no_triangles);
  TriangleMesh mesh = flat_plate(2);
  mesh.triangles.push_back({0, 1, 99});
  CHECK(SurfaceDistance::prepare(mesh).error() == SurfaceFault::no_such_vertex);
  mesh = flat_plate(2);
  mesh.vertices_mm[4].x() = std::numeric_limits<double>::quiet_NaN();
  CHECK(SurfaceDistance::prepare(mesh).error() == SurfaceFault::not_finite);

  const SurfaceDistance surface = SurfaceDistance::prepare(flat_plate(2)).value();
  CHECK_THROWS_AS(surface.from_vertex(9), std::invalid_argument);
  CHECK_THROWS_AS(surface.from({8, {1.0, 0.0, 0.0}}), std::invalid_argument);
  CHECK_THROWS_AS(surface.from({0, {0.7, 0.7, -0.4}}), std::invalid_argument);
}
