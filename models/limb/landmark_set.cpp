#include "models/limb/landmark_set.hpp"

#include <array>
#include <utility>

namespace endplate::limb {
namespace {

std::optional<Bone> bone_from(std::string_view text) {
  constexpr std::array<std::pair<std::string_view, Bone>, 7> kBones{{{"thorax", Bone::thorax},
                                                                     {"clavicle", Bone::clavicle},
                                                                     {"scapula", Bone::scapula},
                                                                     {"humerus", Bone::humerus},
                                                                     {"ulna", Bone::ulna},
                                                                     {"radius", Bone::radius},
                                                                     {"hand", Bone::hand}}};
  for (const auto& [word, bone] : kBones) {
    if (word == text) return bone;
  }
  return std::nullopt;  // soft
}

}  // namespace

Expected<LandmarkSet> LandmarkSet::from(const evidence::DataPackage& package) {
  LandmarkSet set;
  for (const evidence::Row row : package.table("limb_landmarks")) {
    Landmark landmark;
    landmark.name = row.text("landmark");
    // The schema allows these words only.
    landmark.segment = segment_from(row.text("segment")).value();
    landmark.place = {row.number("fraction").value(), row.number("x_mm").value(),
                      row.number("z_mm").value()};
    landmark.bone = bone_from(row.text("bone"));
    landmark.sd_mm = row.number("sd_mm").value();
    landmark.provenance = evidence::provenance_from(row.text("provenance")).value();
    landmark.reason = row.text("reason");
    set.index_of_.emplace(landmark.name, set.landmarks_.size());
    set.landmarks_.push_back(std::move(landmark));
  }
  return set;
}

const Landmark* LandmarkSet::find(std::string_view name) const {
  const auto found = index_of_.find(name);
  return found == index_of_.end() ? nullptr : &landmarks_[found->second];
}

std::optional<Eigen::Vector3d> LandmarkSet::position_mm(std::string_view name,
                                                        const SegmentFrames& frames) const {
  const Landmark* landmark = find(name);
  if (landmark == nullptr) return std::nullopt;
  return position_mm(*landmark, frames);
}

Eigen::Vector3d LandmarkSet::posed_mm(const Landmark& landmark, const SegmentFrames& frames,
                                      const PosedSpace& space) {
  const Eigen::Vector3d neutral = position_mm(landmark, frames);
  return landmark.bone ? space.of_bone(*landmark.bone) * neutral : space.flesh(neutral);
}

}  // namespace endplate::limb
