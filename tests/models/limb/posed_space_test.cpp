#include "models/limb/posed_space.hpp"

#include <array>
#include <catch2/catch.hpp>
#include <numbers>
#include <string>

#include "limb_fixture.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180.0;

const LimbJoints& joints() {
  static const LimbJoints read = LimbJoints::from(own_tables()).value();
  return read;
}

PosedSpace posed(const Pose& pose, Side side = Side::right) {
  return {SegmentFrames({}, side), joints(), pose};
}

Pose bent_everywhere() {
  return pose_from({{"shoulder_abduction_deg", 70.0},
                    {"shoulder_flexion_deg", 20.0},
                    {"shoulder_external_rotation_deg", 40.0},
                    {"elbow_flexion_deg", 80.0},
                    {"forearm_pronation_deg", 110.0},
                    {"wrist_extension_deg", -50.0},
                    {"wrist_ulnar_deviation_deg", 15.0},
                    {"fingers_flexion_deg", 60.0},
                    {"thumb_palmar_abduction_deg", 30.0},
                    {"thumb_cmc_flexion_deg", 10.0},
                    {"thumb_mcp_flexion_deg", 40.0},
                    {"thumb_ip_flexion_deg", 50.0}});
}

Vector3d place(Segment segment, double fraction, double x_mm, double z_mm,
               Side side = Side::right) {
  return SegmentFrames({}, side).to_limb(segment, fraction, x_mm, z_mm);
}

}  // namespace

TEST_CASE("In the anatomical position nothing has moved", "[limb][pose]") {
  const PosedSpace space = posed({});
  for (const double fraction : {-0.1, 0.02, 0.5, 0.98}) {
    for (const Segment segment : {Segment::humerus, Segment::forearm, Segment::hand}) {
      const Vector3d p = place(segment, fraction, 12.0, -20.0);
      CHECK((space.flesh(p) - p).norm() < 1e-9);
      CHECK((space.held(p, Finger::ring) - p).norm() < 1e-9);
      CHECK((space.turn(p) - Eigen::Matrix3d::Identity()).norm() < 1e-12);
    }
  }
  CHECK(Pose().is_neutral());
  CHECK_FALSE(bent_everywhere().is_neutral());
}

TEST_CASE("With the elbow at a right angle the forearm points forward", "[limb][pose]") {
  const PosedSpace space = posed(pose_from({{"elbow_flexion_deg", 90.0}}));
  const Vector3d wrist = space.of_bone(Bone::ulna) * place(Segment::forearm, 1.0, 0.0, 0.0);
  CHECK(wrist.x() == Approx(kLedgerForearm_mm * std::cos(SegmentFrames::kCarryingAngle_rad)));
  CHECK(std::abs(wrist.y()) < 1e-9);
}

TEST_CASE("Pronation turns the radius round the ulna and the palm to the back", "[limb][pose]") {
  const PosedSpace space = posed(pose_from({{"forearm_pronation_deg", 180.0}}));
  const Vector3d ulnar_head = place(Segment::forearm, 0.947, -7.0, -18.5);
  CHECK((space.of_bone(Bone::ulna) * ulnar_head - ulnar_head).norm() < 1e-9);
  const Vector3d styloid = place(Segment::forearm, 1.02, 2.0, 26.0);
  const Vector3d turned = space.of_bone(Bone::radius) * styloid;
  CHECK(turned.z() < ulnar_head.z());  // medial of the ulna
  const Vector3d palm = space.of_bone(Bone::hand).linear() * Vector3d::UnitX();
  CHECK(palm.x() < -0.9);
  // Half way down the forearm the flesh has gone about half of the way.
  const Vector3d middle = place(Segment::forearm, 0.51, 25.0, 0.0);
  CHECK((space.flesh(middle) - middle).norm() > 20.0);
}

