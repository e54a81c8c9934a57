#include "models/limb/skin_tape.hpp"

#include <numbers>

#include "limb_fixture.hpp"
#include "models/limb/landmark_set.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

const BodyEnvelope& envelope() {
  static const BodyEnvelope read = BodyEnvelope::from(own_tables()).value();
  return read;
}
const LimbJoints& joints() {
  static const LimbJoints read = LimbJoints::from(own_tables()).value();
  return read;
}
const SkinTape& straight() {
  static const SkinTape tape(SegmentFrames(), envelope(), joints(), {});
  return tape;
}

}  // namespace

TEST_CASE("a tape along the front of the forearm is as long as the forearm", "[limb][skin]") {
  const SegmentFrames frames;
  const Vector3d from = frames.to_limb(Segment::forearm, 0.35, 25.0, 0.0);
  const Vector3d to = frames.to_limb(Segment::forearm, 0.75, 15.0, 0.0);
  const auto length = straight().between_mm(from, to);
  REQUIRE(length);
  // 98 mm apart along the axis over a front that comes nearer to it by some 15 mm.
  CHECK(*length > 97.0);
  CHECK(*length < 102.0);
}

// Half of an ellipse with half-axes 41.5 and 40 mm, the section a third of the arm above the elbow:
// its girth 256 mm.
TEST_CASE("a tape round half of the arm is half its girth", "[limb][skin]") {
  const SegmentFrames frames;
  const auto length = straight().between_mm(frames.to_limb(Segment::humerus, 0.3333, 0.0, 30.0),
                                            frames.to_limb(Segment::humerus, 0.3333, 0.0, -30.0));
  REQUIRE(length);
  CHECK(*length == Approx(0.5 * std::numbers::pi * (43.0 + 40.0)).epsilon(0.02));
}

TEST_CASE("the tape is the same on both sides to the last digit", "[limb][skin]") {
  const Pose bent = pose_from({{"elbow_flexion_deg", 60.0}, {"shoulder_abduction_deg", 40.0}});
  const SegmentFrames right;
  const SegmentFrames left({}, Side::left);
  const auto length = [&](const SegmentFrames& frames) {
    const PosedSpace space(frames, joints(), bent);
    const SkinTape tape(frames, envelope(), joints(), bent);
    return tape
        .between_mm(space.of_bone(Bone::humerus) * frames.to_limb(Segment::humerus, 0.0, 0.0, 30.0),
                    space.of_bone(Bone::radius) * frames.to_limb(Segment::forearm, 0.9, 0.0, 24.0))
        .value();
  };
  CHECK(length(right) == length(left));
}

TEST_CASE("a bent elbow lengthens the tape behind it and shortens it in front", "[limb][skin]") {
  const SegmentFrames frames;
  const Pose bent = pose_from({{"elbow_flexion_deg", 90.0}});
  const SkinTape tape(frames, envelope(), joints(), bent);
  const PosedSpace space(frames, joints(), bent);
  const auto change = [&](double x_mm) {
    const Vector3d above = frames.to_limb(Segment::humerus, 0.4, x_mm, 0.0);
    const Vector3d below = frames.to_limb(Segment::forearm, 0.4, x_mm, 0.0);
    return tape.between_mm(space.of_bone(Bone::humerus) * above, space.of_bone(Bone::ulna) * below)
               .value() -
           straight().between_mm(above, below).value();
  };
  CHECK(change(-30.0) > 20.0);
  CHECK(change(30.0) < -20.0);
}

TEST_CASE("where the modelled skin is not the body's the tape says why it is absent",
          "[limb][skin]") {
  const SegmentFrames frames;
  const LandmarkSet set = LandmarkSet::from(own_tables()).value();
  const auto at = [&](const char* name) { return set.position_mm(name, frames).value(); };
  const auto clavicle = straight().between_mm(at("clavicle, midpoint"), at("medial epicondyle"));
  REQUIRE_FALSE(clavicle);
  CHECK(clavicle.error().find("the landmark lies") != std::string::npos);
  const auto armpit = straight().between_mm(at("medial epicondyle"),
                                            frames.to_limb(Segment::humerus, 0.87, 0.0, -40.0));
  REQUIRE_FALSE(armpit);
  CHECK(armpit.error().find("over the point") != std::string::npos);
  CHECK(straight().between_mm(at("acromion, lateral edge"), at("lateral epicondyle")).value() ==
        Approx(300.0).margin(25.0));
}

}  // namespace endplate::limb
