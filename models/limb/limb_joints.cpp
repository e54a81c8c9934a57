#include "models/limb/limb_joints.hpp"

#include <fmt/format.h>

#include <array>

namespace endplate::limb {
namespace {

constexpr std::array<std::string_view, 24> kNeeded{"shoulder",
                                                   "elbow",
                                                   "wrist",
                                                   "proximal radioulnar",
                                                   "distal radioulnar",
                                                   "sternoclavicular",
                                                   "acromioclavicular",
                                                   "intervertebral foramen",
                                                   "index metacarpophalangeal",
                                                   "index proximal interphalangeal",
                                                   "index distal interphalangeal",
                                                   "middle metacarpophalangeal",
                                                   "middle proximal interphalangeal",
                                                   "middle distal interphalangeal",
                                                   "ring metacarpophalangeal",
                                                   "ring proximal interphalangeal",
                                                   "ring distal interphalangeal",
                                                   "little metacarpophalangeal",
                                                   "little proximal interphalangeal",
                                                   "little distal interphalangeal",
                                                   "thumb carpometacarpal",
                                                   "thumb metacarpophalangeal",
                                                   "thumb interphalangeal",
                                                   "thumb tip"};

}  // namespace

Expected<LimbJoints> LimbJoints::from(const evidence::DataPackage& package) {
  LimbJoints result;
  for (const evidence::Row row : package.table("limb_joints")) {
    // The schema allows the words of a segment only.
    result.joints_.emplace(row.text("joint"),
                           JointPlace{segment_from(row.text("segment")).value(),
                                      {row.number("fraction").value(), row.number("x_mm").value(),
                                       row.number("z_mm").value()},
                                      row.number("half_zone_mm").value_or(0.0)});
  }
  std::vector<Problem> problems;
  for (const std::string_view joint : kNeeded) {
    if (result.joints_.contains(joint)) continue;
    problems.push_back(
        {"limb_joints.csv", fmt::format("the '{}' joint has no row", joint), "Add its centre."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return result;
}

Eigen::Vector3d LimbJoints::centre_mm(std::string_view joint, const SegmentFrames& frames) const {
  return frames.to_limb(at(joint).segment, at(joint).place);
}

double LimbJoints::half_zone_mm(std::string_view joint, const SegmentFrames& frames) const {
  return at(joint).half_zone_mm * frames.scale().breadth;
}

}  // namespace endplate::limb
