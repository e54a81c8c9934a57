#include "models/limb/measured_limb.hpp"

#include <algorithm>
#include <utility>

namespace endplate::limb {

using evidence::Provenance;

MeasuredLimb::MeasuredLimb(const evidence::DataPackage& package, Atlas atlas,
                           const SegmentFrames& frames, CasePose pose,
                           const std::optional<UlnarTransposition>& transposition)
    : atlas_(std::move(atlas)),
      fit_(FitSummary::from(package)),
      frames_(frames),
      pose_(std::move(pose)) {
  for (std::size_t c = 0; c < atlas_.courses().size(); ++c) {
    curves_.push_back(atlas_.curve(c, frames_));
    ledger_curves_.push_back(atlas_.curve(c, SegmentFrames()));
  }
  for (const evidence::Row row : package.table("landmark_distances")) {
    provenance_.emplace(
        row.text("id"),
        evidence::provenance_from(row.text("provenance")).value_or(Provenance::assumed));
  }
  if (bent() || transposition) {
    moved_ = std::make_unique<const MovedLimb>(atlas_, curves_, frames_, pose_.joints,
                                               pose_.envelope, pose_.pose, transposition);
  }
}

MeasureGeometry MeasuredLimb::geometry_of(const NerveMeasure& measure) const {
  const MeasureGeometry rest = atlas_.geometry_of(measure, frames_);
  return moved_ ? moved_->geometry_of(measure, rest) : rest;
}

std::optional<double> MeasuredLimb::level_of(const NerveMeasure& measure) const {
  const MeasureGeometry rest = atlas_.geometry_of(measure, frames_);
  if (moved_) return moved_->level_of(measure, rest);
  CrossingSurface level;
  level.normal = rest.distal;
  level.through = rest.landmark;
  return find_crossing(curves_[measure.course], level, rest.search_from, rest.search_to);
}

std::optional<Eigen::Vector3d> MeasuredLimb::place_of(const NerveMeasure& measure) const {
  const geometry::CubicSpline& course = curve(measure.course);
  const MeasureGeometry rest = atlas_.geometry_of(measure, frames_);
  switch (measure.definition) {
    case Definition::length:
      return std::nullopt;
    case Definition::crossing:
    case Definition::offset_at_level: {
      const auto u = moved_ ? moved_->crossing_of(measure, rest)
                            : find_crossing(course, rest.surface, rest.search_from, rest.search_to);
      if (!u) return std::nullopt;
      return course.position(*u);
    }
    case Definition::nearest: {
      const MeasureGeometry here = geometry_of(measure);
      return course.position(find_nearest(course, here.landmark, here.search_from, here.search_to));
    }
    default:
      if (!measure.point) return std::nullopt;
      return course.position(atlas_.courses()[measure.course].points[*measure.point].knot);
  }
}

Provenance MeasuredLimb::provenance_of(const std::vector<std::string>& rows) const {
  Provenance weakest = Provenance::read;
  for (const std::string& row : rows) {
    const auto found = provenance_.find(row);
    if (found != provenance_.end()) weakest = std::max(weakest, found->second);
  }
  return weakest;
}

std::optional<MeasuredLimb::Taken> MeasuredLimb::take(const NerveMeasure& measure) const {
  const auto& points = atlas_.courses()[measure.course].points;
  const double point = measure.point ? points[*measure.point].knot : 0.0;
  const double other =
      measure.other ? points[*measure.other].knot : curves_[measure.course].first_knot();
  const auto on = [&](const geometry::CubicSpline& curve, const SegmentFrames& frames) {
    return take_measure<double>(atlas_.geometry_of(measure, frames), curve, curve, point, other);
  };
  const auto here = on(curves_[measure.course], frames_);
  const auto ledger = on(ledger_curves_[measure.course], SegmentFrames());
  if (!here || !ledger) return std::nullopt;
  const std::optional<double> moved =
      moved_ ? moved_->take(measure, atlas_.geometry_of(measure, frames_)) : here;
  return Taken{*here, *ledger, moved};
}

}  // namespace endplate::limb
