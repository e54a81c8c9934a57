#include "models/limb/segment_frames.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::limb {
namespace {

// The distal wrist crease lies over the carpus, distal to the bistyloid line and a little palmar to
// the forearm's axis (assumed, as the landmarks are).
constexpr double kCreaseBelowStyloids_mm = 7.0;
constexpr double kCreasePalmar_mm = 2.0;

// Levels at which a girth is taken, and beyond which that of the wrist no longer counts in the hand
// (assumed: about where the tape lies).
constexpr double kArmLevel = 0.5;
constexpr double kForearmFrom = 0.2;
constexpr double kForearmTo = 0.35;
constexpr double kWristLevel = 0.95;
constexpr double kHandLevel = 0.25;

// Over the epicondyles the skin lies on bone, whose breadth the limb's breadth is; and it is not
// thinner than the bones of forearm and wrist leave room for (bone_capsules.csv).
constexpr double kElbow = 1.0;
constexpr double kThinnestForearm = 0.85;
constexpr double kThinnestWrist = 0.92;

double blend(double from, double to, double t) {
  return std::lerp(from, to, std::clamp(t, 0.0, 1.0));
}

}  // namespace

double SkinGirths::at(Segment segment, double fraction) const {
  const double stoutest = std::max(forearm, kThinnestForearm);
  const double over_wrist = std::max(wrist, kThinnestWrist);
  switch (segment) {
    case Segment::humerus:
      return blend(kElbow, arm, fraction / kArmLevel);
    case Segment::forearm:
      if (fraction < kForearmTo) return blend(kElbow, stoutest, fraction / kForearmFrom);
      return blend(stoutest, over_wrist, (fraction - kForearmTo) / (kWristLevel - kForearmTo));
    case Segment::hand:
      return blend(over_wrist, 1.0, fraction / kHandLevel);
  }
  return 1.0;
}

std::string_view to_string(Segment segment) {
  switch (segment) {
    case Segment::humerus:
      return "humerus";
    case Segment::forearm:
      return "forearm";
    case Segment::hand:
      return "hand";
  }
  return "";
}

std::optional<Segment> segment_from(std::string_view text) {
  for (const Segment segment : {Segment::humerus, Segment::forearm, Segment::hand}) {
    if (text == to_string(segment)) return segment;
  }
  return std::nullopt;
}

SegmentFrames::SegmentFrames(const SegmentScale& scale, Side side) : scale_(scale), side_(side) {
  const double right = side == Side::right ? 1.0 : -1.0;
  const double tilt_cos = std::cos(kCarryingAngle_rad);
  const double tilt_sin = std::sin(kCarryingAngle_rad);

  Eigen::Matrix3d upright = Eigen::Matrix3d::Identity();
  upright(2, 2) = right;
  Eigen::Matrix3d tilted;
  tilted.col(0) = Eigen::Vector3d(1.0, 0.0, 0.0);
  tilted.col(1) = Eigen::Vector3d(0.0, tilt_cos, -right * tilt_sin);
  tilted.col(2) = Eigen::Vector3d(0.0, tilt_sin, right * tilt_cos);

  const double forearm_mm = scale.forearm * kLedgerForearm_mm;
  const Eigen::Vector3d crease =
      kCreasePalmar_mm * scale.breadth * tilted.col(0) -
      (forearm_mm + kCreaseBelowStyloids_mm * scale.hand) * tilted.col(1);
  frames_[0] = {upright, Eigen::Vector3d::Zero(), scale.arm * kLedgerArm_mm, 1.0};
  frames_[1] = {tilted, Eigen::Vector3d::Zero(), forearm_mm, -1.0};
  frames_[2] = {tilted, crease, scale.hand * kLedgerHand_mm, -1.0};
}

Eigen::Vector3d SegmentFrames::to_limb(Segment segment, const SegmentPoint& point) const {
  const Frame& f = frame(segment);
  return f.origin_mm + f.axes * Eigen::Vector3d(scale_.breadth * point.x_mm,
                                                f.toward * f.length_mm * point.fraction,
                                                scale_.breadth * point.z_mm);
}

SegmentPoint SegmentFrames::from_limb(Segment segment, const Eigen::Vector3d& position_mm) const {
  const Frame& f = frame(segment);
  const Eigen::Vector3d local = f.axes.transpose() * (position_mm - f.origin_mm);
  return {f.toward * local.y() / f.length_mm, local.x() / scale_.breadth,
          local.z() / scale_.breadth};
}

}  // namespace endplate::limb
