#pragma once
// The landmarks of the neutral limb, each in the frame of a segment, and the bones
// with which they move.
#include <Eigen/Core>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct Landmark {
  std::string name;  // landmark_std of landmarks.csv
  Segment segment = Segment::humerus;
  SegmentPoint place;        // on the ledger limb
  std::optional<Bone> bone;  // that it moves with; nothing: it moves with the flesh
  double sd_mm = 0.0;        // of the placement on the ledger limb, in each direction
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
};

class LandmarkSet {
 public:
  // Reads limb_landmarks.csv, whose schema asks a reason of every row.
  static Expected<LandmarkSet> from(const evidence::DataPackage& package);

  const std::vector<Landmark>& landmarks() const { return landmarks_; }
  // By exact name; nullptr when the set does not hold it.
  const Landmark* find(std::string_view name) const;
  // In the limb frame of `frames`, mm.
  static Eigen::Vector3d position_mm(const Landmark& landmark, const SegmentFrames& frames) {
    return frames.to_limb(landmark.segment, landmark.place);
  }
  std::optional<Eigen::Vector3d> position_mm(std::string_view name,
                                             const SegmentFrames& frames) const;
  // The same in a pose; `space` is that of `frames`.
  static Eigen::Vector3d posed_mm(const Landmark& landmark, const SegmentFrames& frames,
                                  const PosedSpace& space);

 private:
  std::vector<Landmark> landmarks_;
  std::map<std::string, std::size_t, std::less<>> index_of_;
};

}  // namespace endplate::limb
