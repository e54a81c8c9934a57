#pragma once
// How a published excursion, strain or change of a nerve's bed is read on the model.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/nerve_bed.hpp"
#include "models/limb/pose.hpp"

namespace endplate::limb {

enum class MotionQuantity {
  excursion_mm,    // of the nerve against the bone at a place, toward the hand
  strain_percent,  // of the nerve about a place, against the neutral pose
  bed_mm,          // change in length of the whole bed
  bed_percent,     // the same, of the bed from armpit to palm
};

// A row of nerve_motion_measures.csv with its figures from nerve_paths.csv.
struct MotionMeasure {
  std::string row;  // of nerve_paths
  std::string bed;
  std::string nerve;
  MotionQuantity quantity = MotionQuantity::excursion_mm;
  Segment segment = Segment::humerus;
  double fraction = 0.0;
  double proximal_mm = 0.0;  // on the ledger limb
  std::map<std::string, double> from_deg;
  std::map<std::string, double> to_deg;
  double sign = 1.0;  // that the change must have: toward the hand and longer are positive
  bool judged = false;
  std::string note;
  std::string study;
  std::string place;  // in the words of the source
  std::string posture;
  int limbs = 0;  // 0 where not told
  bool recalled = false;
  // Printed, with the sign of `sign`; NaN where not.
  double mean = 0.0;
  double sd = 0.0;
  double low = 0.0;
  double high = 0.0;
};

// Nine limbs in ten lie within so many standard deviations of the mean.
inline constexpr double kNineInTen = 1.645;

// Whether a change lies within what was published of limbs: the range, or the mean and kNineInTen
// standard deviations. Empty where neither was printed.
std::optional<bool> within_published(const MotionMeasure& measure, double change);

// An unknown bed or pose is an error of the data files.
Expected<std::vector<MotionMeasure>> motion_measures(const evidence::DataPackage& package);

// The ledger limb with its beds, in whatever pose.
class MotionModel {
 public:
  MotionModel(const Atlas& atlas, const LimbJoints& joints, const BodyEnvelope& envelope,
              const std::vector<BedPlan>& plans, const SegmentFrames& frames);

  // The change from the one pose to the other.
  double read(const MotionMeasure& measure, const MotionParameters& parameters) const;

  const SegmentFrames& frames() const { return frames_; }

 private:
  double in_pose(const MotionMeasure& measure, const NerveBed& bed,
                 const std::map<std::string, double>& pose_deg) const;

  const Atlas& atlas_;
  const LimbJoints& joints_;
  const BodyEnvelope& envelope_;
  const std::vector<BedPlan>& plans_;
  SegmentFrames frames_;
};

}  // namespace endplate::limb
