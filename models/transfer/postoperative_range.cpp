#include "models/transfer/postoperative_range.hpp"

#include <map>

namespace endplate::transfer {

const std::vector<JointRange>& postoperative_range() {
  static const std::vector<JointRange> ranges{
      {"shoulder_abduction_deg", 0.0, 90.0,
       "common practice: the arm is brought to the horizontal"},
      {"shoulder_flexion_deg", 0.0, 90.0, "common practice: the arm is brought to the horizontal"},
      {"shoulder_external_rotation_deg", -60.0, 60.0,
       "least normal lateral rotation (JT_124), inward alike (assumed)"},
      {"elbow_flexion_deg", 0.0, 140.0, "least normal flexion (JT_131)"},
      {"forearm_pronation_deg", 0.0, 160.0,
       "least normal pronation and supination (JT_138, JT_145)"},
      {"wrist_extension_deg", -60.0, 60.0, "least normal flexion and extension (JT_152, JT_159)"},
      {"fingers_flexion_deg", 0.0, 90.0, "a fist (common practice)"}};
  return ranges;
}

std::vector<limb::Pose> postures(const std::vector<JointRange>& ranges) {
  std::vector<std::map<std::string, double>> angles(1);
  for (const JointRange& range : ranges) {
    std::vector<std::map<std::string, double>> next;
    for (const auto& before : angles) {
      for (const double angle :
           {range.low_deg, 0.5 * (range.low_deg + range.high_deg), range.high_deg}) {
        next.push_back(before);
        next.back()[range.joint] = angle;
      }
    }
    angles = std::move(next);
  }
  std::vector<limb::Pose> poses;
  for (const auto& pose : angles) poses.push_back(limb::pose_from(pose));
  return poses;
}

}  // namespace endplate::transfer
