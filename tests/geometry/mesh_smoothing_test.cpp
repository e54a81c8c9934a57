#include "geometry/mesh_smoothing.hpp"

#include <catch2/catch.hpp>

#include "geometry/smooth_step.hpp"

using namespace endplate::geometry;

TEST_CASE("A spike is smoothed away and what lies far from it stays", "[geometry]") {
  // A strip of triangles along x whose vertex 10 stands 5 mm out of the plane.
  TriangleMesh strip;
  for (int i = 0; i < 40; ++i) strip.vertices_mm.emplace_back(i / 2, i % 2, i == 10 ? 5.0 : 0.0);
  for (std::uint32_t i = 0; i + 2 < 40; ++i) strip.triangles.push_back({i, i + 1, i + 2});
  const TriangleMesh before = strip;
  smooth_near(strip, {10}, 2, 10);
  CHECK(strip.vertices_mm[10].z() < 1.0);
  CHECK(strip.vertices_mm[10].z() > 0.0);
  for (std::size_t i = 20; i < 40; ++i) CHECK(strip.vertices_mm[i] == before.vertices_mm[i]);
  CHECK(strip.triangles == before.triangles);
}

TEST_CASE("A smooth step is level at its ends", "[geometry]") {
  CHECK(smooth_step(-1.0) == 0.0);
  CHECK(smooth_step(0.5) == Approx(0.5));
  CHECK(smooth_step(2.0) == 1.0);
  CHECK(smooth_step(0.001) < 1e-5);
}
