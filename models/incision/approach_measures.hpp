#pragma once
// How the limb takes each published distance of approaches.csv (approach_measures.csv), and the
// distance itself on one atlas. Definitions as in docs/course-measures.md; what is measured from a
// portal, a pin or a needle is the nearest distance from its track.
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/incision/approach_plans.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/body_envelope.hpp"
#include "models/limb/limb_joints.hpp"

namespace endplate::incision {

// What a ledger row prints, mm; nothing where it does not.
struct Published {
  std::string row;  // of approaches.csv
  std::string study;
  std::string surface;
  std::string rule;  // in the words of the ledger
  std::optional<double> mean_mm;
  std::optional<double> sd_mm;
  std::optional<double> min_mm;
  std::optional<double> max_mm;
  std::optional<double> limbs;  // how many were measured

  // Within one standard deviation of the mean, or within the range where no deviation is printed;
  // nothing where neither is.
  std::optional<bool> holds(double computed_mm) const;
};

struct ApproachMeasure {
  Published published;
  std::string fitted_as;  // measure of the atlas that is the same quantity; empty: `measure` alone
  limb::NerveMeasure measure;
  // The place from which it is measured lies so far from the landmark: in its segment's frame,
  // anterior, proximal and lateral, mm, on a limb of any size.
  Eigen::Vector3d from_landmark_mm = Eigen::Vector3d::Zero();
  // Of a track: its plan and the nerves of which the nearest counts.
  std::optional<ApproachPlan> track;
  std::vector<std::string> nerves;
  std::map<std::string, double> pose_deg;
  double sign = 1.0;       // brings the computed figure to the sign of the printed one
  double arm_scale = 1.0;  // arm of the study over that of the ledger limb
  bool median = false;     // printed instead of the mean
  std::string fit_study;   // under which the fit of the courses used the study; empty: it did not
  evidence::Provenance provenance = evidence::Provenance::assumed;
  std::string reason;
};

// In the order of the table. Fault::internal: the tables contradict each other.
Expected<std::vector<ApproachMeasure>> approach_measures(const evidence::DataPackage& package,
                                                         const limb::Atlas& atlas);

// Of a measure that is no track, on the limb of its study in its pose, with the printed sign, mm;
// nothing where its crossing is not there.
std::optional<double> taken_mm(const ApproachMeasure& measure, const limb::Atlas& atlas,
                               const limb::LimbJoints& joints, const limb::BodyEnvelope& envelope);

// Of those that are tracks: the distances in sampled limbs of the mean size, by measure; the
// others' lists are empty. The landmark of the entry stands as far from its place as
// limb_landmarks.csv says. The limbs depend on the seed alone.
Expected<std::vector<std::vector<double>>> track_samples_mm(
    const evidence::DataPackage& package, const anatomy::NerveTree& tree,
    const std::vector<ApproachMeasure>& measures, int count, std::uint64_t seed);

}  // namespace endplate::incision
