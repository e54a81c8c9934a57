#pragma once
// A nerve course of one limb, measured once: arc lengths, split by the segments they lie in.
#include <Eigen/Core>
#include <vector>

#include "geometry/arc_length.hpp"
#include "geometry/cubic_spline.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

class CaseLimbCourse {
 public:
  // `frames` are those of the limb on which `curve` lies.
  CaseLimbCourse(geometry::CubicSpline curve, const SegmentFrames& frames);

  const geometry::CubicSpline& curve() const { return curve_; }
  double length_mm() const { return table_.total_mm(); }
  // Arc length from the course's start; the parameter is clamped to the course.
  double arc_at(double parameter) const { return table_.length_at(parameter); }
  Eigen::Vector3d position_at(double arc_mm) const;
  // How much of the course up to there lies in the arm, the forearm and the hand, mm. Another limb
  // of the same shape is long: the sum of these, each times its segment's ratio of lengths.
  Eigen::Vector3d parts_at(double arc_mm) const;
  const Eigen::Vector3d& total_parts_mm() const { return parts_.back(); }

 private:
  geometry::CubicSpline curve_;
  geometry::ArcLengthTable table_;
  double step_mm_ = 1.0;
  std::vector<Eigen::Vector3d> parts_;  // every step
};

// In which segment a place of the limb lies: above the epicondyles the arm, beyond the distal wrist
// crease the hand.
Segment segment_of(const Eigen::Vector3d& position_mm, const SegmentFrames& frames);

}  // namespace endplate::limb
