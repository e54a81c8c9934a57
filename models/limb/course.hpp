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
  double fraction = 0.0;  // level of the segment
  double knot = 0.0;      // parameter on the course's spline, once fitted
  std::vector<std::string> after;  // points of this course that lie proximal to it
};

struct Course {
  std::string id;
  std::string from_point;  // point of another course where this one begins; empty for a trunk
  std::vector<Waypoint> waypoints;
  std::vector<CoursePoint> points;

  const CoursePoint* find(std::string_view point_id) const;
};

// Waypoints in the limb frame of `frames`, one row each.
Eigen::MatrixX3d positions_mm(const Course& course, const SegmentFrames& frames);

// Knots of a course: chord lengths between its waypoints on the ledger limb, so that the parameter
// is close to an arc length in mm there. They stay the same in every limb.
std::vector<double> ledger_knots(const Course& course);

geometry::CubicSpline curve_of(const Course& course, const SegmentFrames& frames);

// The parameter where the course passes the level (fraction of a segment) nearest to its start
// parameter guess; used to place points before a fit.
double knot_at_level(const Course& course, Segment segment, double fraction);

}  // namespace endplate::limb
