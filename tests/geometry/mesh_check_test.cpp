#include "geometry/mesh_check.hpp"

#include <catch2/catch.hpp>
#include <limits>

#include "../support/damaged_meshes.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

TEST_CASE("a cube is closed, faces outward and has its area and volume", "[geometry][mesh]") {
  const auto check = check_mesh(cube());
  REQUIRE(check.has_value());
  CHECK(check->closed);
  CHECK(check->facing == Facing::outward);
  CHECK(check->area_mm2 == Approx(600.0));
  CHECK(check->volume_mm3.value() == Approx(1000.0));
  CHECK(check->box_low_mm == Eigen::Vector3d(0, 0, 0));
  CHECK(check->box_high_mm == Eigen::Vector3d(10, 10, 10));
  REQUIRE(check->components.size() == 1);
  CHECK(check->components[0].triangles == 12);
  CHECK(check->non_manifold_edges + check->non_manifold_vertices + check->inconsistent_edges == 0);
  CHECK(check->degenerate_triangles + check->doubled_triangles + check->self_intersections == 0);
}

TEST_CASE("a volume does not suffer from a far origin", "[geometry][mesh]") {
  TriangleMesh mesh;
  add(mesh, cube(), {1e6, -2e6, 3e6});
  CHECK(check_mesh(mesh)->volume_mm3.value() == Approx(1000.0).epsilon(1e-9));
}

TEST_CASE("each hole is told with its edges and circumference", "[geometry][mesh]") {
  // Two ends of a prism, and one triangle out of its side.
  const auto check = check_mesh(without(tube(30.0, 100.0, 12, 4, false), 30));
  REQUIRE(check->holes.size() == 3);
  CHECK_FALSE(check->closed);
  CHECK_FALSE(check->volume_mm3.has_value());
  CHECK(check->facing == Facing::outward);
  const double side_mm = 60.0 * std::sin(std::numbers::pi / 12.0);
  CHECK(check->holes[0].edges == 12);
  CHECK(check->holes[0].circumference_mm == Approx(12.0 * side_mm));
  CHECK(check->holes[1].circumference_mm == Approx(12.0 * side_mm));
  CHECK(std::abs(check->holes[0].centre_mm.z() - check->holes[1].centre_mm.z()) == Approx(100.0));
  CHECK(check->holes[2].edges == 3);
  CHECK(check->holes[2].circumference_mm == Approx(25.0 + side_mm + std::hypot(25.0, side_mm)));
}

TEST_CASE("two holes that touch at a vertex stay two holes", "[geometry][mesh]") {
  // The triangles on both sides of a vertex of the side, opposite each other.
  TriangleMesh mesh = tube(30.0, 100.0, 12, 4, false);
  mesh = without(without(mesh, 2 * (2 * 12 + 5)), 2 * (1 * 12 + 4));
  const auto check = check_mesh(mesh);
  REQUIRE(check->holes.size() == 4);
  CHECK(check->holes[2].edges == 3);
  CHECK(check->holes[3].edges == 3);
  CHECK(check->non_manifold_vertices == 1);
}

TEST_CASE("an inside-out mesh and a turned triangle are told apart", "[geometry][mesh]") {
  const auto inward = check_mesh(inside_out(cube()));
  CHECK(inward->facing == Facing::inward);
  CHECK(inward->volume_mm3.value() == Approx(-1000.0));
  CHECK(inward->inconsistent_edges == 0);
  TriangleMesh turned = cube();
  std::swap(turned.triangles[3][0], turned.triangles[3][1]);
  const auto mixed = check_mesh(turned);
  CHECK(mixed->facing == Facing::mixed);
  CHECK(mixed->inconsistent_edges == 3);
  CHECK(mixed->closed);
  CHECK_FALSE(mixed->volume_mm3.has_value());
  CHECK(check_mesh(inside_out(tube(30.0, 100.0, 12, 4, true)))->facing == Facing::inward);
  TriangleMesh two = cube();
  add(two, inside_out(cube()), {50.0, 0.0, 0.0});
  CHECK(check_mesh(two)->facing == Facing::mixed);
  CHECK(check_mesh(moebius_band())->facing == Facing::mixed);
}

