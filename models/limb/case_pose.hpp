#pragma once
// The pose in which a case is answered: the one asked for, as far as the skin of the mean limb lets
// the joints go.
#include <map>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct CasePose {
  LimbJoints joints;
  BodyEnvelope envelope;
  Pose pose;
  std::vector<std::string> assumptions;  // where a joint was held, and what a pose leaves out

  // `frames`: of the mean limb. A pose with all joints straight is answered at once; any other
  // costs a judgement of the skin (skin_contact.hpp).
  static Expected<CasePose> from(const evidence::DataPackage& package, const SegmentFrames& frames,
                                 const std::map<std::string, double>& pose_deg);
};

}  // namespace endplate::limb
