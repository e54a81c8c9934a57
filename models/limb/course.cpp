#include "models/limb/course.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace endplate::limb {

const CoursePoint* Course::find(std::string_view point_id) const {
  const auto found = std::ranges::find(points, point_id, &CoursePoint::id);
  return found == points.end() ? nullptr : &*found;
}

Eigen::MatrixX3d positions_mm(const Course& course, const SegmentFrames& frames,
                              const std::optional<Eigen::Vector3d>& start) {
  const Eigen::Index first = start ? 1 : 0;
  Eigen::MatrixX3d positions(static_cast<Eigen::Index>(course.waypoints.size()) + first, 3);
  if (start) positions.row(0) = start->transpose();
  for (std::size_t i = 0; i < course.waypoints.size(); ++i) {
    const Waypoint& waypoint = course.waypoints[i];
    positions.row(static_cast<Eigen::Index>(i) + first) =
        frames.to_limb(waypoint.segment, waypoint.place).transpose();
  }
  return positions;
}

std::vector<double> chord_knots(const Eigen::MatrixX3d& positions) {
  std::vector<double> knots{0.0};
  for (Eigen::Index i = 1; i < positions.rows(); ++i) {
    knots.push_back(knots.back() + (positions.row(i) - positions.row(i - 1)).norm());
  }
  return knots;
}

double knot_at_level(const geometry::CubicSpline& curve, Segment segment, double fraction) {
  constexpr double kStep = 0.25;
  const SegmentFrames frames;
  const Eigen::Vector3d axis = frames.proximal(segment);
  const double level = frames.to_limb(segment, fraction, 0.0, 0.0).dot(axis);
  double best = curve.first_knot();
  double least = std::numeric_limits<double>::infinity();
  const int steps = static_cast<int>((curve.last_knot() - curve.first_knot()) / kStep);
  for (int k = 0; k <= steps; ++k) {
    const double u = curve.first_knot() + kStep * k;
    const double off = std::abs(curve.position(u).dot(axis) - level);
    if (off < least) {
      least = off;
      best = u;
    }
  }
  return best;
}

}  // namespace endplate::limb
