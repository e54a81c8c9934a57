#pragma once
// The beds in which the great nerves slide, from the spinal nerves to a fingertip, and what a pose
// does to them.
//
// A bed is a row of places that move with the joints (nerve_line.hpp). Above the course it is the
// straight line to the intervertebral foramen, in a finger straight lines past the joints. Corners
// are rounded as a nerve rounds them.
#include <Eigen/Core>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/nerve_slide.hpp"

namespace endplate::limb {

// Of nerve_motion_parameters.csv and fitted_motion.csv. Lengths in mm on the ledger limb.
struct MotionParameters {
  double tether_mm = 0.0;          // of arm and forearm
  double cubital_tether_mm = 0.0;  // of the ulnar nerve about the elbow
  double hand_tether_mm = 0.0;
  double scatter = 0.0;            // SD of the log of published excursions against the model's
  double before_knuckle_mm = 0.0;  // of a palmar digital nerve
  double before_middle_joint_mm = 0.0;
  double before_end_joint_mm = 0.0;
  double behind_knuckle_mm = 0.0;  // of a dorsal one

  static Expected<MotionParameters> from(const evidence::DataPackage& package);
};

// As nerve_beds.csv names it.
struct BedPlan {
  std::string bed;
  std::string nerve;                 // standard term
  std::vector<std::size_t> courses;  // of the atlas, one going on where a branch leaves
  std::optional<Finger> finger;      // to whose tip it goes on
  bool dorsal = false;               // on the back of the finger, to its middle joint
};

// An unknown course or digit is an error of the data files.
Expected<std::vector<BedPlan>> bed_plans(const evidence::DataPackage& package, const Atlas& atlas);

// One place of a bed in one limb.
struct BedPlace {
  NervePlace place;
  double on_root = 0.0;  // 1 at the foramen to 0 where the course begins
};

class NerveBed {
 public:
  NerveBed(const BedPlan& plan, const Atlas& atlas, const SegmentFrames& frames,
           const LimbJoints& joints, const BodyEnvelope& envelope,
           const MotionParameters& parameters);

  const std::string& nerve() const { return nerve_; }
  const std::vector<BedPlace>& places() const { return places_; }
  const std::vector<double>& rest_mm() const {
    return rest_mm_;
  }  // arc lengths in the neutral pose
  const std::vector<double>& tether_mm() const { return tether_mm_; }
  // The bed's way in a pose, one row a place, limb frame.
  std::vector<Eigen::Vector3d> way_mm(const PosedNerves& nerves) const;
  const std::vector<Eigen::Vector3d>& rest_way_mm() const { return rest_way_mm_; }
  // The places between which a course of the atlas lies; empty range where it is not of this bed.
  std::pair<std::size_t, std::size_t> range_of(std::size_t course) const;

 private:
  void add_finger(const BedPlan& plan, const SegmentFrames& frames, const LimbJoints& joints,
                  const MotionParameters& parameters);
  std::vector<Eigen::Vector3d> rounded(std::vector<Eigen::Vector3d> way) const;

  std::string nerve_;
  std::vector<BedPlace> places_;
  std::vector<std::size_t> course_of_;  // by place; npos for root and finger
  Eigen::Vector3d foramen_;
  std::vector<Eigen::Vector3d> rest_way_mm_;
  std::vector<double> rest_mm_;
  std::vector<double> tether_mm_;
};

// What a pose does to a bed.
struct BedMotion {
  std::vector<Eigen::Vector3d> way_mm;
  std::vector<double> arc_mm;  // along that way
  Slide slide;
  double lengthening_mm = 0.0;  // of the whole bed
};
BedMotion motion(const NerveBed& bed, const PosedNerves& nerves);

}  // namespace endplate::limb
