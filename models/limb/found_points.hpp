#pragma once
// Points of nerves that ultrasound found on the patient: what they say of the other levels of the
// same courses, and of the limb's size.
//
// On a limb whose segments are `ratio` times those of the mean limb (arm, forearm, hand) a level
// lies at parts . ratio + sd z, z normal with the correlation of level_spread.hpp along a course
// and none between courses. A point was found at a landmark and an offset, which stays what was
// measured whatever the size of the limb: found = found_parts . ratio + offset (1 - ratio). It
// equals the point's level but for the observer's error and that of the landmark, which all points
// found from one landmark share. All of it is linear and normal, so it is conditioned in closed
// form: first the size, then z given the size.
#include <Eigen/Core>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/case_limb_course.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/level_spread.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/nerve_route_layout.hpp"

namespace endplate::limb {

// The mean difference between ultrasound and dissection at the nerve where it was largest, the
// branch of the musculocutaneous nerve to brachialis (5.1 mm; 1.0 mm at the best; Abdullah et al.,
// Surg Radiol Anat 2025, doi 10.1007/s00276-025-03596-x, abstract). Taken as the standard deviation
// of an observer who gives none.
inline constexpr double kObserver_mm = 5.1;

struct FoundPoint {
  PointRef point;  // of the atlas
  Level level;     // where limbs of this size have it
  casefile::AtLandmark at;
  double found_mm = 0.0;  // arc length on the mean limb
  Eigen::Vector3d found_parts_mm = Eigen::Vector3d::Zero();
  Segment found_in = Segment::humerus;  // the segment along which the offset runs
  double landmark_sd_mm = 0.0;          // of the landmark's placement
  double error_mm = 0.0;                // of the observer

  // How far distal of the point's level it was found, on a limb of these ratios.
  double surprise_mm(const Eigen::Vector3d& ratio) const;
};

// The names of the points of a nerve (standard term) that may be found, each once, in the order of
// the table.
std::vector<std::string> points_to_find(const std::string& nerve,
                                        const evidence::DataPackage& package);

// Problems stand at "/limb/ultrasound/INDEX/...": a nerve that has no such point on a course, a
// landmark that the limb lacks, a level that the course does not reach.
Expected<std::vector<FoundPoint>> find_points(const std::vector<casefile::LocatedPoint>& located,
                                              const evidence::DataPackage& package,
                                              const Atlas& atlas, const SegmentFrames& frames,
                                              const std::vector<CaseLimbCourse>& courses,
                                              const LevelSpread& spread);

class FoundPoints {
 public:
  FoundPoints() = default;
  // `levels` as the layout has them before anything was found.
  FoundPoints(std::vector<FoundPoint> points, const std::vector<Level>& levels);

  bool empty() const { return points_.empty(); }
  const std::vector<FoundPoint>& points() const { return points_; }

  // What they say of the size. `size` is that of the mean limb.
  Observation size_observation(const LimbSize& size) const;
  // Standard deviation of surprise_mm before anything was found.
  double surprise_sd_mm(std::size_t point, const LimbSize& size) const;

  // z of the levels: a draw from the prior becomes one from the posterior. `normals`: two standard
  // normal numbers for each point.
  Eigen::VectorXd correct(const Eigen::VectorXd& prior_draw, const Eigen::Vector3d& ratio,
                          const Eigen::VectorXd& normals) const;
  // Posterior mean of z on the mean limb, and its covariance.
  Gaussian posterior() const;

 private:
  Eigen::MatrixXd own_covariance(const Eigen::VectorXd& sds_mm) const;  // of sd z + errors
  Eigen::VectorXd sds_mm(const Eigen::Vector3d& ratio) const;

  std::vector<FoundPoint> points_;
  Eigen::MatrixXd level_correlation_;  // of the levels
  Eigen::MatrixXd cross_;              // of levels (rows) and points
  Eigen::MatrixXd correlation_;        // of the points
  Eigen::MatrixXd error_;              // covariance of their errors, mm^2
  Eigen::MatrixXd from_levels_;        // a point's z given those of the levels
  Eigen::MatrixXd own_root_;           // and what is left of it
  Eigen::MatrixXd error_root_;
};

}  // namespace endplate::limb