TEST_CASE("a flat sheet has no outside", "[geometry][mesh]") {
  TriangleMesh mesh;
  mesh.vertices_mm = {{0, 0, 0}, {10, 0, 0}, {10, 10, 0}, {0, 10, 0}};
  mesh.triangles = {{0, 1, 2}, {0, 2, 3}};
  const auto check = check_mesh(mesh);
  CHECK(check->facing == Facing::unknown);
  REQUIRE(check->holes.size() == 1);
  CHECK(check->holes[0].circumference_mm == Approx(40.0));
}

TEST_CASE("edges and vertices that no surface has are counted", "[geometry][mesh]") {
  const auto tie = check_mesh(bow_tie());
  CHECK(tie->non_manifold_vertices == 1);
  CHECK(tie->non_manifold_edges == 0);
  CHECK(tie->components.size() == 2);
  CHECK(tie->self_intersections == 0);
  const auto fin = check_mesh(three_on_an_edge());
  CHECK(fin->non_manifold_edges == 1);
  CHECK(fin->non_manifold_vertices == 0);
  CHECK(fin->facing == Facing::unknown);
}

TEST_CASE("doubled triangles and triangles without area are counted", "[geometry][mesh]") {
  TriangleMesh doubled = cube();
  doubled.triangles.push_back({3, 2, 0});
  doubled.triangles.push_back({2, 3, 0});
  const auto check = check_mesh(doubled);
  CHECK(check->doubled_triangles == 2);
  CHECK(check->closed);
  CHECK(check->area_mm2 == Approx(600.0));
  const auto sliver = check_mesh(with_sliver());
  CHECK(sliver->degenerate_triangles == 1);
  CHECK(sliver->closed);
  TriangleMesh repeated = cube();
  repeated.triangles.push_back({1, 1, 2});
  CHECK(check_mesh(repeated)->degenerate_triangles == 1);
  CHECK(check_mesh(repeated)->closed);
}

TEST_CASE("triangles that cross are counted, neighbours are not", "[geometry][mesh]") {
  TriangleMesh mesh;
  mesh.vertices_mm = {{0, 0, 0}, {10, 0, 0}, {0, 10, 0}, {2, 2, -5}, {3, 2, 5}, {2, 3, 5}};
  mesh.triangles = {{0, 1, 2}, {3, 4, 5}};
  CHECK(check_mesh(mesh)->self_intersections == 1);
  // One shared corner: through the inside, and only there.
  mesh.triangles = {{0, 1, 2}, {0, 4, 3}};
  CHECK(check_mesh(mesh)->self_intersections == 1);
  mesh.vertices_mm[3] = {2, 2, 3};
  CHECK(check_mesh(mesh)->self_intersections == 0);
  // A shared edge: folded flat onto the other, or beside it.
  mesh.triangles = {{0, 1, 2}, {1, 0, 3}};
  mesh.vertices_mm[3] = {4, 4, 0};
  CHECK(check_mesh(mesh)->self_intersections == 1);
  mesh.vertices_mm[3] = {4, -4, 0};
  CHECK(check_mesh(mesh)->self_intersections == 0);
  CHECK(check_mesh(self_crossing())->self_intersections > 0);
  CHECK(check_mesh(tube(40.0, 300.0, 24, 10, true))->self_intersections == 0);
}

TEST_CASE("a heap of crossing triangles is given up and not counted for ever", "[geometry][mesh]") {
  TriangleMesh mesh;
  for (int i = 0; i < 400; ++i) {
    add(mesh, tube(10.0, 10.0, 3, 1, false), {0.01 * i, 0.02 * i, 0.015 * i});
  }
  const auto check = check_mesh(mesh);
  CHECK_FALSE(check->self_intersections_complete);
  CHECK(check->self_intersections >= 1000);
}

TEST_CASE("what is no mesh is refused", "[geometry][mesh]") {
  CHECK_FALSE(check_mesh(TriangleMesh{}).has_value());
  TriangleMesh outside = cube();
  outside.triangles[2][2] = 99;
  CHECK(check_mesh(outside).error().what == "triangle 3 names vertex 99 of 8");
  TriangleMesh nan = cube();
  nan.vertices_mm[4].y() = std::numeric_limits<double>::quiet_NaN();
  CHECK(check_mesh(nan).error().what == "vertex 5 has a coordinate that is not finite");
  TriangleMesh points;
  points.vertices_mm = {{0, 0, 0}, {1, 0, 0}};
  points.triangles = {{0, 1, 1}, {0, 0, 0}};
  const auto nothing = check_mesh(points);
  REQUIRE(nothing.has_value());
  CHECK(nothing->degenerate_triangles == 2);
  CHECK_FALSE(nothing->closed);
}
