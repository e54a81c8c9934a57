#pragma once
// What a pose does to the great nerves: length of the bed, slide and strain at named places.
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"
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
  // Of the part of the bed that bears the nerve's name.
  double mean_strain = 0.0;
  std::vector<std::string> sources;  // ids of nerve_paths.csv
};

// On the mean limb of `frames`. In the neutral pose all is 0.
Expected<std::vector<BedAnswer>> bed_answers(const evidence::DataPackage& package,
                                             const Atlas& atlas, const SegmentFrames& frames,
                                             const LimbJoints& joints, const BodyEnvelope& envelope,
                                             const Pose& pose);

}  // namespace endplate::limb