TEST_CASE("Extension of the wrist carries the fingers back, ulnar deviation inwards",
          "[limb][pose]") {
  const Vector3d tip = place(Segment::hand, 1.0, 0.0, 8.0);
  CHECK((posed(pose_from({{"wrist_extension_deg", 60.0}})).flesh(tip) - tip).x() < -100.0);
  CHECK((posed(pose_from({{"wrist_ulnar_deviation_deg", 30.0}})).flesh(tip) - tip).z() < -50.0);
}

// Two degrees of the humerus to one of the scapula: common practice.
TEST_CASE("An arm raised by 90 degrees is level and has turned the scapula by 30", "[limb][pose]") {
  for (const char* key : {"shoulder_abduction_deg", "shoulder_flexion_deg"}) {
    const PosedSpace space = posed(pose_from({{key, 90.0}}));
    const Vector3d humerus = space.of_bone(Bone::humerus).linear() * -Vector3d::UnitY();
    INFO(key);
    CHECK(std::abs(humerus.y()) < 1e-9);
    CHECK((key[9] == 'a' ? humerus.z() : humerus.x()) == Approx(1.0));
    const Eigen::AngleAxisd scapula(space.of_bone(Bone::scapula).linear());
    CHECK(std::abs(scapula.angle()) == Approx(30.0 * kDegree));
  }
}

TEST_CASE("External rotation turns the forearm of a bent elbow outwards", "[limb][pose]") {
  const PosedSpace space =
      posed(pose_from({{"elbow_flexion_deg", 90.0}, {"shoulder_external_rotation_deg", 60.0}}));
  const Vector3d wrist = space.of_bone(Bone::ulna) * place(Segment::forearm, 1.0, 0.0, 0.0);
  CHECK(wrist.z() > 150.0);
}

TEST_CASE("A bone moves as one piece and its joints hold together", "[limb][pose]") {
  const PosedSpace space = posed(bent_everywhere());
  const SegmentFrames frames;
  const auto meets = [&](const char* joint, Bone a, Bone b) {
    const Vector3d centre = joints().centre_mm(joint, frames);
    INFO(joint);
    CHECK((space.of_bone(a) * centre - space.of_bone(b) * centre).norm() < 1e-9);
  };
  meets("shoulder", Bone::scapula, Bone::humerus);
  meets("elbow", Bone::humerus, Bone::ulna);
  meets("proximal radioulnar", Bone::ulna, Bone::radius);
  meets("distal radioulnar", Bone::ulna, Bone::radius);
  meets("wrist", Bone::radius, Bone::hand);
  meets("acromioclavicular", Bone::clavicle, Bone::scapula);
  meets("sternoclavicular", Bone::thorax, Bone::clavicle);
}

TEST_CASE("The joints of the digits hold together", "[limb][pose]") {
  Pose pose = bent_everywhere();
  pose.thumb = {0.5, 0.2, 0.6, 0.8};
  const PosedSpace space = posed(pose);
  const SegmentFrames frames;
  const auto apart = [&](const std::string& joint, const Eigen::Isometry3d& a,
                         const Eigen::Isometry3d& b) {
    const Vector3d centre = joints().centre_mm(joint, frames);
    return (a * centre - b * centre).norm();
  };
  const Eigen::Isometry3d hand = space.of_bone(Bone::hand);
  const std::array<const char*, 4> names{"index", "middle", "ring", "little"};
  for (std::size_t f = 0; f < names.size(); ++f) {
    const auto phalanx = [&](Phalanx k) { return space.of_phalanx(static_cast<Finger>(f), k); };
    const std::string name = names[f];
    CHECK(apart(name + " metacarpophalangeal", hand, phalanx(Phalanx::proximal)) < 1e-9);
    CHECK(apart(name + " proximal interphalangeal", phalanx(Phalanx::proximal),
                phalanx(Phalanx::middle)) < 1e-9);
    CHECK(apart(name + " distal interphalangeal", phalanx(Phalanx::middle),
                phalanx(Phalanx::distal)) < 1e-9);
  }
  CHECK(apart("thumb carpometacarpal", hand, space.of_thumb(ThumbBone::metacarpal)) < 1e-9);
  CHECK(apart("wrist", hand, space.of_proximal_carpal_row()) < 1e-9);
  const Vector3d tip = joints().centre_mm("thumb tip", frames);
  CHECK((space.flesh_of_thumb(tip, 1.0) - space.of_thumb(ThumbBone::distal_phalanx) * tip).norm() <
        1e-9);
  // Flesh on a phalanx's axis goes with it as long as nothing presses on it.
  const PosedSpace little = posed(pose_from({{"fingers_flexion_deg", 15.0}}));
  const Vector3d end = joints().centre_mm("ring tip", frames);
  CHECK((little.flesh(end, Finger::ring) - little.of_phalanx(Finger::ring, Phalanx::distal) * end)
            .norm() < 1e-9);
}

