#include "geometry/mesh_repair.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <limits>

#include "../support/damaged_meshes.hpp"
#include "geometry/mesh_check.hpp"

using namespace endplate::geometry;
using namespace endplate::test;

namespace {

using Done = std::vector<std::string>;

// Repaired to a closed surface that faces outward; its volume.
double volume_of(const GeometryResult<RepairedMesh>& repaired) {
  REQUIRE(repaired.has_value());
  const auto check = check_mesh(repaired->mesh);
  REQUIRE(check.has_value());
  CHECK(check->closed);
  CHECK(check->facing == Facing::outward);
  CHECK(check->non_manifold_edges + check->non_manifold_vertices + check->inconsistent_edges == 0);
  CHECK(check->degenerate_triangles + check->doubled_triangles + check->self_intersections == 0);
  return check->volume_mm3.value_or(0.0);
}

std::string refusal(const TriangleMesh& mesh, const RepairOptions& options = {}) {
  const auto repaired = repair_mesh(mesh, options);
  REQUIRE_FALSE(repaired.has_value());
  CHECK_FALSE(repaired.error().mend.empty());
  return repaired.error().what;
}

RepairOptions closing(double up_to_mm, OpenEnd end = OpenEnd::none) {
  RepairOptions options;
  options.close_holes_up_to_mm = up_to_mm;
  options.open_end = end;
  return options;
}

}  // namespace

