#pragma once
// What a pose does to the great nerves: length of the bed, slide and strain at named places.
#include <Eigen/Core>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/nerve_bed.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// A value between 90 % limits: published movements scatter by a factor about the model's.
struct Scattered {
  double value = 0.0;
  double low = 0.0;
  double high = 0.0;
};

struct StationMotion {
  std::string place;       // "wrist, just above the crease"
  Scattered excursion_mm;  // toward the hand, against the bone beside it and the neutral pose
  Scattered strain;        // of the nerve, as a fraction; negative is slack
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

  // Mean strain of a nerve that runs along `neutral_mm` at rest and `posed_mm` in the pose: with
  // the slide where it lies in one of the beds, else as if fixed at both ends.
  double strain_of(const std::vector<Eigen::Vector3d>& neutral_mm,
                   const std::vector<Eigen::Vector3d>& posed_mm) const;

 private:
  std::vector<NerveBed> beds_;
  std::vector<BedMotion> motions_;
  std::vector<BedAnswer> answers_;
};

}  // namespace endplate::limb
