#include "models/limb/thumb_bend.hpp"

#include <catch2/catch.hpp>

#include "solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

Vector3d tip_moved(const ThumbPose& pose) {
  const SegmentFrames frames;
  const Vector3d tip = own_joints().centre_mm("thumb tip", frames);
  return ThumbBend(frames, own_joints(), pose).of_bone(ThumbBone::distal_phalanx) * tip - tip;
}

}  // namespace

TEST_CASE("Palmar abduction lifts the thumb from the palm, flexion takes it across",
          "[limb][pose]") {
  const SegmentFrames frames;
  const Vector3d palmar = frames.anterior(Segment::hand);
  const Vector3d ulnar = -frames.lateral(Segment::hand);
  ThumbPose abducted;
  abducted.palmar_abduction = 0.6;
  CHECK(tip_moved(abducted).dot(palmar) > 30.0);
  for (double ThumbPose::*angle :
       {&ThumbPose::cmc_flexion, &ThumbPose::mcp_flexion, &ThumbPose::ip_flexion}) {
    ThumbPose flexed;
    flexed.*angle = 0.5;
    CHECK(tip_moved(flexed).dot(ulnar) > 5.0);
    CHECK(std::abs(tip_moved(flexed).dot(palmar)) < 6.0);
  }
}

TEST_CASE("The bones of the thumb hold together at its joints", "[limb][pose]") {
  const SegmentFrames frames;
  const ThumbBend thumb(frames, own_joints(), {0.4, 0.2, 0.7, 1.0});
  const auto centre = [&](const char* joint) { return own_joints().centre_mm(joint, frames); };
  const Vector3d root = centre("thumb carpometacarpal");
  CHECK((thumb.of_bone(ThumbBone::metacarpal) * root - root).norm() < 1e-9);
  const Vector3d knuckle = centre("thumb metacarpophalangeal");
  CHECK((thumb.of_bone(ThumbBone::metacarpal) * knuckle -
         thumb.of_bone(ThumbBone::proximal_phalanx) * knuckle)
            .norm() < 1e-9);
  const Vector3d end = centre("thumb interphalangeal");
  CHECK((thumb.of_bone(ThumbBone::proximal_phalanx) * end -
         thumb.of_bone(ThumbBone::distal_phalanx) * end)
            .norm() < 1e-9);
}

TEST_CASE("Flesh on the thumb's axis goes with its bones, and with less share less far",
          "[limb][pose]") {
  const SegmentFrames frames;
  const ThumbBend thumb(frames, own_joints(), {0.4, 0.2, 0.7, 1.0});
  const Vector3d root = own_joints().centre_mm("thumb carpometacarpal", frames);
  const Vector3d tip = own_joints().centre_mm("thumb tip", frames);
  CHECK((thumb.flesh(tip, 1.0) - thumb.of_bone(ThumbBone::distal_phalanx) * tip).norm() < 1e-9);
  const Vector3d metacarpal = root + 0.33 * (tip - root);
  CHECK((thumb.flesh(metacarpal, 1.0) - thumb.of_bone(ThumbBone::metacarpal) * metacarpal).norm() <
        1e-9);
  CHECK((thumb.flesh(metacarpal, 0.0) - metacarpal).norm() == 0.0);
  const double half = (thumb.flesh(metacarpal, 0.5) - metacarpal).norm();
  CHECK(half > 0.4 * (thumb.flesh(metacarpal, 1.0) - metacarpal).norm());
  CHECK(half < 0.6 * (thumb.flesh(metacarpal, 1.0) - metacarpal).norm());
}

}  // namespace endplate::limb
