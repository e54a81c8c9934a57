#include "models/limb/segment_frames.hpp"

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <cmath>

#include "limb_fixture.hpp"
#include "models/limb/landmark_set.hpp"

using namespace endplate;
using namespace endplate::limb;

namespace {
constexpr std::array kSegments{Segment::humerus, Segment::forearm, Segment::hand};
}

TEST_CASE("segment axes are orthonormal, right-handed on the right and mirrored on the left",
          "[models][limb]") {
  for (const Side side : {Side::right, Side::left}) {
    const SegmentFrames frames({1.07, 1.14, 1.07, 1.05}, side);
    for (const Segment segment : kSegments) {
      Eigen::Matrix3d axes;
      axes << frames.anterior(segment), frames.proximal(segment), frames.lateral(segment);
      CHECK((axes.transpose() * axes - Eigen::Matrix3d::Identity()).norm() < 1e-12);
      CHECK(axes.determinant() == Approx(side == Side::right ? 1.0 : -1.0));
    }
  }
}

TEST_CASE("a place in a segment survives the way to the limb frame and back", "[models][limb]") {
  const SegmentFrames frames({1.02, 0.93, 1.11, 0.9}, Side::left);
  for (const Segment segment : kSegments) {
    const SegmentPoint there{0.37, 12.0, -25.0};
    const SegmentPoint back = frames.from_limb(segment, frames.to_limb(segment, there));
    CHECK(back.fraction == Approx(there.fraction).epsilon(1e-12));
    CHECK(back.x_mm == Approx(there.x_mm).epsilon(1e-12));
    CHECK(back.z_mm == Approx(there.z_mm).epsilon(1e-12));
  }
}

TEST_CASE("segments are as long as the scale says and follow one another", "[models][limb]") {
  const SegmentFrames frames({1.1, 1.2, 0.9, 1.0});
  const auto between = [&](Segment segment) {
    return (frames.to_limb(segment, 1.0, 0.0, 0.0) - frames.to_limb(segment, 0.0, 0.0, 0.0)).norm();
  };
  CHECK(between(Segment::humerus) == Approx(330.0));
  CHECK(between(Segment::forearm) == Approx(294.0));
  CHECK(between(Segment::hand) == Approx(162.0));
  // On the ledger limb the wrist crease lies 252 mm down the forearm's axis, 2 mm palmar.
  const SegmentFrames ledger;
  const SegmentPoint crease = ledger.from_limb(Segment::forearm, ledger.origin(Segment::hand));
  CHECK(crease.fraction * kLedgerForearm_mm == Approx(252.0));
  CHECK(crease.x_mm == Approx(2.0));
  CHECK(std::abs(crease.z_mm) < 1e-12);
}

TEST_CASE("the forearm leaves the arm laterally by the carrying angle", "[models][limb]") {
  for (const Side side : {Side::right, Side::left}) {
    const SegmentFrames frames({}, side);
    const double cosine = frames.proximal(Segment::humerus).dot(frames.proximal(Segment::forearm));
    CHECK(std::acos(cosine) == Approx(SegmentFrames::kCarryingAngle_rad));
    const double right = frames.to_limb(Segment::forearm, 1.0, 0.0, 0.0).z();
    CHECK((side == Side::right ? right : -right) > 40.0);
  }
}

TEST_CASE("the left limb is the mirror image of the right one", "[models][limb]") {
  const auto set = LandmarkSet::from(own_tables());
  REQUIRE(set.has_value());
  const SegmentScale scale{1.03, 1.08, 0.97, 1.02};
  const SegmentFrames right(scale, Side::right);
  const SegmentFrames left(scale, Side::left);
  for (const Landmark& landmark : set->landmarks()) {
    Eigen::Vector3d mirrored = LandmarkSet::position_mm(landmark, left);
    mirrored.z() = -mirrored.z();
    CHECK((mirrored - LandmarkSet::position_mm(landmark, right)).norm() < 1e-9);
  }
}
