#pragma once
// How big is this limb: the answer as plain data.
#include <Eigen/Core>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/core/side.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/limb/bed_answer.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct SizedMeasure {
  std::string label;       // "upper arm"
  std::string name;        // "acromion to lateral epicondyle"
  std::string definition;  // from where to where
  Summary size_mm;
  // How many in a hundred people of that sex and age have less than the mean; absent where their
  // spread is not published, or nothing is known of the patient.
  std::optional<double> percentile;
  evidence::Provenance provenance = evidence::Provenance::read;
  std::string reason;
};

struct PlacedLandmark {
  std::string name;
  Segment segment = Segment::humerus;
  // Of the mean limb in the case's pose, in the limb frame (segment_frames.hpp): the thorax stays.
  Eigen::Vector3d position_mm;
  Eigen::Vector3d sd_mm;  // of size and placement together
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
};

struct NerveLength {
  std::string nerve;
  Summary length_mm;
  // Mean over the nerve, against the neutral pose; nothing where the model holds no bed of it.
  std::optional<double> strain;
  // Where it runs on the mean limb in the pose, in steps of at most 10 mm; empty where the model
  // knows no more than its length.
  std::vector<Eigen::Vector3d> path_mm;
  std::vector<std::string> sources;
};

// The frame of one bone of the mean limb in the pose: unit vectors and origin in the limb frame. At
// rest ulna and radius share the forearm's.
struct BoneFrame {
  std::string bone;
  Eigen::Vector3d origin_mm;
  Eigen::Vector3d anterior;
  Eigen::Vector3d proximal;
  Eigen::Vector3d lateral;
};

struct LimbAnswer {
  Side side = Side::right;
  std::map<std::string, double> pose_deg;  // as asked; empty in the anatomical position
  std::vector<BoneFrame> frames;
  std::vector<SizedMeasure> segments;
  std::vector<SizedMeasure> breadths;
  std::vector<SizedMeasure> girths;
  Summary stature_mm;
  std::optional<double> stature_percentile;
  std::vector<PlacedLandmark> landmarks;
  std::vector<NerveLength> nerves;  // the named nerves of the limb
  std::vector<BedAnswer> beds;      // in a pose: what it does to the great nerves
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;  // where the limb lies outside what was published
  std::vector<std::string> sources;
};

// In the pose of the case, as far as the skin of its mean limb lets the joints go, and with the
// ulnar nerve where the operations laid it.
// `samples` >= 2 sampled limbs give the spread of landmarks and nerves.
Expected<LimbAnswer> answer_limb(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                 const std::vector<casefile::Operation>& operations, int samples,
                                 std::uint64_t seed);

}  // namespace endplate::limb
