#include "models/limb/landmark_set.hpp"

#include <utility>

#include "models/limb/bone_words.hpp"

namespace endplate::limb {

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
