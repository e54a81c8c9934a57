#pragma once
// What a pose does to the great nerves: length of the bed, slide and strain at named places.
#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/nerve_bed.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// Published movements scatter by a factor about the model's: both are lognormal, of one sign.
struct StationMotion {
  std::string place;     // "just above the wrist crease"
  Summary excursion_mm;  // toward the hand, against the bone beside it and the neutral pose
  Summary strain;        // of the nerve, as a fraction; negative is slack
};

struct BedAnswer {
  std::string nerve;            // standard term
  double bed_mm = 0.0;          // from the intervertebral foramen to the fingertip, in the pose
  double lengthening_mm = 0.0;  // against the neutral pose
  std::vector<StationMotion> stations;  // from the shoulder on
  std::vector<std::string> sources;     // ids of nerve_paths.csv
};

// The beds of one limb in one pose.
class PosedBeds {
 public:
  // In the neutral pose all changes are 0.
  static Expected<PosedBeds> from(const evidence::DataPackage& package, const Atlas& atlas,
                                  const SegmentFrames& frames, const LimbJoints& joints,
                                  const BodyEnvelope& envelope, const Pose& pose);

  const std::vector<BedAnswer>& answers() const { return answers_; }

  // Mean strain of a nerve that runs along `neutral_mm` at rest, with its slide; nothing where it
  // lies in none of the beds, for what holds it is not modelled.
  std::optional<double> strain_of(const std::vector<Eigen::Vector3d>& neutral_mm) const;

 private:
  std::vector<NerveBed> beds_;
  std::vector<BedMotion> motions_;
  std::vector<BedAnswer> answers_;
};

}  // namespace endplate::limb
