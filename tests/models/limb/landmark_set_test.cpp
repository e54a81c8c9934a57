#include "models/limb/landmark_set.hpp"

#include "limb_fixture.hpp"

using namespace endplate;
using namespace endplate::limb;

TEST_CASE("the landmarks are read with their provenance and the reason for it", "[models][limb]") {
  const auto set = LandmarkSet::from(own_tables());
  REQUIRE(set.has_value());
  CHECK(set->landmarks().size() >= 95);
  for (const Landmark& landmark : set->landmarks()) {
    INFO(landmark.name);
    CHECK_FALSE(landmark.reason.empty());
    CHECK(landmark.sd_mm <= 10.0);
  }
  CHECK(set->find("lateral epicondyle") != nullptr);
  CHECK(set->find("no such landmark") == nullptr);
  CHECK_FALSE(set->position_mm("no such landmark", SegmentFrames()).has_value());
}

TEST_CASE("landmarks lie where anatomy has them on either side", "[models][limb]") {
  const auto set = LandmarkSet::from(own_tables());
  REQUIRE(set.has_value());
  for (const Side side : {Side::right, Side::left}) {
    const SegmentFrames frames({}, side);
    const double right = side == Side::right ? 1.0 : -1.0;
    const auto at = [&](const char* name) {
      Eigen::Vector3d position = set->position_mm(name, frames).value();
      position.z() *= right;
      return position;
    };
    CHECK(at("lateral epicondyle").z() > at("medial epicondyle").z());
    CHECK(at("olecranon tip").x() < at("medial epicondyle").x());
    CHECK(at("radial styloid").z() > at("ulnar styloid").z());
    CHECK(at("Lister tubercle").x() < at("bistyloid line").x());
    CHECK(at("pisiform").x() > at("6U wrist portal").x());
    CHECK(at("pisiform").z() < at("scaphoid tubercle").z());
    CHECK(at("hook of hamate").y() < at("pisiform").y());
    CHECK(at("coracoid process tip").x() > at("acromion, posterolateral corner").x());
    CHECK(at("acromion, lateral edge").y() > at("surgical neck of humerus").y());
    CHECK(at("surgical neck of humerus").y() > at("deltoid insertion").y());
    // The tip of the radial styloid lies distal to that of the ulnar styloid.
    const auto& radial = *set->find("radial styloid");
    CHECK(radial.place.fraction > set->find("ulnar styloid")->place.fraction);
  }
}

TEST_CASE("each landmark moves with its bone", "[models][limb]") {
  const auto set = LandmarkSet::from(own_tables());
  REQUIRE(set.has_value());
  const auto bone = [&](const char* name) { return set->find(name)->bone; };
  CHECK(bone("medial epicondyle") == Bone::humerus);
  CHECK(bone("olecranon tip") == Bone::ulna);
  CHECK(bone("ulnar head, point not stated") == Bone::ulna);
  CHECK(bone("radial head, point not stated") == Bone::radius);
  CHECK(bone("radial styloid") == Bone::radius);
  CHECK(bone("acromion, lateral edge") == Bone::scapula);
  CHECK(bone("coracoid process tip") == Bone::scapula);
  CHECK(bone("clavicle, midpoint") == Bone::clavicle);
  CHECK(bone("pisiform") == Bone::hand);
  CHECK_FALSE(bone("thenar crease").has_value());
}

TEST_CASE("in a pose landmarks of one bone keep their distances", "[models][limb]") {
  const auto set = LandmarkSet::from(own_tables());
  REQUIRE(set.has_value());
  const auto joints = LimbJoints::from(own_tables());
  REQUIRE(joints.has_value());
  const SegmentFrames frames;
  const PosedSpace space(frames, *joints,
                         pose_from({{"elbow_flexion_deg", 100.0},
                                    {"forearm_pronation_deg", 120.0},
                                    {"shoulder_abduction_deg", 60.0}}));
  const auto apart = [&](const char* one, const char* other, bool posed) {
    const auto at = [&](const char* name) {
      const Landmark& landmark = *set->find(name);
      return posed ? LandmarkSet::posed_mm(landmark, frames, space)
                   : LandmarkSet::position_mm(landmark, frames);
    };
    return (at(one) - at(other)).norm();
  };
  const auto kept = [&](const char* one, const char* other) {
    return apart(one, other, true) == Approx(apart(one, other, false));
  };
  CHECK(kept("lateral epicondyle", "medial epicondyle"));
  CHECK(kept("radial styloid", "Lister tubercle"));
  CHECK(kept("olecranon tip", "ulnar styloid"));
  CHECK_FALSE(kept("olecranon tip", "medial epicondyle"));
  CHECK_FALSE(kept("radial styloid", "ulnar styloid, pin"));
  CHECK_FALSE(kept("acromion, lateral edge", "lateral epicondyle"));
}
