#pragma once
// What points found by ultrasound say of the distances of one limb.
//
// Each answered distance of one limb is normal. A part of its spread is that of the level of its
// point between limbs, which points of one course share (level_spread.hpp). The rest says that
// studies disagree about the point and that the landmark may be placed otherwise; distances of the
// same point share it as far as the surer of the two has it, less the landmarks' placement. A found
// point is a reading of one such distance with the observer's error, so the joint distribution is
// conditioned in closed form.
#include <Eigen/Core>
#include <string>
#include <vector>

#include "models/limb/atlas.hpp"

namespace endplate::limb {

// A point of a course in a distance: how far its level differs between limbs, and by how much the
// distance grows when the point moves 1 mm distally along the nerve.
struct MovingPoint {
  PointRef point;
  double arc_mm = 0.0;
  double sd_mm = 0.0;
  double per_mm = 0.0;
};

// A distance of one limb before anything was found. `landmark` is the placed landmark from which it
// runs along the limb; empty where it is another kind of distance.
struct DistancePrior {
  double mean_mm = 0.0;
  double sd_mm = 0.0;
  std::vector<MovingPoint> moves;
  std::string landmark;
  double landmark_sd_mm = 0.0;  // of its placement
};

class FoundDistances {
 public:
  // The distance that was read, distal positive, with the standard deviation of the error.
  void add(DistancePrior prior, double read_mm, double error_mm);
  // Call once after the last add() and before narrow().
  void finish();

  struct Narrowed {
    double mean_mm = 0.0;
    double sd_mm = 0.0;
  };
  Narrowed narrow(const DistancePrior& distance) const;

 private:
  std::vector<DistancePrior> read_;
  std::vector<double> read_mm_;
  std::vector<double> error_mm_;
  Eigen::MatrixXd own_;       // covariance of the readings
  Eigen::VectorXd surprise_;  // readings less their means
};

}  // namespace endplate::limb
