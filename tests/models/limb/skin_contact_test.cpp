#include "models/limb/skin_contact.hpp"

#include <numbers>

#include "geometry/mesh_intersections.hpp"
#include "limb_fixture.hpp"

namespace endplate::limb {
namespace {

const LimbJoints& joints() {
  static const LimbJoints read = LimbJoints::from(own_tables()).value();
  return read;
}
const SkinMesh& skin() {
  static const SkinMesh made =
      make_skin(SegmentFrames(), BodyEnvelope::from(own_tables()).value(), joints(), 1);
  return made;
}
ContactLimit limit(const std::map<std::string, double>& pose_deg) {
  return limit_contact(skin(), SegmentFrames(), joints(), pose_from(pose_deg));
}
bool crosses(const Pose& pose) {
  return !geometry::crossing_pairs(
              {posed_vertices_mm(skin(), PosedSpace(SegmentFrames(), joints(), pose)),
               skin().mesh.triangles},
              1)
              .empty();
}

}  // namespace

TEST_CASE("a pose in which nothing meets is left as it is", "[limb][skin]") {
  for (const auto& pose : {std::map<std::string, double>{{"elbow_flexion_deg", 90.0}},
                           {{"fingers_flexion_deg", 60.0}, {"forearm_pronation_deg", 150.0}},
                           {{"shoulder_abduction_deg", 120.0}}}) {
    const ContactLimit found = limit(pose);
    CHECK(found.contacts.empty());
    CHECK_FALSE(found.crosses_elsewhere);
    CHECK(found.pose.elbow_flexion == pose_from(pose).elbow_flexion);
  }
}

TEST_CASE("the elbow stops where flesh and bone have no more room", "[limb][skin]") {
  const ContactLimit found = limit({{"elbow_flexion_deg", 158.0}});
  REQUIRE(found.contacts.size() == 1);
  CHECK(found.contacts[0].find("the elbow is bent by 143 degrees, not by 158") !=
        std::string::npos);
  CHECK_FALSE(crosses(found.pose));
}

TEST_CASE("the elbow stops where the thumb meets the arm", "[limb][skin]") {
  const std::map<std::string, double> asked{{"elbow_flexion_deg", 143.0},
                                            {"forearm_pronation_deg", 60.0},
                                            {"wrist_extension_deg", -80.0},
                                            {"fingers_flexion_deg", 43.0}};
  REQUIRE(crosses(pose_from(asked)));
  const ContactLimit found = limit(asked);
  REQUIRE(found.contacts.size() == 1);
  CHECK(found.contacts[0].starts_with("the thumb meets the arm: the elbow is bent by 13"));
  CHECK_FALSE(found.crosses_elsewhere);
  CHECK_FALSE(crosses(found.pose));
  CHECK(found.pose.elbow_flexion > 130.0 * std::numbers::pi / 180.0);
  CHECK(found.pose.wrist_extension == pose_from(asked).wrist_extension);
  // Two degrees more and they do meet.
  Pose more = found.pose;
  more.elbow_flexion += 2.0 * std::numbers::pi / 180.0;
  CHECK(crosses(more));

  // The left is no other.
  const SegmentFrames left({}, Side::left);
  const SkinMesh mirrored = make_skin(left, BodyEnvelope::from(own_tables()).value(), joints(), 1);
  CHECK(limit_contact(mirrored, left, joints(), pose_from(asked)).pose.elbow_flexion ==
        found.pose.elbow_flexion);
}

// A hand twice as thick as the standard one closes no full fist.
TEST_CASE("fingers stop where they meet the hand", "[limb][skin]") {
  const SegmentFrames thick({1.0, 1.0, 1.0, 2.0});
  const SkinMesh skin = make_skin(thick, BodyEnvelope::from(own_tables()).value(), joints(), 1);
  const ContactLimit found =
      limit_contact(skin, thick, joints(), pose_from({{"fingers_flexion_deg", 90.0}}));
  REQUIRE_FALSE(found.contacts.empty());
  CHECK(found.contacts[0].find("finger meets the hand") != std::string::npos);
}

TEST_CASE("a web stretched by one finger that bends alone is not laid to a joint", "[limb][skin]") {
  const ContactLimit found = limit({{"index_mcp_flexion_deg", 90.0}});
  CHECK(found.contacts.empty());
  CHECK(found.pose.fingers[0].mcp_flexion == Approx(std::numbers::pi / 2.0));
}
}  // namespace endplate::limb
