#pragma once
// Nonlinear least-squares fit of nerve courses and their points to published distances.
//
// Unknown are, for each waypoint, its offset across the segment (anterior and lateral, mm on the
// ledger limb); for each point, its knot on the course; and for each study, one factor by which all
// its distances are long or short (the limbs it dissected, and how it measured). Levels of waypoints
// along the segment are not fitted: sliding a waypoint along its curve changes nothing.
#include <Eigen/Core>
#include <map>
#include <string>
#include <vector>

#include "models/calibration/observation.hpp"
#include "models/limb/atlas.hpp"

namespace endplate::calibration {

struct FitOptions {
  // Between-study SD of one distance, hypot(at_zero, slope * distance), and the share of its
  // variance that all distances of one study have in common: both estimated from the evidence
  // tables (evidence::SpreadModel).
  evidence::ScaleCurve between_studies;
  double shared_by_study = 0.0;
  double huber = 2.0;  // in standard deviations
};

// What the fit moves.
struct FitState {
  std::vector<Eigen::MatrixX2d> offsets_mm;   // by course: one row (anterior, lateral) a waypoint
  std::vector<std::vector<double>> knots;     // by course, by point
  std::map<std::string, double> log_factor;   // by study
};

struct FitResult {
  FitState state;
  std::vector<double> predicted_mm;  // by measure of the atlas; NaN where it does not exist
  std::vector<double> predicted_sd_mm;  // posterior SD of the mean limb, by measure
  // By observation: model with the study's factor, and its derivative row is kept in `jacobian`.
  double cost = 0.0;
  int iterations = 0;
  // Posterior covariance of one course's own unknowns: offsets (x0, z0, x1, z1, ...), then knots.
  std::vector<Eigen::MatrixXd> covariance;
  // Unknown of the whole fit: gradient of each measure and the joint covariance.
  Eigen::MatrixXd measure_gradient;  // measures by unknowns
  Eigen::MatrixXd joint_covariance;
};

FitState start_of(const limb::Atlas& atlas);

// `observations` may leave out any of the atlas's measures. Starts from `start`.
Expected<FitResult> fit(const limb::Atlas& atlas, const std::vector<Observation>& observations,
                        const FitOptions& options, const FitState& start);

// The atlas with the fitted courses and knots.
limb::Atlas apply(const limb::Atlas& atlas, const FitState& state);

}  // namespace endplate::calibration
