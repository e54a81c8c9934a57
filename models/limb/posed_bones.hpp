#pragma once
// The bones of one posed limb as the capsules of bone_capsules.csv, to keep nerves out of them.
#include <Eigen/Geometry>
#include <vector>

#include "models/limb/body_envelope.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

class PosedBones {
 public:
  // `frames` and `space` of the same limb.
  PosedBones(const BodyEnvelope& envelope, const SegmentFrames& frames, const PosedSpace& space);

  // Distance of a posed place to the nearest cortex, mm; negative inside a bone.
  double clearance_mm(const Eigen::Vector3d& posed_mm) const;
  // The nearest place that is at least so far from every cortex; itself where it is. A place
  // between two bones closer together than twice that distance ends up at the cortex of one.
  Eigen::Vector3d outside(const Eigen::Vector3d& posed_mm, double clearance_mm) const;

 private:
  struct Capsule {
    Eigen::Vector3d from_mm;
    Eigen::Vector3d along_mm;  // to the other end
    double per_square = 0.0;   // 1 over its squared length; 0 for a sphere
    double radius_mm = 0.0;
    // Where nerves give way to this bone, unit; zero: to the nearest side.
    Eigen::Vector3d way_out = Eigen::Vector3d::Zero();
  };
  static Eigen::Vector3d from_axis(const Capsule& capsule, const Eigen::Vector3d& p);

  std::vector<Capsule> capsules_;
};

}  // namespace endplate::limb
