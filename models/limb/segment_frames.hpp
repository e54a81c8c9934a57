#pragma once
// The frames of the arm's three segments in the neutral pose, and the limb's common frame.
//
// Limb frame: origin midway between the epicondyles, X anterior, Y proximal, Z to the subject's
// right (Wu et al., J Biomech 2005;38:981, humerus, moved from the humeral head to the elbow).
// Pose: arm at the side, elbow straight, forearm supinated. Lengths in mm. Within a segment x
// points anterior (palmar), y proximal and z LATERAL (radial) on both sides; the left limb is the
// mirror image of the right one in the plane Z = 0.
#include <Eigen/Core>
#include <cstddef>
#include <numbers>
#include <optional>
#include <string_view>

#include "models/core/side.hpp"

namespace endplate::limb {

enum class Segment { humerus, forearm, hand };

// As the tables write them.
std::string_view to_string(Segment segment);
std::optional<Segment> segment_from(std::string_view text);

// Lengths of the ledger limb, the mean limb of the dissection series behind the published
// distances; every stored fraction and offset refers to it.
inline constexpr double kLedgerArm_mm = 300.0;      // lateral acromion to lateral epicondyle, axial
inline constexpr double kLedgerForearm_mm = 245.0;  // interepicondylar line to bistyloid line
inline constexpr double kLedgerHand_mm = 180.0;     // distal wrist crease to dactylion III

// How stout the skin is against a limb of that breadth with the outline of skin_outline.csv; each
// > 0. Bones and nerves do not follow.
struct SkinGirths {
  double arm = 1.0;      // from the middle of the arm up
  double forearm = 1.0;  // where it is thickest
  double wrist = 1.0;

  // At a level of a segment, which may lie outside 0 to 1; between those places it blends.
  double at(Segment segment, double fraction) const;
};

// A limb's size against the ledger limb; each > 0. `breadth` scales what lies across the axes.
struct SegmentScale {
  double arm = 1.0;
  double forearm = 1.0;
  double hand = 1.0;
  double breadth = 1.0;
  SkinGirths skin = {};
};

// A place in a segment in the ledger limb's terms. `fraction` of the segment's length: from the
// epicondyles proximally on the humerus; distally on the forearm (from the epicondyles) and on the
// hand (from the distal wrist crease). It may lie outside 0 to 1. Offsets from the axis are in mm
// on the ledger limb.
struct SegmentPoint {
  double fraction = 0.0;
  double x_mm = 0.0;
  double z_mm = 0.0;
};

class SegmentFrames {
 public:
  // Carrying angle of the straight supinated elbow, which tilts the forearm's axis laterally: 12
  // degrees is assumed for the ledger limb, near what was measured in men (11.6, SD 3.2) and below
  // women's (16.7, SD 2.6; Van Roy et al., Ergonomics 2005;48:1645, rows JT_081 and JT_082).
  static constexpr double kCarryingAngle_rad = 12.0 * std::numbers::pi / 180.0;

  explicit SegmentFrames(const SegmentScale& scale = {}, Side side = Side::right);

  // Into the limb frame, mm.
  Eigen::Vector3d to_limb(Segment segment, const SegmentPoint& point) const;
  Eigen::Vector3d to_limb(Segment segment, double fraction, double x_mm, double z_mm) const {
    return to_limb(segment, SegmentPoint{fraction, x_mm, z_mm});
  }
  // The inverse.
  SegmentPoint from_limb(Segment segment, const Eigen::Vector3d& position_mm) const;

  // Unit vectors in the limb frame.
  Eigen::Vector3d anterior(Segment segment) const { return frame(segment).axes.col(0); }
  Eigen::Vector3d proximal(Segment segment) const { return frame(segment).axes.col(1); }
  Eigen::Vector3d lateral(Segment segment) const { return frame(segment).axes.col(2); }
  // Where fraction, x and z are 0, in the limb frame, mm.
  Eigen::Vector3d origin(Segment segment) const { return frame(segment).origin_mm; }
  // Change of fraction for a step of 1 mm proximally.
  double fraction_per_mm(Segment segment) const {
    return frame(segment).toward / frame(segment).length_mm;
  }
  // Of this limb, mm.
  double length_mm(Segment segment) const { return frame(segment).length_mm; }

  const SegmentScale& scale() const { return scale_; }
  Side side() const { return side_; }

 private:
  struct Frame {
    Eigen::Matrix3d axes;  // columns anterior, proximal, lateral
    Eigen::Vector3d origin_mm;
    double length_mm = 0.0;
    double toward = 1.0;  // sign of y with growing fraction
  };
  const Frame& frame(Segment segment) const { return frames_[static_cast<std::size_t>(segment)]; }

  SegmentScale scale_;
  Side side_;
  Frame frames_[3];
};

}  // namespace endplate::limb