// Radiocarpal and midcarpal joint: common practice.
TEST_CASE("The proximal carpal row takes half of the wrist's turn", "[limb][pose]") {
  const PosedSpace space = posed(pose_from({{"wrist_extension_deg", 60.0}}));
  const Eigen::AngleAxisd row(space.of_proximal_carpal_row().linear());
  CHECK(row.angle() == Approx(30.0 * kDegree));
}

TEST_CASE("The left limb is the mirror image of the right one in every pose", "[limb][pose]") {
  const PosedSpace right = posed(bent_everywhere());
  const PosedSpace left = posed(bent_everywhere(), Side::left);
  const auto mirrored = [](const Vector3d& p) { return Vector3d(p.x(), p.y(), -p.z()); };
  for (const Segment segment : {Segment::humerus, Segment::forearm, Segment::hand}) {
    for (const double fraction : {0.05, 0.4, 0.8, 0.97}) {
      const Vector3d p = place(segment, fraction, 9.0, 17.0);
      const Vector3d q = place(segment, fraction, 9.0, 17.0, Side::left);
      CHECK((mirrored(right.flesh(p)) - left.flesh(q)).norm() < 1e-9);
      CHECK((mirrored(right.held(p, Finger::index)) - left.held(q, Finger::index)).norm() < 1e-9);
      CHECK((mirrored(right.flesh_of_thumb(p, 0.7)) - left.flesh_of_thumb(q, 0.7)).norm() < 1e-9);
      CHECK((mirrored(right.of_thumb(ThumbBone::proximal_phalanx) * p) -
             left.of_thumb(ThumbBone::proximal_phalanx) * q)
                .norm() < 1e-9);
      CHECK((mirrored(right.of_phalanx(Finger::ring, Phalanx::middle) * p) -
             left.of_phalanx(Finger::ring, Phalanx::middle) * q)
                .norm() < 1e-9);
      for (const Bone bone : {Bone::scapula, Bone::humerus, Bone::radius, Bone::hand}) {
        CHECK((mirrored(right.of_bone(bone) * p) - left.of_bone(bone) * q).norm() < 1e-9);
      }
    }
  }
}

TEST_CASE("Behind a bent elbow the skin is drawn out by the arc about the joint", "[limb][pose]") {
  const PosedSpace space = posed(pose_from({{"elbow_flexion_deg", 120.0}}));
  const auto length = [&](const auto& map) {
    double sum = 0.0;
    Vector3d before = Vector3d::Zero();
    for (int k = -60; k <= 60; ++k) {
      const Vector3d p = map(Vector3d(-20.0, k, -20.0));
      if (k > -60) sum += (p - before).norm();
      before = p;
    }
    return sum;
  };
  const double skin = length([&](const Vector3d& p) { return space.flesh(p); });
  CHECK(skin == Approx(120.0 + 20.0 * 120.0 * kDegree).margin(8.0));
}

}  // namespace endplate::limb
