#pragma once
// How the thumb moves against the hand: saddle joint at its root, two hinges beyond.
//
// Places in and out are in the limb frame of a right limb in the anatomical position but for the
// thumb, mm; the joints proximal to it are posed_space.hpp's.
#include <Eigen/Geometry>
#include <array>

#include "geometry/joint_bend.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

enum class ThumbBone { metacarpal, proximal_phalanx, distal_phalanx };

class ThumbBend {
 public:
  // `frames`: of a right limb.
  ThumbBend(const SegmentFrames& frames, const LimbJoints& joints, const ThumbPose& pose);

  const Eigen::Isometry3d& of_bone(ThumbBone bone) const {
    return bones_[static_cast<std::size_t>(bone)];
  }
  // Skin and muscle. `share`: 0 on the palm, 1 on the thumb, between where the palm's skin is drawn
  // along. About the root the flesh comes along less than the metacarpal does, its further part as
  // far.
  Eigen::Vector3d flesh(const Eigen::Vector3d& neutral_mm, double share) const;

 private:
  Eigen::Isometry3d at_root(double share) const;

  Eigen::Vector3d root_;
  Eigen::Vector3d along_;  // a step along the metacarpal in its lengths
  Eigen::Vector3d root_axis_;
  double root_angle_ = 0.0;
  geometry::JointBend knuckle_;  // metacarpophalangeal
  geometry::JointBend end_;      // interphalangeal
  std::array<Eigen::Isometry3d, 3> bones_;
};

}  // namespace endplate::limb
