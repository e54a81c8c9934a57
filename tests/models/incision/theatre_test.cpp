#include <cmath>

#include "incision_fixture.hpp"

namespace endplate::incision {
namespace {

Theatre theatre_of(const casefile::Limb& limb) {
  auto theatre = Theatre::from(limb::own_tables(), own_tree(), limb);
  if (!theatre) FAIL(theatre.error().problems.front().what);
  return *std::move(theatre);
}

SkinPlace placed(const Theatre& theatre, const std::string& words) {
  auto place = theatre.place(marks(words).front());
  if (!place) FAIL(place.error().problems.front().what);
  return *std::move(place);
}

PlannedCut cut_of(CutKind kind, const std::string& words) {
  PlannedCut cut;
  cut.kind = kind;
  cut.marks = marks(words);
  return cut;
}

}  // namespace

TEST_CASE("a mark stands on the skin, on the side that was named, facing in", "[incision]") {
  const Theatre theatre = theatre_of({});
  for (const auto& [words, region] :
       {std::pair{"olecranon tip, 150 proximal, on posterior", "posterior arm"},
        std::pair{"olecranon tip, 150 proximal, on anterior", "anterior arm"},
        std::pair{"lateral epicondyle, 100 proximal, on lateral", "lateral arm"},
        std::pair{"medial epicondyle", "medial elbow"},
        std::pair{"Lister tubercle, 60 proximal, on posterior", "posterior forearm"}}) {
    INFO(words);
    const SkinPlace place = placed(theatre, words);
    CHECK(place.region.starts_with(region));
    CHECK(std::abs(theatre.depth_mm(place.position_mm)) < 0.01);
    CHECK(place.inward.norm() == Approx(1.0));
    CHECK(theatre.depth_mm(place.position_mm + 3.0 * place.inward) > 2.0);
  }
}

TEST_CASE("a mark lies as far along the limb as was said", "[incision]") {
  const Theatre theatre = theatre_of({});
  const SkinPlace low = placed(theatre, "olecranon tip, 50 proximal, on posterior");
  const SkinPlace high = placed(theatre, "olecranon tip, 150 proximal, on posterior");
  CHECK(high.position_mm.y() - low.position_mm.y() == Approx(100.0).margin(1.0));
  CHECK(high.from_landmark_mm == -150.0);
  CHECK(high.distal.y() == Approx(-1.0).margin(0.01));
}

TEST_CASE("marks of the left limb mirror those of the right", "[incision]") {
  casefile::Limb left;
  left.side = Side::left;
  const std::string words = "lateral epicondyle, 20 proximal, 10 anterior";
  const SkinPlace a = placed(theatre_of({}), words);
  const SkinPlace b = placed(theatre_of(left), words);
  CHECK((a.position_mm.cwiseProduct(Eigen::Vector3d(1, 1, -1)) - b.position_mm).norm() < 1e-6);
  CHECK((a.inward.cwiseProduct(Eigen::Vector3d(1, 1, -1)) - b.inward).norm() < 1e-6);
}

TEST_CASE("a mark moves with the skin when the elbow bends", "[incision]") {
  casefile::Limb bent;
  bent.pose_deg = {{"elbow_flexion_deg", 90.0}};
  const SkinPlace wrist = placed(theatre_of(bent), "distal wrist crease");
  // The forearm points forward.
  CHECK(wrist.position_mm.x() > 200.0);
  CHECK(wrist.position_mm.y() > -40.0);
}

TEST_CASE("a landmark without a place, a cut without points and a depth of nothing are refused",
          "[incision]") {
  const Theatre theatre = theatre_of({});
  AtSkin neck;
  neck.landmark = "mastoid process, tip";
  const auto nowhere = theatre.place(neck);
  REQUIRE_FALSE(nowhere);
  CHECK(nowhere.error().fault == Fault::outside_model);
  const auto one = lay_cut(theatre, cut_of(CutKind::line, "pisiform"));
  REQUIRE_FALSE(one);
  CHECK(one.error().problems.front().place == "/points");
  CHECK_FALSE(lay_cut(theatre, cut_of(CutKind::pin, "pisiform; hook of hamate")));
  PlannedCut flat = cut_of(CutKind::pin, "pisiform");
  flat.depth_mm = 0.0;
  const auto depth = lay_cut(theatre, flat);
  REQUIRE_FALSE(depth);
  CHECK(depth.error().problems.front().place == "/depth_mm");
  // The armpit is not modelled.
  const auto armpit = theatre.place(marks("medial epicondyle, 290 proximal, on medial").front());
  REQUIRE_FALSE(armpit);
  CHECK(armpit.error().fault == Fault::outside_model);
}

TEST_CASE("a line runs over the skin from mark to mark and goes in to the bone", "[incision]") {
  const Theatre theatre = theatre_of({});
  const auto cut =
      lay_cut(theatre, cut_of(CutKind::line,
                              "olecranon tip, 250 proximal, on posterior; olecranon tip, 50 "
                              "proximal, on posterior"));
  REQUIRE(cut);
  CHECK(cut->length_mm > 199.0);
  CHECK(cut->length_mm < 210.0);
  for (const Station& station : cut->stations) {
    CHECK(std::abs(theatre.depth_mm(station.skin.position_mm)) < 0.1);
    const double deep_mm = (station.track.to_mm - station.track.from_mm).norm();
    CHECK(deep_mm > 10.0);
    CHECK(deep_mm < 70.0);
  }
  CHECK(cut->stations.front().along_mm == 0.0);
  CHECK(cut->stations.back().along_mm == Approx(cut->length_mm));
}

TEST_CASE("a given depth is kept, and a needle stays short of bone without one", "[incision]") {
  const Theatre theatre = theatre_of({});
  PlannedCut pin = cut_of(CutKind::pin, "lateral epicondyle, 100 proximal, on lateral");
  pin.depth_mm = 7.5;
  const auto given = lay_cut(theatre, pin);
  REQUIRE(given);
  const geometry::Track& track = given->stations.front().track;
  CHECK((track.to_mm - track.from_mm).norm() == Approx(7.5));
  const auto needle =
      lay_cut(theatre, cut_of(CutKind::injection, "lateral epicondyle, 100 proximal, on lateral"));
  REQUIRE(needle);
  const geometry::Track& short_track = needle->stations.front().track;
  CHECK((short_track.to_mm - short_track.from_mm).norm() <= kInjection_mm);
}

TEST_CASE("a pin goes where it is aimed", "[incision]") {
  const Theatre theatre = theatre_of({});
  PlannedCut pin = cut_of(CutKind::pin, "lateral epicondyle, 100 proximal, on lateral");
  pin.aimed_at = marks("medial epicondyle, 100 proximal, on medial").front();
  pin.depth_mm = 40.0;
  const auto cut = lay_cut(theatre, pin);
  REQUIRE(cut);
  const geometry::Track& track = cut->stations.front().track;
  CHECK((track.to_mm - track.from_mm).normalized().z() < -0.95);
}

}  // namespace endplate::incision
