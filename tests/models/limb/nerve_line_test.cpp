#include "models/limb/nerve_line.hpp"

#include <catch2/catch.hpp>
#include <string_view>

#include "limb_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

const Atlas& atlas() {
  static const Atlas read = Atlas::fitted(own_tables()).value();
  return read;
}
const BodyEnvelope& envelope() {
  static const BodyEnvelope read = BodyEnvelope::from(own_tables()).value();
  return read;
}
const LimbJoints& joints() {
  static const LimbJoints read = LimbJoints::from(own_tables()).value();
  return read;
}
std::size_t course(std::string_view id) {
  const auto found = std::ranges::find(atlas().courses(), id, &Course::id);
  REQUIRE(found != atlas().courses().end());
  return static_cast<std::size_t>(found - atlas().courses().begin());
}

}  // namespace

TEST_CASE("At rest a nerve's line is its course, but for what lay too near the skin",
          "[limb][motion]") {
  const SegmentFrames frames;
  const PosedSpace space(frames, joints(), {});
  const PosedNerves nerves(atlas().landmarks(), envelope(), frames, space);
  const PosedBones bones(envelope(), frames, space);
  for (std::size_t c = 0; c < atlas().courses().size(); ++c) {
    const auto curve = atlas().curve(c, frames);
    const NerveLine line = nerve_line(atlas(), c, frames, envelope(), 5.0);
    const auto posed = nerves(line);
    for (std::size_t i = 0; i < posed.size(); ++i) {
      const Vector3d fitted = curve.position(line.knots[i]);
      INFO(atlas().courses()[c].id << " at " << line.knots[i]);
      // Where the fit keeps clear of skin and bone nothing moves.
      if (envelope().depth_mm<double>(frames, fitted) >= kLeastDepth_mm &&
          bones.clearance_mm(fitted) >= kLeastClearance_mm) {
        CHECK((posed[i] - fitted).norm() < 1e-9);
      } else {
        CHECK((posed[i] - fitted).norm() < kLeastDepth_mm + 0.5);
      }
      CHECK(bones.clearance_mm(posed[i]) >= kLeastClearance_mm - 1e-6);
    }
  }
}

TEST_CASE("A place on the skin is taken under it, a deep one stays", "[limb][motion]") {
  const SegmentFrames frames;
  const Vector3d outside = frames.to_limb(Segment::forearm, 0.5, 60.0, 0.0);
  const Vector3d under = envelope().inside(frames, outside, 3.0);
  CHECK(envelope().depth_mm<double>(frames, under) == Approx(3.0).margin(0.05));
  CHECK(under.y() == Approx(outside.y()));
  const Vector3d deep = frames.to_limb(Segment::forearm, 0.5, 5.0, 3.0);
  CHECK((envelope().inside(frames, deep, 3.0) - deep).norm() == 0.0);
}

TEST_CASE("Behind the bent elbow the ulnar nerve stays behind the medial epicondyle",
          "[limb][motion]") {
  const SegmentFrames frames;
  for (const double angle : {40.0, 90.0, 130.0}) {
    const PosedSpace space(frames, joints(), pose_from({{"elbow_flexion_deg", angle}}));
    const PosedNerves nerves(atlas().landmarks(), envelope(), frames, space);
    const Vector3d epicondyle = *atlas().landmarks().position_mm("medial epicondyle", frames);
    double nearest = 1e9;
    double behind = 0.0;
    for (const Vector3d& p :
         nerves(nerve_line(atlas(), course("ulnar"), frames, envelope(), 2.0))) {
      if ((p - epicondyle).norm() < nearest) {
        nearest = (p - epicondyle).norm();
        behind = epicondyle.x() - p.x();
      }
    }
    INFO(angle);
    CHECK(nearest < 20.0);
    CHECK(behind > 2.0);
  }
}

// The published fall of the distance in abduction, compared in tests/published.
TEST_CASE("In abduction the axillary nerve comes nearer to the acromion", "[limb][motion]") {
  const SegmentFrames frames;
  const Vector3d acromion = *atlas().landmarks().position_mm("acromion, lateral edge", frames);
  const NerveLine line = nerve_line(atlas(), course("axillary"), frames, envelope(), 2.0);
  double before = 1e9;
  for (const double angle : {0.0, 30.0, 60.0, 90.0}) {
    const PosedSpace space(frames, joints(), pose_from({{"shoulder_abduction_deg", angle}}));
    const PosedNerves nerves(atlas().landmarks(), envelope(), frames, space);
    const Vector3d landmark = space.of_bone(Bone::scapula) * acromion;
    double nearest = 1e9;
    for (const NervePlace& place : line.places) {
      if (place.in_deltoid < 1.0) continue;
      nearest = std::min(nearest, (nerves(place) - landmark).norm());
    }
    INFO(angle);
    CHECK(nearest < before);
    CHECK(nearest > 30.0);
    before = nearest;
  }
}

TEST_CASE("A bone's capsule pushes a place out along the shortest way", "[limb][motion]") {
  const SegmentFrames frames;
  const PosedSpace space(frames, joints(), {});
  const PosedBones bones(envelope(), frames, space);
  // In the middle of the humeral shaft, 2 mm lateral of its axis.
  const Vector3d inside = frames.to_limb(Segment::humerus, 0.5, 0.0, 6.5);
  REQUIRE(bones.clearance_mm(inside) < 0.0);
  const Vector3d out = bones.outside(inside, 1.0);
  CHECK(bones.clearance_mm(out) == Approx(1.0).margin(1e-6));
  CHECK(out.z() > inside.z());
  CHECK(std::abs(out.x() - inside.x()) < 1e-6);
  const Vector3d far = frames.to_limb(Segment::humerus, 0.5, 35.0, 0.0);
  CHECK((bones.outside(far, 1.0) - far).norm() == 0.0);
}

}  // namespace endplate::limb
