#pragma once
// The joints of one limb in the anatomical position.
#include <Eigen/Core>
#include <map>
#include <string>
#include <string_view>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// As limb_joints.csv gives it, on the ledger limb.
struct JointPlace {
  Segment segment = Segment::humerus;
  SegmentPoint place;
  double half_zone_mm = 0.0;  // on either side of a hinge, where the flesh folds; 0 for the others
};

class LimbJoints {
 public:
  static Expected<LimbJoints> from(const evidence::DataPackage& package);

  // In the limb frame of `frames`, mm. Expects a joint of the table.
  Eigen::Vector3d centre_mm(std::string_view joint, const SegmentFrames& frames) const;
  // Grows with the breadth of the limb.
  double half_zone_mm(std::string_view joint, const SegmentFrames& frames) const;

 private:
  const JointPlace& at(std::string_view joint) const { return joints_.find(joint)->second; }

  std::map<std::string, JointPlace, std::less<>> joints_;
};

}  // namespace endplate::limb
