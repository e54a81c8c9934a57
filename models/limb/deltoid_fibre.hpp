#pragma once
// How the deltoid carries what lies in it.
//
// Its middle fibres run from the lateral edge of the acromion to the deltoid tuberosity. When the
// arm is raised these ends come closer, and what lies within the muscle keeps its place as a
// fraction of the fibre: so the axillary nerve comes nearer to the acromion in abduction.
#include <Eigen/Geometry>

#include "models/limb/landmark_set.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

class DeltoidFibre {
 public:
  // `frames` and `space` of the same limb.
  DeltoidFibre(const LandmarkSet& landmarks, const SegmentFrames& frames, const PosedSpace& space);

  // Where a place within the muscle comes to lie, limb frame, mm.
  Eigen::Vector3d operator()(const Eigen::Vector3d& neutral_mm) const;

 private:
  Eigen::Vector3d origin_;
  Eigen::Vector3d fibre_;  // to the insertion
  Eigen::Vector3d posed_origin_;
  Eigen::Vector3d posed_fibre_;
  Eigen::Matrix3d turn_;  // of what lies beside the fibre
};

}  // namespace endplate::limb
