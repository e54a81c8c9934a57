#pragma once
// How deep under the skin of a digit a place lies, by the digit's plain round shape: the outline of
// body_envelope.hpp knows a hand without digits.
//
// Shapes of skin_shape.hpp: assumed. The thumb is taken as round about the line of its joints, from
// its knuckle on. Places are in the limb frame of a right limb in the anatomical position, mm.
#include <Eigen/Core>
#include <array>
#include <optional>
#include <string_view>

#include "models/limb/limb_joints.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

enum class Digit { index, middle, ring, little, thumb };

// As the tables write them.
std::optional<Digit> digit_from(std::string_view text);

// From the skin to a nerve in a digit, at the least: skin of a finger and half of a small nerve. In
// thumbs nerves lay 1.0 to 4.2 mm deep (NP_087, n 20), so about the middle of that.
inline constexpr double kLeastDigitDepth_mm = 2.5;

class DigitSkin {
 public:
  DigitSkin(const SegmentFrames& frames, const LimbJoints& joints);

  // Whether the place lies so far along that the digit's own skin is what is round it.
  bool covers(Digit digit, const Eigen::Vector3d& p) const;
  // Depth under that skin, to first order; negative outside.
  double depth_mm(Digit digit, const Eigen::Vector3d& p) const;
  // The place itself, or where it is less deep the one at that depth toward the digit's axis.
  Eigen::Vector3d inside(Digit digit, const Eigen::Vector3d& p, double least_depth_mm) const;
  // The place of that depth on the ray from the digit's axis. The axis itself has none and stays.
  Eigen::Vector3d at_depth(Digit digit, const Eigen::Vector3d& p, double depth_mm) const;
  // The place of its axis beside that one.
  Eigen::Vector3d axis_mm(Digit digit, const Eigen::Vector3d& p) const {
    return across(of(digit), p, 0.0).axis_mm;
  }
  // Unit, across the digit's axis: the way its pulp faces, and its radial side. The thumb of the
  // anatomical position turns its pulp to the fingers and its radial side forward.
  const Eigen::Vector3d& palmar(Digit digit) const { return of(digit).palmar; }
  const Eigen::Vector3d& radial(Digit digit) const { return of(digit).radial; }

 private:
  struct Round {
    Eigen::Vector3d from_mm;  // where its own shape begins
    Eigen::Vector3d distal;   // unit
    Eigen::Vector3d palmar;
    Eigen::Vector3d radial;
    double length_mm = 0.0;  // to the beginning of the round end
    double end_mm = 0.0;     // of the round end
    double half_depth_mm = 0.0;
    double half_width_mm = 0.0;
    double tip_share = 1.0;
  };
  // Across the axis, in half-axes of the skin less `depth_mm`.
  struct Across {
    Eigen::Vector3d axis_mm;
    Eigen::Vector3d off_mm;
    double share = 0.0;
  };
  Across across(const Round& round, const Eigen::Vector3d& p, double depth_mm) const;
  const Round& of(Digit digit) const { return rounds_[static_cast<std::size_t>(digit)]; }

  std::array<Round, 5> rounds_;
};

}  // namespace endplate::limb
