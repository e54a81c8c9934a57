#pragma once
// Nonlinear least-squares fit of nerve courses and their points to published distances.
//
// Unknown are, for each waypoint, its offset (anterior, proximal, lateral; mm on the ledger limb);
// for each point, its knot on the course; and for each study, one factor by which all its distances
// are long or short (the limbs it dissected, and how it measured).
#include <Eigen/Core>
#include <map>
#include <string>
#include <vector>

#include "models/calibration/observation.hpp"
#include "models/core/error.hpp"
#include "models/evidence/scale_curve.hpp"
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
  std::vector<Eigen::MatrixX3d> offsets_mm;  // by course: anterior, proximal, lateral by waypoint
  std::vector<std::vector<double>> knots;    // by course, by point
  std::map<std::string, double> log_factor;  // by study
};

// One observation in the fit, in units of its own standard deviation.
struct ObservationFit {
  double sigma_mm = 0.0;  // between-study spread beyond the study's factor, and sampling
  double residual = 0.0;  // (model - observed) / sigma
  double weight = 1.0;    // robust weight, at most 1
};

struct FitResult {
  FitState state;
  std::vector<double> predicted_mm;     // by measure of the atlas; NaN where it does not exist
  std::vector<double> predicted_sd_mm;  // posterior SD of the mean limb, by measure
  std::vector<std::vector<double>> knot_sd_mm;  // by course, by point
  std::vector<ObservationFit> observations;     // as given to the fit
  Eigen::MatrixXd observation_rows;             // their derivatives over sigma, times sqrt(weight)
  Eigen::MatrixXd covariance;                   // of all unknowns, columns as in observation_rows
  double cost = 0.0;
  int iterations = 0;
};

FitState start_of(const limb::Atlas& atlas);

// `observations` may leave out any of the atlas's measures. Starts from `start`.
Expected<FitResult> fit(const limb::Atlas& atlas, const std::vector<Observation>& observations,
                        const FitOptions& options, const FitState& start);

// The atlas with the fitted courses and knots.
limb::Atlas apply(const limb::Atlas& atlas, const FitState& state);

}  // namespace endplate::calibration
