#include "models/limb/case_pose.hpp"

#include <fmt/format.h>

#include <utility>

#include "models/limb/skin_contact.hpp"

namespace endplate::limb {

Expected<CasePose> CasePose::from(const evidence::DataPackage& package, const SegmentFrames& frames,
                                  const std::map<std::string, double>& pose_deg) {
  auto joints = LimbJoints::from(package);
  if (!joints) return std::unexpected(joints.error());
  auto envelope = BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(envelope.error());
  CasePose result{std::move(*joints), std::move(*envelope), pose_from(pose_deg), {}};
  if (result.pose.is_neutral()) return result;

  constexpr int kFineness = 1;
  const SegmentFrames right(frames.scale());  // both sides alike
  const SkinMesh skin = make_skin(right, result.envelope, result.joints, kFineness);
  const ContactLimit limit = limit_contact(skin, right, result.joints, result.pose);
  result.pose = limit.pose;
  for (const std::string& contact : limit.contacts) {
    result.assumptions.push_back(fmt::format("On this limb {}.", contact));
  }
  if (limit.crosses_elsewhere) {
    result.assumptions.emplace_back(
        "The modelled skin crosses itself somewhere in this pose, as between two fingers of which "
        "one "
        "is bent alone; distances over the skin there may be wrong.");
  }
  result.assumptions.emplace_back(
      "In the pose the thorax stays and the joints turn about assumed centres; of three degrees of "
      "elevation the humerus takes two, scapula and clavicle one.");
  return result;
}

}  // namespace endplate::limb
