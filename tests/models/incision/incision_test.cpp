// What an incision comes near to, as every textbook of approaches has it (common practice).
#include "incision_fixture.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::incision {
namespace {

PlannedCut cut_of(CutKind kind, const std::string& words) {
  PlannedCut cut;
  cut.kind = kind;
  cut.marks = marks(words);
  return cut;
}

const char* const kPosterior =
    "olecranon tip, 250 proximal, on posterior; olecranon tip, 50 proximal, on posterior";

double chance_within(const IncisionAnswer& answer, const std::string& nerve, double mm) {
  const NerveNearby* near = find(answer, nerve);
  if (near == nullptr) return 0.0;
  for (const ChanceWithin& within : near->chance_within) {
    if (within.mm == mm) return within.chance;
  }
  FAIL("no such distance");
  return 0.0;
}

}  // namespace

TEST_CASE("a posterior approach to the humerus crosses the radial nerve in its middle",
          "[incision]") {
  const IncisionAnswer answer = answer_of(case_of(Side::right), cut_of(CutKind::line, kPosterior));
  CHECK(chance_within(answer, "radial nerve", 5.0) > 0.95);
  const NerveNearby* radial = find(answer, "radial nerve");
  REQUIRE(radial != nullptr);
  CHECK(radial->at_along_mm > 50.0);
  CHECK(radial->at_along_mm < 150.0);
  // Gerwin 1996 and AP_022: nowhere on the posterior surface of the distal 100 mm of the humerus.
  // What runs there is its branch to anconeus, within the medial head of triceps (textbook).
  const IncisionAnswer distal = answer_of(
      case_of(Side::right),
      cut_of(CutKind::line,
             "olecranon tip, 90 proximal, on posterior; olecranon tip, 50 proximal, on posterior"));
  CHECK(chance_within(distal, "radial nerve", 10.0) < 0.1);
  CHECK(chance_within(distal, "radial branch to medial head of triceps and anconeus", 20.0) > 0.5);
}

TEST_CASE("a cut behind the medial epicondyle meets the ulnar nerve, one in front does not",
          "[incision]") {
  const auto behind =
      answer_of(case_of(Side::right), cut_of(CutKind::portal, "medial epicondyle, 10 posterior"));
  CHECK(chance_within(behind, "ulnar nerve", 10.0) > 0.8);
  const auto front =
      answer_of(case_of(Side::right), cut_of(CutKind::portal, "medial epicondyle, 25 anterior"));
  CHECK(chance_within(front, "ulnar nerve", 10.0) <
        chance_within(behind, "ulnar nerve", 10.0) - 0.3);
}

TEST_CASE("an open release of the carpal tunnel comes near the median nerve", "[incision]") {
  const auto answer =
      answer_of(case_of(Side::right),
                cut_of(CutKind::line, "distal wrist crease; Kaplan cardinal line, on anterior"));
  CHECK(chance_within(answer, "median nerve", 10.0) > 0.9);
  CHECK(chance_within(answer, "recurrent motor branch of median nerve", 20.0) > 0.8);
  CHECK(chance_within(answer, "radial nerve", 20.0) == 0.0);
}

TEST_CASE("the depth of a cut decides what it comes near to", "[incision]") {
  PlannedCut cut = cut_of(CutKind::line, kPosterior);
  cut.depth_mm = 2.0;
  const IncisionAnswer shallow = answer_of(case_of(Side::right), cut);
  CHECK(chance_within(shallow, "radial nerve", 10.0) < 0.05);
}

TEST_CASE("left and right come near to the same", "[incision]") {
  const PlannedCut cut = cut_of(CutKind::line, kPosterior);
  const IncisionAnswer right = answer_of(case_of(Side::right), cut);
  const IncisionAnswer left = answer_of(case_of(Side::left), cut);
  REQUIRE(right.nerves.size() == left.nerves.size());
  for (const NamedNearby& named : right.nerves) {
    const NerveNearby* other = find(left, named.nerve);
    REQUIRE(other != nullptr);
    CHECK(other->nearest_mm.p50 == Approx(named.near.nearest_mm.p50).margin(0.2));
  }
}

TEST_CASE("a limb of a given size leaves less open than one of unknown size", "[incision]") {
  casefile::Case known = case_of(Side::right);
  known.limb.measured_mm = {{"acromion to lateral epicondyle", 312.0}};
  PlannedCut pin = cut_of(CutKind::pin, "lateral epicondyle, 130 proximal, on lateral");
  const auto spread = [&](const casefile::Case& patient) {
    const IncisionAnswer answer = answer_of(patient, pin, 1000);
    const NerveNearby* radial = find(answer, "radial nerve");
    REQUIRE(radial != nullptr);
    return radial->nearest_mm.p95 - radial->nearest_mm.p05;
  };
  CHECK(spread(known) < spread(case_of(Side::right)));
}

TEST_CASE("samples of the lines lie in the limb and follow one another", "[incision]") {
  const auto limb = limb::CaseLimb::from(limb::own_tables(), own_tree(), {}).value();
  const limb::SegmentFrames frames(limb.size().mean_scale());
  const auto pose = limb::CasePose::from(limb::own_tables(), frames, {}).value();
  const auto few =
      limb::sample_lines(limb::own_tables(), own_tree(), limb, pose, {}, Side::right, 8.0, 5, 1)
          .value();
  const auto more =
      limb::sample_lines(limb::own_tables(), own_tree(), limb, pose, {}, Side::right, 8.0, 40, 1)
          .value();
  REQUIRE(few.size() == more.size());
  for (std::size_t n = 0; n < few.size(); ++n) {
    INFO(own_tree().node(few[n].nerve).name);
    const std::size_t places = few[n].mean_mm.size();
    for (std::size_t k = 0; k < few[n].samples_mm.size(); ++k) {
      // Limb i is the same whatever the number asked for.
      CHECK(few[n].samples_mm[k] == more[n].samples_mm[k]);
    }
    if (!limb.on_course(few[n].nerve)) continue;
    Eigen::Vector3d mean = Eigen::Vector3d::Zero();
    for (std::size_t i = 0; i < 40; ++i) mean += more[n].samples_mm[i * places + places / 2];
    CHECK((mean / 40.0 - more[n].mean_mm[places / 2]).norm() < 8.0);
  }
}

}  // namespace endplate::incision
