#include "models/scan/scan_landmarks.hpp"

#include <catch2/catch.hpp>

#include "../limb/limb_fixture.hpp"

namespace endplate::scan {

TEST_CASE("landmarks of a scan move with their bone or finger", "[scan]") {
  const auto landmarks = ScanLandmarks::from(limb::own_tables()).value();
  const limb::SegmentFrames frames;
  const auto joints = limb::LimbJoints::from(limb::own_tables()).value();
  const limb::Pose bent = limb::pose_from({{"shoulder_abduction_deg", 60.0},
                                           {"elbow_flexion_deg", 90.0},
                                           {"fingers_flexion_deg", 60.0}});
  const limb::PosedSpace space(frames, joints, bent);
  const auto at = [&](const char* name) {
    return landmarks.all()[landmarks.find(name).value()].posed_mm(frames, space);
  };
  const auto neutral = [&](const char* name) {
    const ScanLandmark& landmark = landmarks.all()[landmarks.find(name).value()];
    return frames.to_limb(landmark.segment, landmark.place);
  };
  // The humerus carries the epicondyles, the ulna the olecranon, the scapula the acromion.
  CHECK((at("lateral epicondyle") - at("medial epicondyle")).norm() ==
        Approx((neutral("lateral epicondyle") - neutral("medial epicondyle")).norm()));
  CHECK((at("olecranon tip") - at("ulnar styloid")).norm() ==
        Approx((neutral("olecranon tip") - neutral("ulnar styloid")).norm()));
  CHECK(at("acromion, lateral edge")
            .isApprox(space.of_bone(limb::Bone::scapula) * neutral("acromion, lateral edge")));
  // A bent finger brings its tip nearer to the wrist.
  CHECK((at("tip of middle finger") - at("pisiform")).norm() <
        (neutral("tip of middle finger") - neutral("pisiform")).norm() - 20.0);
}

TEST_CASE("a name of a landmark is found whatever its capitals", "[scan]") {
  const auto landmarks = ScanLandmarks::from(limb::own_tables()).value();
  CHECK(landmarks.find("PISIFORM").has_value());
  CHECK_FALSE(landmarks.find("patella").has_value());
  CHECK(landmarks.nearest("radial stiloid").front() == "radial styloid");
  CHECK(landmarks.all().size() == 20);
}

}  // namespace endplate::scan
