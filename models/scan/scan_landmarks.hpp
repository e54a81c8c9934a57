#pragma once
// The landmarks that are picked on a scanned skin, and the file in which a user writes them.
#include <Eigen/Core>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::scan {

// A place of the neutral limb and what carries it; its place on the skin is the nearest one.
struct ScanLandmark {
  std::string name;
  limb::Segment segment = limb::Segment::humerus;
  limb::SegmentPoint place;
  limb::Bone bone = limb::Bone::humerus;
  std::optional<limb::Finger> finger;  // carried by it instead
  double sd_mm = 0.0;                  // of the placement in each direction

  // In the limb frame of the frames behind `space`.
  Eigen::Vector3d posed_mm(const limb::SegmentFrames& frames, const limb::PosedSpace& space) const;
};

class ScanLandmarks {
 public:
  // Reads scan_landmarks.csv. A place that neither limb_landmarks.csv nor limb_joints.csv has is
  // Fault::internal.
  static Expected<ScanLandmarks> from(const evidence::DataPackage& package);

  const std::vector<ScanLandmark>& all() const { return landmarks_; }
  // Capital letters do not matter.
  std::optional<std::size_t> find(std::string_view name) const;
  std::vector<std::string> nearest(std::string_view name) const;

 private:
  std::vector<ScanLandmark> landmarks_;
};

struct PickedLandmark {
  std::size_t landmark = 0;                            // of ScanLandmarks::all()
  Eigen::Vector3d position = Eigen::Vector3d::Zero();  // in the frame and unit of the scan's file
};

// CSV with the columns landmark, x, y, z and one landmark a row. Refuses what is no such file, an
// unknown landmark (the nearest names are given), one picked twice, and what is not finite.
Expected<std::vector<PickedLandmark>> read_picked_landmarks(const std::filesystem::path& file,
                                                            const ScanLandmarks& landmarks);

}  // namespace endplate::scan
