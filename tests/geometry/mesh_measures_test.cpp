#include "geometry/mesh_measures.hpp"

#include <catch2/catch.hpp>

#include "../support/meshes.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

namespace {

std::vector<ComponentMeasures> measured(const TriangleMesh& mesh) {
  const MeshTopology topology(mesh);
  return measure_components(mesh, topology, topology.components(), topology.boundary_loops());
}

}  // namespace

// A prism of 12 sides: its foot has the area 12 / 2 r^2 sin(30 deg).
TEST_CASE("the volume of an open tube is that between flat caps", "[geometry][mesh]") {
  TriangleMesh mesh;
  add(mesh, tube(30.0, 100.0, 12, 4, false), {500.0, -200.0, 90.0});
  const auto open = measured(mesh);
  REQUIRE(open.size() == 1);
  CHECK_FALSE(open[0].closed);
  CHECK(open[0].capped_volume_mm3 == Approx(100.0 * 6.0 * 900.0 * 0.5));
  CHECK_FALSE(open[0].flat());
}

TEST_CASE("each part has its own area and volume", "[geometry][mesh]") {
  TriangleMesh mesh = cube(2.0);
  add(mesh, cube(10.0), {50.0, 0.0, 0.0});
  const auto parts = measured(mesh);
  REQUIRE(parts.size() == 2);
  CHECK(parts[0].area_mm2 == Approx(24.0));
  CHECK(parts[0].capped_volume_mm3 == Approx(8.0));
  CHECK(parts[1].area_mm2 == Approx(600.0));
  CHECK(parts[1].capped_volume_mm3 == Approx(1000.0));
  CHECK(parts[1].triangles == 12);
  CHECK(parts[1].closed);
}