TEST_CASE("a sound mesh stays as it is, without a word", "[geometry][mesh]") {
  const auto repaired = repair_mesh(cube(), {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->done.empty());
  CHECK(repaired->mesh.triangles == cube().triangles);
}

TEST_CASE("triangles that share no vertices are joined", "[geometry][mesh]") {
  TriangleMesh soup;
  const TriangleMesh whole = cube();
  for (const auto& triangle : whole.triangles) {
    const auto first = static_cast<std::uint32_t>(soup.vertices_mm.size());
    for (const auto corner : triangle) soup.vertices_mm.push_back(whole.vertices_mm[corner]);
    soup.triangles.push_back({first, first + 1, first + 2});
  }
  const auto repaired = repair_mesh(soup, {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->mesh.vertices_mm.size() == 8);
  CHECK(repaired->done == Done{"vertices merged with one at the same point: 28"});
}

TEST_CASE("an inside-out mesh and turned triangles are turned outward", "[geometry][mesh]") {
  const auto inward = repair_mesh(inside_out(cube()), {});
  CHECK(volume_of(inward) == Approx(1000.0));
  CHECK(inward->done == Done{"parts turned inside out to face outward: 1"});
  TriangleMesh turned = cube();
  std::swap(turned.triangles[3][0], turned.triangles[3][1]);
  const auto repaired = repair_mesh(turned, {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  REQUIRE_FALSE(repaired->done.empty());
  CHECK(repaired->done[0].starts_with("triangles turned to face the way of their neighbours"));
}

TEST_CASE("doubled, repeated and unused parts are dropped", "[geometry][mesh]") {
  TriangleMesh mesh = cube();
  mesh.triangles.push_back({3, 2, 0});
  mesh.triangles.push_back({1, 1, 2});
  mesh.vertices_mm.emplace_back(77.0, 0.0, 0.0);
  const auto repaired = repair_mesh(mesh, {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->done == Done{"triangles with a corner twice dropped: 1",
                               "further copies of a triangle dropped: 1",
                               "vertices that no triangle uses dropped: 1"});
}

TEST_CASE("a sliver is taken out without a slit", "[geometry][mesh]") {
  const auto repaired = repair_mesh(with_sliver(), {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->done == Done{"triangles whose corners lie on one line taken out: 1"});
}

TEST_CASE("a fin on an edge is cut off and the edge sewn", "[geometry][mesh]") {
  const auto repaired = repair_mesh(three_on_an_edge(), {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->mesh.triangles.size() == 12);
  CHECK(repaired->done[0] == "edges where three or more triangles meet cut open: 1");
  CHECK(repaired->done.back() == "parts with a small share of the area dropped: 1");
}

TEST_CASE("a wall that was cut open along a fin is sewn again", "[geometry][mesh]") {
  const auto repaired = repair_mesh(long_fin(), closing(0.0, OpenEnd::leave_open));
  REQUIRE(repaired.has_value());
  const auto check = check_mesh(repaired->mesh);
  CHECK(check->holes.size() == 1);
  CHECK(check->components.size() == 1);
  CHECK(repaired->mesh.triangles.size() == long_fin().triangles.size() - 2);
  CHECK(repaired->done.back() == "edges along such cuts sewn: 2");
}

TEST_CASE("two bodies that touch at a point are split", "[geometry][mesh]") {
  const auto repaired = repair_mesh(bow_tie(), {});
  CHECK(volume_of(repaired) == Approx(2000.0));
  CHECK(repaired->mesh.vertices_mm.size() == 16);
  CHECK(repaired->done == Done{"vertices where parts touch at a point only split: 1"});
}

TEST_CASE("specks are dropped, large parts are not", "[geometry][mesh]") {
  TriangleMesh mesh = cube();
  add(mesh, cube(0.5), {30.0, 0.0, 0.0});
  const auto repaired = repair_mesh(mesh, {});
  CHECK(volume_of(repaired) == Approx(1000.0));
  CHECK(repaired->done == Done{"parts with a small share of the area dropped: 1"});
  add(mesh, cube(5.0), {60.0, 0.0, 0.0});
  CHECK(volume_of(repair_mesh(mesh, {})) == Approx(1125.0));
}

TEST_CASE("small holes are closed, longer ones refused", "[geometry][mesh]") {
  const TriangleMesh whole = tube(40.0, 300.0, 24, 20, true);
  const TriangleMesh holed = without(without(whole, 401), 400);
  const auto repaired = repair_mesh(holed, closing(60.0, OpenEnd::leave_open));
  REQUIRE(repaired.has_value());
  CHECK(repaired->done == Done{"holes closed: 1"});
  const auto check = check_mesh(repaired->mesh);
  REQUIRE(check->holes.size() == 1);
  CHECK(check->holes[0].edges == 24);
  CHECK(check->facing == Facing::outward);
  CHECK(check->area_mm2 == Approx(check_mesh(whole)->area_mm2).epsilon(1e-4));

  CHECK(refusal(holed, closing(40.0, OpenEnd::leave_open)) ==
        "holes too long to close (circumference 51 mm, 251 mm)");
  CHECK(refusal(whole, closing(60.0)) == "holes too long to close (circumference 251 mm)");
  CHECK(refusal(without(cube(), 3)) == "holes too long to close (circumference 34 mm)");
}

// A prism of 24 sides: its foot has the area 24 / 2 r^2 sin(15 deg).
TEST_CASE("an open end is capped or left as the caller wants", "[geometry][mesh]") {
  const double foot_mm2 = 12.0 * 1600.0 * std::sin(std::numbers::pi / 12.0);
  const auto capped =
      repair_mesh(inside_out(tube(40.0, 300.0, 24, 20, true)), closing(20.0, OpenEnd::cap));
  CHECK(volume_of(capped) == Approx(300.0 * foot_mm2));
  CHECK(capped->done ==
        Done{"open end of 251 mm closed by a cap", "parts turned inside out to face outward: 1"});
  const auto open =
      repair_mesh(inside_out(tube(40.0, 300.0, 24, 20, true)), closing(20.0, OpenEnd::leave_open));
  REQUIRE(open.has_value());
  CHECK(check_mesh(open->mesh)->facing == Facing::outward);
  CHECK(check_mesh(open->mesh)->holes.size() == 1);
  CHECK(refusal(tube(40.0, 300.0, 24, 20, false), closing(20.0, OpenEnd::cap)) ==
        "holes too long to close (circumference 251 mm, 251 mm)");
}

TEST_CASE("a cap over a rim of many edges is found in short time", "[geometry][mesh]") {
  const auto capped = repair_mesh(tube(40.0, 20.0, 500, 1, true), closing(0.0, OpenEnd::cap));
  CHECK(volume_of(capped) ==
        Approx(20.0 * 250.0 * 1600.0 * std::sin(2.0 * std::numbers::pi / 500.0)).epsilon(1e-9));
}

TEST_CASE("what no repair makes sound is refused with its reason", "[geometry][mesh]") {
  CHECK(refusal(TriangleMesh{}) == "the mesh has no triangles");
  CHECK(refusal(self_crossing(), closing(0.0, OpenEnd::leave_open)).ends_with("triangles cross"));
  TriangleMesh sheet;
  sheet.vertices_mm = {{0, 0, 0}, {10, 0, 0}, {10, 10, 0}, {0, 10, 0}};
  sheet.triangles = {{0, 1, 2}, {0, 2, 3}};
  CHECK(refusal(sheet, closing(0.0, OpenEnd::leave_open)) ==
        "part of the surface is too flat to tell its outside");
  TriangleMesh torn;
  for (int i = 0; i < 150; ++i) add(torn, cube(1.0), {2.0 * i, 0.0, 0.0});
  CHECK(refusal(torn) == "the surface is torn into 150 small parts");
  TriangleMesh line;
  line.vertices_mm = {{0, 0, 0}, {1, 1, 1}, {2, 2, 2}, {3, 3, 3}};
  line.triangles = {{0, 1, 2}, {1, 2, 3}};
  CHECK(refusal(line) == "no triangle has an area");
  TriangleMesh nan = cube();
  nan.vertices_mm[4].y() = std::numeric_limits<double>::infinity();
  CHECK(refusal(nan) == "vertex 5 has a coordinate that is not finite");
  for (const OpenEnd end : {OpenEnd::cap, OpenEnd::leave_open}) {
    CHECK(refusal(moebius_band(), closing(0.0, end)) ==
          "triangles still join in a way that no surface with an outside has");
  }
}

// Turned, doubled, torn, and joined at random: an answer or a refusal, and every answer is sound.
TEST_CASE("any tangle of triangles is repaired or refused", "[geometry][mesh]") {
  std::uint32_t state = 12345;
  const auto below = [&](std::uint32_t n) {
    state = state * 1664525U + 1013904223U;
    return (state >> 8) % n;
  };
  int answered = 0;
  int refused = 0;
  for (int round = 0; round < 150; ++round) {
    TriangleMesh mesh = tube(20.0, 50.0, 6, 3, true);
    const auto vertices = static_cast<std::uint32_t>(mesh.vertices_mm.size());
    for (int damage = 0; damage < 1 + round % 6; ++damage) {
      const std::uint32_t t = below(static_cast<std::uint32_t>(mesh.triangles.size()));
      switch (below(6)) {
        case 0:
          std::swap(mesh.triangles[t][0], mesh.triangles[t][1]);
          break;
        case 1:
          mesh = without(mesh, t);
          break;
        case 2:
          mesh.triangles[t].at(below(3)) = below(vertices);
          break;
        case 3:
          mesh.triangles.push_back({below(vertices), below(vertices), below(vertices)});
          break;
        case 4:
          mesh.vertices_mm[below(vertices)] = mesh.vertices_mm[below(vertices)];
          break;
        default: {
          const auto& [a, b, c] = mesh.triangles[t];
          mesh.vertices_mm[a] = 0.5 * (mesh.vertices_mm[b] + mesh.vertices_mm[c]);
        }
      }
    }
    RepairOptions options = closing(60.0, OpenEnd::cap);
    options.most_self_intersections = below(2) == 0 ? 0 : 1000;
    const auto repaired = repair_mesh(mesh, options);
    ++(repaired ? answered : refused);
    if (!repaired) {
      CHECK_FALSE(repaired.error().what.empty());
      continue;
    }
    INFO("round " << round);
    const auto check = check_mesh(repaired->mesh);
    REQUIRE(check.has_value());
    CHECK(check->closed);
    CHECK(check->facing == Facing::outward);
    CHECK(check->non_manifold_edges + check->non_manifold_vertices + check->inconsistent_edges ==
          0);
    CHECK(check->degenerate_triangles == 0);
    CHECK(check->self_intersections <= options.most_self_intersections);
  }
  CHECK(answered > 20);
  CHECK(refused > 20);
}
