#include "geometry/mesh_unit.hpp"

#include <catch2/catch.hpp>
#include <limits>

#include "../support/meshes.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

using Units = std::vector<LengthUnit>;

TEST_CASE("the size of the object tells the unit", "[geometry][mesh]") {
  CHECK(plausible_units(650.0, 400.0, 1000.0) == Units{LengthUnit::mm});
  CHECK(plausible_units(65.0, 400.0, 1000.0) == Units{LengthUnit::cm});
  CHECK(plausible_units(0.65, 400.0, 1000.0) == Units{LengthUnit::m});
}

TEST_CASE("several units or none are left for the user to decide", "[geometry][mesh]") {
  CHECK(plausible_units(65.0, 50.0, 1000.0) == Units{LengthUnit::mm, LengthUnit::cm});
  CHECK(plausible_units(5.0, 400.0, 1000.0)->empty());
  CHECK(plausible_units(25.6, 400.0, 1000.0)->empty());  // inches
}

TEST_CASE("no extent and no range are refused", "[geometry][mesh]") {
  CHECK_FALSE(plausible_units(0.0, 400.0, 1000.0).has_value());
  CHECK_FALSE(plausible_units(std::numeric_limits<double>::quiet_NaN(), 400.0, 1000.0).has_value());
  CHECK_FALSE(plausible_units(65.0, 1000.0, 400.0).has_value());
  CHECK_FALSE(plausible_units(65.0, 0.0, 400.0).has_value());
}

TEST_CASE("a mesh in centimetres is scaled to millimetres", "[geometry][mesh]") {
  TriangleMesh mesh = cube(3.0);
  mesh.vertices_mm.emplace_back(1e6, 0.0, 0.0);  // used by no triangle
  CHECK(diagonal(mesh) == Approx(3.0 * std::sqrt(3.0)));
  scale_to_mm(mesh, LengthUnit::cm);
  CHECK(diagonal(mesh) == Approx(30.0 * std::sqrt(3.0)));
  scale_to_mm(mesh, LengthUnit::m);
  CHECK(diagonal(mesh) == Approx(30000.0 * std::sqrt(3.0)));
  CHECK(diagonal(TriangleMesh{}) == 0.0);
}
