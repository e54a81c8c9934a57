#pragma once
// How big is this limb: the answer as plain data.
#include <Eigen/Core>
#include <cstdint>
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
  Eigen::Vector3d position_mm;  // of the mean limb, in the limb frame (segment_frames.hpp)
  Eigen::Vector3d sd_mm;        // of size and placement together
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
};

struct NerveLength {
  std::string nerve;
  Summary length_mm;
  double strain = 0.0;  // against the neutral pose
  std::vector<std::string> sources;
};

struct LimbAnswer {
  Side side = Side::right;
  std::vector<SizedMeasure> segments;
  std::vector<SizedMeasure> breadths;
  std::vector<SizedMeasure> girths;
  Summary stature_mm;
  std::optional<double> stature_percentile;
  std::vector<PlacedLandmark> landmarks;
  std::vector<NerveLength> nerves;  // the named nerves of the limb
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;  // where the limb lies outside what was published
  std::vector<std::string> sources;
};

// In the anatomical position. A pose that bends a joint is outside the model.
// `samples` >= 2 sampled limbs give the spread of landmarks and nerves.
Expected<LimbAnswer> answer_limb(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const casefile::Limb& limb,
                                 int samples, std::uint64_t seed);

}  // namespace endplate::limb
