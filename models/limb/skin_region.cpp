#include "models/limb/skin_region.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string_view>

#include "models/limb/skin_shape.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// Levels of the arm and the forearm, as shares of their lengths.
constexpr double kElbowAbove = 40.0 / kLedgerArm_mm;
constexpr double kElbowBelow = 40.0 / kLedgerForearm_mm;
constexpr double kShoulder = 0.85;  // from the armpit's folds up
constexpr double kWristFrom = 222.0 / kLedgerForearm_mm;
// Of the hand: the thenar and hypothenar eminences, whose borders are assumed.
constexpr double kEminencesTo = 0.33;
constexpr double kThenarFrom_mm = 8.0;
constexpr double kHypothenarFrom_mm = -12.0;
constexpr double kHandSide_mm = 31.0;

// `x` to the front and `z` outwards from the middle, both in half-axes of the section.
std::string_view aspect(double x, double z) {
  if (std::abs(x) >= std::abs(z)) return x >= 0.0 ? "anterior" : "posterior";
  return z >= 0.0 ? "lateral" : "medial";
}

std::string_view third(double part) {
  if (part < 1.0 / 3.0) return "proximal third";
  return part < 2.0 / 3.0 ? "middle third" : "distal third";
}

std::string in_arm(const SegmentPoint& at) {
  const std::string_view side = aspect(at.x_mm, at.z_mm);
  if (at.fraction >= kShoulder) return fmt::format("{} shoulder", side);
  if (at.fraction <= kElbowAbove) return fmt::format("{} elbow", side);
  return fmt::format("{} arm, {}", side,
                     third((kShoulder - at.fraction) / (kShoulder - kElbowAbove)));
}

std::string in_forearm(const SegmentPoint& at) {
  const std::string_view side = aspect(at.x_mm, at.z_mm);
  if (at.fraction < kElbowBelow) return fmt::format("{} elbow", side);
  if (at.fraction > kWristFrom) return fmt::format("{} wrist", side);
  return fmt::format("{} forearm, {}", side,
                     third((at.fraction - kElbowBelow) / (kWristFrom - kElbowBelow)));
}

std::string in_palm(const SegmentPoint& at) {
  if (at.x_mm < 0.0) return "dorsum of hand";
  if (at.z_mm > kHandSide_mm) return "radial side of hand";
  if (at.z_mm < -kHandSide_mm) return "ulnar side of hand";
  if (at.fraction < kEminencesTo && at.z_mm > kThenarFrom_mm) return "thenar eminence";
  if (at.fraction < kEminencesTo && at.z_mm < kHypothenarFrom_mm) return "hypothenar eminence";
  return "palm";
}

std::string in_finger(std::size_t finger, const SegmentFrames& frames, const LimbJoints& joints,
                      const SegmentPoint& at) {
  const std::string name = skin_shape::kFingers.at(finger).name;
  const auto place = [&](const char* joint) {
    return frames.from_limb(Segment::hand, joints.centre_mm(name + " " + joint, frames));
  };
  const SegmentPoint middle = place("proximal interphalangeal");
  const double x = at.x_mm - middle.x_mm;
  const double z = at.z_mm - middle.z_mm;
  std::string_view side = x >= 0.0 ? "palmar" : "dorsal";
  if (std::abs(z) > std::abs(x)) side = z >= 0.0 ? "radial" : "ulnar";
  std::string_view phalanx = "distal";
  if (at.fraction < place("distal interphalangeal").fraction) phalanx = "middle";
  if (at.fraction < middle.fraction) phalanx = "proximal";
  return fmt::format("{} {} finger, {} phalanx", side, name, phalanx);
}

// Along the thumb its pad faces the fingers, across the palm.
std::string in_thumb(const SegmentFrames& frames, const LimbJoints& joints, const Vector3d& p) {
  const auto centre = [&](const char* joint) {
    return joints.centre_mm(std::string("thumb ") + joint, frames);
  };
  const Vector3d root = centre("carpometacarpal");
  const Vector3d axis = (centre("tip") - root).normalized();
  const auto along = [&](const Vector3d& q) { return (q - root).dot(axis); };
  const Vector3d off = p - root - along(p) * axis;
  const Vector3d front = frames.anterior(Segment::hand);
  const Vector3d palmar = (front - front.dot(axis) * axis).normalized();
  const Vector3d pad =
      frames.side() == Side::right ? Vector3d(palmar.cross(axis)) : Vector3d(axis.cross(palmar));
  const double x = off.dot(pad);
  const double z = off.dot(palmar);
  if (along(p) < along(centre("metacarpophalangeal"))) {
    if (z >= 0.0) return "thenar eminence";
    return x >= 0.0 ? "first web" : "dorsum of thumb, metacarpal";
  }
  std::string_view side = x >= 0.0 ? "palmar" : "dorsal";
  if (std::abs(z) > std::abs(x)) side = z >= 0.0 ? "radial" : "ulnar";
  return fmt::format("{} thumb, {} phalanx", side,
                     along(p) < along(centre("interphalangeal")) ? "proximal" : "distal");
}

}  // namespace

std::string skin_region(const SegmentFrames& frames, const LimbJoints& joints,
                        const Vector3d& neutral_mm, const FingerShares& shares) {
  if (shares.thumb > 0.7) return in_thumb(frames, joints, neutral_mm);
  const SegmentPoint hand = frames.from_limb(Segment::hand, neutral_mm);
  if (hand.fraction > 0.0) {
    const auto most = std::ranges::max_element(shares.share);
    const auto finger = static_cast<std::size_t>(most - shares.share.begin());
    if (*most > 0.5 && hand.fraction > skin_shape::kFingers.at(finger).web_level) {
      return in_finger(finger, frames, joints, hand);
    }
    return in_palm(hand);
  }
  const SegmentPoint forearm = frames.from_limb(Segment::forearm, neutral_mm);
  if (forearm.fraction > 0.0) return in_forearm(forearm);
  return in_arm(frames.from_limb(Segment::humerus, neutral_mm));
}

}  // namespace endplate::limb
