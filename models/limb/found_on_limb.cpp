#include "models/limb/found_on_limb.hpp"

#include "models/limb/case_limb_course.hpp"

namespace endplate::limb {

// A distance of one limb before anything was found.
DistancePrior FoundOnLimb::prior_of(const NerveMeasure& measure, double mean_mm,
                                    double sd_mm) const {
  DistancePrior prior{mean_mm, sd_mm, {}, "", 0.0};
  if (!measure.point) return prior;
  const PointRef point{measure.course, *measure.point};
  if (measure.definition == Definition::axial || measure.definition == Definition::crossing) {
    prior.landmark = measure.landmark;
    if (const Landmark* landmark = limb_.atlas().landmarks().find(measure.landmark)) {
      prior.landmark_sd_mm = landmark->sd_mm;
    }
    prior.moves.push_back(moving(point, limb_.atlas().geometry_of(measure, limb_.frames()).distal));
  } else if (measure.definition == Definition::along || measure.definition == Definition::length) {
    prior.moves.push_back(moving(point, Eigen::Vector3d::Zero()));
    if (measure.other) {
      prior.moves.push_back(moving({measure.course, *measure.other}, Eigen::Vector3d::Zero()));
      prior.moves.back().per_mm = -1.0;
    }
  }
  return prior;
}

// A point of a course as part of a distance that runs along `distal`, or along the nerve where that
// is zero.
MovingPoint FoundOnLimb::moving(PointRef ref, const Eigen::Vector3d& distal) const {
  const CoursePoint& point = limb_.atlas().courses()[ref.course].points[ref.point];
  const geometry::CubicSpline& curve = limb_.curve_at_rest(ref.course);
  Eigen::Vector3d position = curve.position(point.knot);
  const Segment segment = segment_of(position, limb_.frames());
  // The spread knows the right limb only.
  if (limb_.frames().side() == Side::left) position.z() = -position.z();
  const double per_mm =
      distal.isZero() ? 1.0 : curve.derivative(point.knot).normalized().dot(distal);
  return {ref, geometry::arc_length(curve, curve.first_knot(), point.knot),
          spread_->sd_mm(ref.course, position, segment, point.id), per_mm};
}

}  // namespace endplate::limb
