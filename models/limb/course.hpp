#pragma once
// The courses of the nerves on the ledger limb, as the tables give them: waypoints and the named
// points that lie on them.
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/cubic_spline.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

struct Waypoint {
  Segment segment = Segment::humerus;
  SegmentPoint place;      // on the ledger limb
  std::string structure;   // what the nerve must pass here; empty where it lies free
  double prior_sd_mm = 0;  // how far the fit may move it across the segment
};

struct CoursePoint {
  std::string id;
  Segment segment = Segment::humerus;
  double fraction = 0.0;           // level of the segment
  double knot = 0.0;               // parameter on the course's spline, once fitted
  std::vector<std::string> after;  // points of this course that lie proximal to it
};

struct Course {
  std::string id;
  // Point of a trunk where this branch begins; empty for a trunk. A branch's curve starts there and
  // then runs through its own waypoints.
  std::string from_point;
  std::vector<Waypoint> waypoints;
  // One knot a waypoint, for a branch with one more in front: chord lengths before the fit, so that
  // the parameter is close to an arc length in mm on the ledger limb. The same in every limb.
  std::vector<double> knots;
  std::vector<CoursePoint> points;

  bool is_branch() const { return !from_point.empty(); }
  const CoursePoint* find(std::string_view point_id) const;
};

// The waypoints in the limb frame of `frames`, one row each, behind `start` for a branch.
Eigen::MatrixX3d positions_mm(const Course& course, const SegmentFrames& frames,
                              const std::optional<Eigen::Vector3d>& start);

// Chord lengths between consecutive rows, from 0.
std::vector<double> chord_knots(const Eigen::MatrixX3d& positions);

// The parameter where the curve comes nearest to a level (a fraction of a segment); places the
// points before a fit.
double knot_at_level(const geometry::CubicSpline& curve, Segment segment, double fraction);

}  // namespace endplate::limb
