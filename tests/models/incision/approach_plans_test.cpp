// The marks are the trade's textbook lines or say that they are assumed (approach_plans.csv); the
// rows behind them are those of approaches.csv.
#include "models/incision/approach_plans.hpp"

#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "../limb/limb_fixture.hpp"
#include "models/casefile/read.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::incision {
namespace {

using Eigen::Vector3d;

const ApproachPlans& plans() {
  static const auto read = ApproachPlans::from(limb::own_tables());
  REQUIRE(read.has_value());
  return *read;
}

// The side of a segment that a word of the tables names; radial and ulnar, palmar and dorsal are
// those of the supinated forearm and the hand.
Vector3d side(const limb::SegmentFrames& frames, limb::Segment segment, std::string_view word) {
  const Vector3d front = frames.anterior(segment);
  const Vector3d out = frames.lateral(segment);
  if (word == "anterior" || word == "palmar") return front;
  if (word == "posterior" || word == "dorsal") return -front;
  if (word == "lateral" || word == "radial") return out;
  if (word == "medial" || word == "ulnar") return -out;
  if (word == "anterolateral") return front + out;
  if (word == "anteromedial") return front - out;
  if (word == "posterolateral" || word == "dorsoradial") return out - front;
  if (word == "dorso-ulnar") return -front - out;
  return Vector3d::Zero();
}

}  // namespace

TEST_CASE("a pose in a table is keys with degrees", "[incision]") {
  const auto pose = pose_from_text("elbow_flexion_deg=90;forearm_pronation_deg=75.5");
  REQUIRE(pose.has_value());
  CHECK(pose->at("elbow_flexion_deg") == 90.0);
  CHECK(pose->at("forearm_pronation_deg") == 75.5);
  CHECK(pose_from_text("")->empty());
  CHECK_FALSE(pose_from_text("elbow_flexion_deg 90").has_value());
  CHECK_FALSE(pose_from_text("elbow_flexion_deg=bent").has_value());
}

TEST_CASE("every approach of the ledger is drawn or says why not", "[incision]") {
  std::map<std::string, std::set<std::string>> rows_of;
  for (const evidence::Row row : limb::own_tables().table("approaches")) {
    rows_of[std::string(row.text("approach"))].insert(std::string(row.text("id")));
  }
  for (const auto& [approach, rows] : rows_of) {
    INFO(approach);
    const ApproachPlan* plan = plans().find(approach);
    CHECK((plan != nullptr) == plans().why_not(approach).empty());
    if (plan == nullptr) continue;
    CHECK(std::set<std::string>(plan->rows.begin(), plan->rows.end()) == rows);
    CHECK_FALSE(plan->reason.empty());
  }
  CHECK(plans().find("no such approach") == nullptr);
}

TEST_CASE("every approach lies on the limb in its pose, on the side that it names", "[incision]") {
  const auto& package = limb::own_tables();
  const auto tree = anatomy::NerveTree::from(package).value();
  const auto limits = casefile::pose_limits(package);
  std::map<std::map<std::string, double>, Theatre> theatres;
  for (const ApproachPlan& plan : plans().plans()) {
    INFO(plan.cut.label);
    for (const auto& [key, deg] : plan.pose_deg) {
      const auto limit = limits.find(key);
      REQUIRE(limit != limits.end());
      CHECK(deg >= limit->second.low_deg);
      CHECK(deg <= limit->second.high_deg);
    }
    auto found = theatres.find(plan.pose_deg);
    if (found == theatres.end()) {
      casefile::Limb limb;
      limb.pose_deg = plan.pose_deg;
      found = theatres.emplace(plan.pose_deg, Theatre::from(package, tree, limb).value()).first;
    }
    const Theatre& theatre = found->second;
    const auto cut = lay_cut(theatre, plan.cut);
    if (!cut) {
      for (const Problem& problem : cut.error().problems) UNSCOPED_INFO(problem.what);
    }
    REQUIRE(cut.has_value());
    const limb::SegmentFrames frames(theatre.limb().size().mean_scale(), theatre.side());
    const limb::SkinMesh rest =
        limb::make_skin(frames, theatre.pose().envelope, theatre.pose().joints, 1);
    for (const Station& station : cut->stations) {
      CHECK((station.track.to_mm - station.track.from_mm).norm() > 0.5);
      const auto& corners = rest.mesh.triangles.at(station.skin.on_skin.triangle);
      const auto corner = [&](std::size_t k) { return rest.mesh.vertices_mm[corners[k]]; };
      const Vector3d outward = (corner(1) - corner(0)).cross(corner(2) - corner(0)).normalized();
      const Vector3d named = side(frames, station.skin.segment, plan.surface);
      REQUIRE(named.norm() > 0.5);
      INFO(fmt::format("{:.0f} mm along, {}", station.along_mm, station.skin.region));
      CHECK(outward.dot(named.normalized()) > 0.0);
    }
  }
}

}  // namespace endplate::incision
