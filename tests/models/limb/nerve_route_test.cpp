#include "models/limb/nerve_route.hpp"

#include <catch2/catch.hpp>
#include <map>

#include "limb_fixture.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/case_limb_course.hpp"

namespace endplate::limb {
namespace {

Atlas own_atlas() {
  auto atlas = Atlas::fitted(own_tables());
  REQUIRE(atlas.has_value());
  return *std::move(atlas);
}

}  // namespace

TEST_CASE("Every nerve has a route with a reason for whatever is assumed", "[limb]") {
  const auto tree = anatomy::NerveTree::from(own_tables());
  REQUIRE(tree.has_value());
  const auto routes = read_nerve_routes(own_tables(), *tree);
  REQUIRE(routes.has_value());
  REQUIRE(routes->size() == tree->size());
  for (anatomy::NodeIndex i = 0; i < tree->size(); ++i) {
    INFO(tree->node(i).name);
    const NerveRoute& route = (*routes)[i];
    CHECK(route.ends.has_value() != (route.length_mm > 0.0));
    REQUIRE(route.departures.size() == tree->node(i).parents.size());
    for (const Departure& departure : route.departures) {
      CHECK((departure.provenance != evidence::Provenance::assumed || !departure.reason.empty()));
    }
  }
}

TEST_CASE("The rows that a route names are rows of the tables", "[limb]") {
  std::map<std::string, double> published;  // mean by id, 0 without
  for (const char* name : {"landmark_distances", "nerve_paths", "anthropometry"}) {
    const evidence::Table& table = own_tables().table(name);
    const char* mean = table.has_column("mean_mm") ? "mean_mm" : "mean";
    for (const evidence::Row row : table) {
      published.emplace(row.text("id"), row.number(mean).value_or(0.0));
    }
  }
  int compared = 0;
  for (const evidence::Row row : own_tables().table("nerve_routes")) {
    const auto rows = row.list("rows");
    for (const std::string& id : rows) {
      INFO(row.text("node") << ": " << id);
      CHECK(published.contains(id));
    }
    // A figure that is read from one row, without arithmetic, is that row's.
    const auto length = row.number("length_mm");
    if (row.text("provenance") != "read" || rows.size() != 1 || !length) continue;
    if (!row.text("reason").empty()) continue;
    INFO(row.text("node"));
    CHECK(*length == published.at(rows.front()));
    ++compared;
  }
  CHECK(compared > 10);
  for (const evidence::Row row : own_tables().table("nerve_route_places")) {
    for (const std::string& id : row.list("rows")) {
      INFO(row.text("nerve") << ": " << id);
      CHECK(published.contains(id));
    }
  }
}

TEST_CASE("The parts of a course in the segments make up its length", "[limb]") {
  const Atlas atlas = own_atlas();
  const SegmentFrames frames;
  for (std::size_t c = 0; c < atlas.courses().size(); ++c) {
    INFO(atlas.courses()[c].id);
    const CaseLimbCourse course(atlas.curve(c, frames), frames);
    CHECK(course.total_parts_mm().sum() == Approx(course.length_mm()));
    CHECK(course.parts_at(0.0).isZero());
    CHECK(course.parts_at(0.4 * course.length_mm()).sum() == Approx(0.4 * course.length_mm()));
  }
}

TEST_CASE("Scaling a course by its parts agrees with the course of the longer limb", "[limb]") {
  const Atlas atlas = own_atlas();
  const SegmentFrames ledger;
  for (const SegmentScale& scale :
       {SegmentScale{1.1, 1.0, 1.0, 1.0}, SegmentScale{1.0, 1.1, 1.0, 1.0},
        SegmentScale{1.0, 1.0, 1.1, 1.0}}) {
    const SegmentFrames longer(scale);
    for (const char* id : {"radial", "median", "ulnar", "musculocutaneous", "ain"}) {
      INFO(id << " " << scale.arm << " " << scale.forearm << " " << scale.hand);
      const auto c = static_cast<std::size_t>(atlas.find_course(id) - atlas.courses().data());
      const CaseLimbCourse course(atlas.curve(c, ledger), ledger);
      const CaseLimbCourse rebuilt(atlas.curve(c, longer), longer);
      const Eigen::Vector3d ratio(scale.arm, scale.forearm, scale.hand);
      CHECK(course.total_parts_mm().dot(ratio) == Approx(rebuilt.length_mm()).epsilon(0.015));
    }
  }
}

}  // namespace endplate::limb
