#include "models/limb/case_limb_course.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace endplate::limb {

Segment segment_of(const Eigen::Vector3d& position_mm, const SegmentFrames& frames) {
  if (frames.from_limb(Segment::humerus, position_mm).fraction > 0.0) return Segment::humerus;
  return frames.from_limb(Segment::hand, position_mm).fraction > 0.0 ? Segment::hand
                                                                     : Segment::forearm;
}

CaseLimbCourse::CaseLimbCourse(geometry::CubicSpline curve, const SegmentFrames& frames)
    : curve_(std::move(curve)), table_(curve_) {
  const auto steps = static_cast<std::size_t>(std::ceil(table_.total_mm()));
  step_mm_ = table_.total_mm() / static_cast<double>(steps);
  Eigen::Vector3d sum = Eigen::Vector3d::Zero();
  parts_.push_back(sum);
  for (std::size_t k = 0; k < steps; ++k) {
    const Segment segment =
        segment_of(position_at((static_cast<double>(k) + 0.5) * step_mm_), frames);
    sum[static_cast<Eigen::Index>(segment)] += step_mm_;
    parts_.push_back(sum);
  }
}

Eigen::Vector3d CaseLimbCourse::position_at(double arc_mm) const {
  return curve_.position(table_.parameter_at(arc_mm));
}

Eigen::Vector3d CaseLimbCourse::parts_at(double arc_mm) const {
  const double steps = std::clamp(arc_mm, 0.0, length_mm()) / step_mm_;
  const auto k = std::min(static_cast<std::size_t>(steps), parts_.size() - 2);
  return parts_[k] + (steps - static_cast<double>(k)) * (parts_[k + 1] - parts_[k]);
}

}  // namespace endplate::limb
