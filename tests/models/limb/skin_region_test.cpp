#include "models/limb/skin_region.hpp"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "solids_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

std::string at(Segment segment, double fraction, double x_mm, double z_mm,
               const FingerShares& shares = {}, Side side = Side::right) {
  const SegmentFrames frames({}, side);
  return skin_region(frames, own_joints(), frames.to_limb(segment, fraction, x_mm, z_mm), shares);
}

FingerShares on(Finger finger) {
  FingerShares shares;
  shares.share[static_cast<std::size_t>(finger)] = 1.0;
  return shares;
}

}  // namespace

TEST_CASE("Places of the skin have names", "[limb][skin]") {
  CHECK(at(Segment::humerus, 0.95, 0.0, 50.0) == "lateral shoulder");
  CHECK(at(Segment::humerus, 0.75, 45.0, 0.0) == "anterior arm, proximal third");
  CHECK(at(Segment::humerus, 0.25, 5.0, -40.0) == "medial arm, distal third");
  CHECK(at(Segment::humerus, 0.02, -35.0, 0.0) == "posterior elbow");
  CHECK(at(Segment::forearm, 0.06, 36.0, 0.0) == "anterior elbow");
  CHECK(at(Segment::forearm, 0.25, 36.0, 5.0) == "anterior forearm, proximal third");
  CHECK(at(Segment::forearm, 0.5, -2.0, 38.0) == "lateral forearm, middle third");
  CHECK(at(Segment::forearm, 0.96, -18.0, 4.0) == "posterior wrist");
  CHECK(at(Segment::hand, 0.2, 15.0, 2.0) == "palm");
  CHECK(at(Segment::hand, 0.2, 12.0, -20.0) == "hypothenar eminence");
  CHECK(at(Segment::hand, 0.2, -14.0, 5.0) == "dorsum of hand");
  CHECK(at(Segment::hand, 0.65, 8.0, 8.0, on(Finger::middle)) ==
        "palmar middle finger, proximal phalanx");
  CHECK(at(Segment::hand, 0.9, -6.0, -11.0, on(Finger::ring)) ==
        "dorsal ring finger, distal phalanx");
}

TEST_CASE("Names of the skin are the same on either side", "[limb][skin]") {
  std::map<std::string, std::string> pairs;
  for (const double fraction : {0.05, 0.25, 0.6, 0.95}) {
    for (const double z : {-30.0, 30.0}) {
      for (const Segment segment : {Segment::humerus, Segment::forearm}) {
        CHECK(at(segment, fraction, 3.0, z) == at(segment, fraction, 3.0, z, {}, Side::left));
      }
    }
  }
  FingerShares thumb;
  thumb.thumb = 1.0;
  CHECK(at(Segment::hand, 0.45, 50.0, 75.0, thumb) ==
        at(Segment::hand, 0.45, 50.0, 75.0, thumb, Side::left));
}

TEST_CASE("Over the whole skin every digit and every aspect comes up", "[limb][skin]") {
  std::set<std::string> found;
  const SegmentFrames frames;
  for (std::size_t v = 0; v < own_skin().mesh.vertices_mm.size(); ++v) {
    found.insert(
        skin_region(frames, own_joints(), own_skin().mesh.vertices_mm[v], own_skin().fingers[v]));
  }
  for (const char* name :
       {"thenar eminence", "first web", "palmar thumb, distal phalanx",
        "dorsal thumb, proximal phalanx", "radial index finger, middle phalanx",
        "ulnar little finger, proximal phalanx", "dorsal ring finger, distal phalanx", "palm",
        "dorsum of hand", "medial forearm, middle third"}) {
    INFO(name);
    CHECK(found.contains(name));
  }
}

}  // namespace endplate::limb
