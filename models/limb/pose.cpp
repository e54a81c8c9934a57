#include "models/limb/pose.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <numbers>
#include <string_view>

namespace endplate::limb {
namespace {

// A fist: of the middle and the end joint against the knuckle, from the usual full flexion of 90,
// 100 and 80 degrees (rows JT_172, JT_174, JT_175).
constexpr double kPipShare = 100.0 / 90.0;
constexpr double kDipShare = 80.0 / 90.0;
constexpr std::array<std::string_view, 4> kFingers{"index", "middle", "ring", "little"};

}  // namespace

bool Pose::is_neutral() const {
  const auto straight = [](const FingerPose& finger) {
    return finger.mcp_flexion == 0.0 && finger.pip_flexion == 0.0 && finger.dip_flexion == 0.0;
  };
  return shoulder_abduction == 0.0 && shoulder_flexion == 0.0 &&
         shoulder_external_rotation == 0.0 && elbow_flexion == 0.0 && forearm_pronation == 0.0 &&
         wrist_extension == 0.0 && wrist_ulnar_deviation == 0.0 &&
         std::ranges::all_of(fingers, straight) && thumb.palmar_abduction == 0.0 &&
         thumb.cmc_flexion == 0.0 && thumb.mcp_flexion == 0.0 && thumb.ip_flexion == 0.0;
}

Pose pose_from(const std::map<std::string, double>& pose_deg) {
  const auto angle = [&](const std::string& key) {
    const auto found = pose_deg.find(key);
    return found == pose_deg.end() ? 0.0 : found->second * std::numbers::pi / 180.0;
  };
  Pose pose;
  pose.shoulder_abduction = angle("shoulder_abduction_deg");
  pose.shoulder_flexion = angle("shoulder_flexion_deg");
  pose.shoulder_external_rotation = angle("shoulder_external_rotation_deg");
  pose.elbow_flexion = angle("elbow_flexion_deg");
  pose.forearm_pronation = angle("forearm_pronation_deg");
  pose.wrist_extension = angle("wrist_extension_deg");
  pose.wrist_ulnar_deviation = angle("wrist_ulnar_deviation_deg");
  const double fist = angle("fingers_flexion_deg");
  for (std::size_t i = 0; i < pose.fingers.size(); ++i) {
    const auto joint = [&](const char* name, double with_all) {
      const std::string key = fmt::format("{}_{}_flexion_deg", kFingers[i], name);
      return pose_deg.contains(key) ? angle(key) : with_all;
    };
    pose.fingers[i] = {joint("mcp", fist), joint("pip", kPipShare * fist),
                       joint("dip", kDipShare * fist)};
  }
  pose.thumb.palmar_abduction = angle("thumb_palmar_abduction_deg");
  pose.thumb.cmc_flexion = angle("thumb_cmc_flexion_deg");
  pose.thumb.mcp_flexion = angle("thumb_mcp_flexion_deg");
  pose.thumb.ip_flexion = angle("thumb_ip_flexion_deg");
  return pose;
}

}  // namespace endplate::limb
