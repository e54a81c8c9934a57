#include "models/limb/nerve_bed.hpp"

#include <catch2/catch.hpp>

#include "limb_fixture.hpp"
#include "models/limb/bed_answer.hpp"

namespace endplate::limb {
namespace {

struct Fixture {
  Atlas atlas = Atlas::fitted(own_tables()).value();
  LimbJoints joints = LimbJoints::from(own_tables()).value();
  BodyEnvelope envelope = BodyEnvelope::from(own_tables()).value();
  MotionParameters parameters = MotionParameters::from(own_tables()).value();
  std::vector<BedPlan> plans = bed_plans(own_tables(), atlas).value();

  NerveBed bed(std::size_t plan, const SegmentFrames& frames) const {
    return {plans[plan], atlas, frames, joints, envelope, parameters};
  }
  BedMotion moved(std::size_t plan, const SegmentFrames& frames,
                  const std::map<std::string, double>& pose) const {
    const PosedSpace space(frames, joints, pose_from(pose));
    const PosedNerves nerves(atlas.landmarks(), envelope, frames, space);
    return motion(bed(plan, frames), nerves);
  }
};

const Fixture& fixture() {
  static const Fixture made;
  return made;
}

}  // namespace

TEST_CASE("In the anatomical position no bed is longer and no nerve strained", "[limb][motion]") {
  for (std::size_t plan = 0; plan < fixture().plans.size(); ++plan) {
    const BedMotion rest = fixture().moved(plan, SegmentFrames(), {});
    INFO(fixture().plans[plan].bed);
    CHECK(rest.lengthening_mm == Approx(0.0).margin(1e-9));
    for (const double strain : rest.slide.strain) CHECK(std::abs(strain) < 1e-9);
  }
}

TEST_CASE("A bed goes from the foramen to the fingertip without a gap", "[limb][motion]") {
  const SegmentFrames frames;
  for (std::size_t plan = 0; plan < fixture().plans.size(); ++plan) {
    const NerveBed bed = fixture().bed(plan, frames);
    INFO(bed.nerve());
    CHECK(bed.rest_mm().back() > 700.0);
    CHECK(bed.rest_mm().back() < 1000.0);
    for (std::size_t i = 1; i < bed.rest_way_mm().size(); ++i) {
      CHECK((bed.rest_way_mm()[i] - bed.rest_way_mm()[i - 1]).norm() < 8.0);
    }
  }
}

TEST_CASE("The beds of both sides lengthen alike", "[limb][motion]") {
  const std::map<std::string, double> pose{{"shoulder_abduction_deg", 60.0},
                                           {"elbow_flexion_deg", 70.0},
                                           {"forearm_pronation_deg", 80.0},
                                           {"wrist_extension_deg", 40.0},
                                           {"fingers_flexion_deg", 50.0}};
  for (std::size_t plan = 0; plan < fixture().plans.size(); ++plan) {
    const BedMotion right = fixture().moved(plan, SegmentFrames(), pose);
    const BedMotion left = fixture().moved(plan, SegmentFrames({}, Side::left), pose);
    CHECK(right.lengthening_mm == Approx(left.lengthening_mm).margin(1e-9));
  }
}

TEST_CASE("Beds answer for places from the armpit to the wrist, each between limits",
          "[limb][motion]") {
  const auto& f = fixture();
  const auto posed =
      PosedBeds::from(own_tables(), f.atlas, SegmentFrames(), f.joints, f.envelope,
                      pose_from({{"elbow_flexion_deg", 100.0}, {"wrist_extension_deg", 50.0}}));
  REQUIRE(posed.has_value());
  const std::vector<BedAnswer>& answers = posed->answers();
  REQUIRE(answers.size() == 3);
  for (const BedAnswer& answer : answers) {
    CHECK(answer.stations.size() == 5);
    CHECK_FALSE((answer.nerve != "radial nerve" && answer.sources.empty()));
    for (const StationMotion& station : answer.stations) {
      CHECK(station.excursion_mm.p05 <= station.excursion_mm.p50);
      CHECK(station.excursion_mm.p50 <= station.excursion_mm.p95);
    }
  }
  // Wrist extension draws the median nerve toward the hand, and elbow flexion the ulnar nerve.
  CHECK(answers.at(0).stations.back().excursion_mm.p50 > 3.0);
  CHECK(answers.at(1).stations[2].excursion_mm.p05 > 1.0);
  CHECK(answers.at(1).stations[2].strain.p50 > 0.01);
}

// Common practice: elbow flexion tightens the ulnar nerve and eases median and radial.
TEST_CASE("Elbow flexion lengthens the bed behind the elbow and shortens those in front",
          "[limb][motion]") {
  for (std::size_t plan = 0; plan < fixture().plans.size(); ++plan) {
    const BedMotion moved = fixture().moved(plan, SegmentFrames(), {{"elbow_flexion_deg", 120.0}});
    const bool ulnar = fixture().plans[plan].bed == "ulnar";
    INFO(fixture().plans[plan].bed << " " << moved.lengthening_mm);
    CHECK((ulnar ? moved.lengthening_mm > 8.0 : moved.lengthening_mm < -20.0));
  }
}

TEST_CASE("A small limb's beds lengthen in proportion", "[limb][motion]") {
  const SegmentScale half{0.5, 0.5, 0.5, 0.5};
  const std::map<std::string, double> pose{{"elbow_flexion_deg", 90.0}};
  const double large = fixture().moved(1, SegmentFrames(), pose).lengthening_mm;
  const double small = fixture().moved(1, SegmentFrames(half), pose).lengthening_mm;
  CHECK(small == Approx(0.5 * large).epsilon(0.2));
}

}  // namespace endplate::limb
