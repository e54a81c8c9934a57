#include "models/limb/digit_skin.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <string>

#include "models/limb/skin_shape.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using namespace skin_shape;

// Of a digit's breadth at its root; the thumb's skin narrows less (skin_mesh.cpp).
constexpr double kThumbTipShare = 0.85;
// A nerve ends in the pulp, short of the skin at the very tip.
constexpr double kInTip_mm = 4.0;

}  // namespace

std::optional<Digit> digit_from(std::string_view text) {
  if (text == "thumb") return Digit::thumb;
  if (text == "index") return Digit::index;
  if (text == "middle") return Digit::middle;
  if (text == "ring") return Digit::ring;
  if (text == "little") return Digit::little;
  return std::nullopt;
}

DigitSkin::DigitSkin(const SegmentFrames& frames, const LimbJoints& joints) {
  const double breadth = frames.scale().breadth;
  const Vector3d front = frames.anterior(Segment::hand);
  const Vector3d side = frames.lateral(Segment::hand);
  for (std::size_t f = 0; f < kFingers.size(); ++f) {
    const FingerShape& shape = kFingers[f];
    const Vector3d tip = joints.centre_mm(std::string(shape.name) + " tip", frames);
    const SegmentPoint end = frames.from_limb(Segment::hand, tip);
    const Vector3d web = frames.to_limb(Segment::hand, shape.web_level, end.x_mm, end.z_mm);
    rounds_[f] = {web,
                  -frames.proximal(Segment::hand),
                  front,
                  side,
                  (tip - web).norm() - kFingerTip_mm * breadth,
                  kFingerTip_mm * breadth,
                  shape.half_depth_mm * breadth,
                  shape.half_width_mm * breadth,
                  kTipShare};
  }
  const Vector3d knuckle = joints.centre_mm("thumb metacarpophalangeal", frames);
  const Vector3d tip = joints.centre_mm("thumb tip", frames);
  const Vector3d distal = (tip - knuckle).normalized();
  // The axis of flexion points forward (thumb_bend.cpp).
  const Vector3d forward = (front - front.dot(distal) * distal).normalized();
  const double half_mm = std::min(kThumbHalfDepth_mm, kThumbHalfWidth_mm) * breadth;
  rounds_[static_cast<std::size_t>(Digit::thumb)] = {knuckle,
                                                     distal,
                                                     forward.cross(distal),
                                                     forward,
                                                     (tip - knuckle).norm() - kFingerTip_mm,
                                                     kFingerTip_mm * breadth,
                                                     half_mm,
                                                     half_mm,
                                                     kThumbTipShare};
}

bool DigitSkin::covers(Digit digit, const Vector3d& p) const {
  return (p - of(digit).from_mm).dot(of(digit).distal) > 0.0;
}

DigitSkin::Across DigitSkin::across(const Round& round, const Vector3d& p, double depth_mm) const {
  const double end_mm = round.length_mm + round.end_mm - kInTip_mm;
  const double along_mm = std::min((p - round.from_mm).dot(round.distal), end_mm);
  double taper = std::lerp(1.0, round.tip_share, std::clamp(along_mm / round.length_mm, 0.0, 1.0));
  if (along_mm > round.length_mm) {
    const double into = (along_mm - round.length_mm) / round.end_mm;
    taper *= std::sqrt(1.0 - into * into);
  }
  const Vector3d off = p - round.from_mm - (p - round.from_mm).dot(round.distal) * round.distal;
  const double x = off.dot(round.palmar) / std::max(taper * round.half_depth_mm - depth_mm, 0.5);
  const double z = off.dot(round.radial) / std::max(taper * round.half_width_mm - depth_mm, 0.5);
  return {round.from_mm + along_mm * round.distal, off, std::hypot(x, z)};
}

double DigitSkin::depth_mm(Digit digit, const Vector3d& p) const {
  const Across place = across(of(digit), p, 0.0);
  const double mean_mm = 0.5 * (of(digit).half_depth_mm + of(digit).half_width_mm);
  if (place.share < 1e-9) return mean_mm;
  return place.off_mm.norm() * (1.0 / place.share - 1.0);
}

Vector3d DigitSkin::inside(Digit digit, const Vector3d& p, double least_depth_mm) const {
  const Across place = across(of(digit), p, least_depth_mm);
  return place.axis_mm + place.off_mm / std::max(place.share, 1.0);
}

Vector3d DigitSkin::at_depth(Digit digit, const Vector3d& p, double depth_mm) const {
  const Across place = across(of(digit), p, depth_mm);
  return place.share < 1e-9 ? p : Vector3d(place.axis_mm + place.off_mm / place.share);
}

}  // namespace endplate::limb
