#pragma once
// Nerve courses of the atlas, looked at by structure and level.
#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

#include "limb_fixture.hpp"
#include "models/limb/atlas.hpp"

namespace endplate::limb {

// The fitted courses where the package holds them.
inline Atlas test_atlas(const evidence::DataPackage& package) {
  auto atlas = package.tables().contains("fitted_points") ? Atlas::fitted(package)
                                                          : Atlas::unfitted(package);
  if (!atlas) {
    FAIL(atlas.error().problems.front().place + ": " + atlas.error().problems.front().what);
  }
  return *std::move(atlas);
}

// One course on the ledger limb.
class TestCourse {
 public:
  explicit TestCourse(std::string_view id)
      : atlas_(&atlas()),
        course_(*atlas_->find_course(id)),
        curve_(atlas_->curve(static_cast<std::size_t>(&course_ - atlas_->courses().data()),
                             frames())) {}

  static const Atlas& atlas() {
    static const Atlas atlas = test_atlas(own_tables());
    return atlas;
  }
  static const SegmentFrames& frames() {
    static const SegmentFrames frames;
    return frames;
  }
  static SegmentPoint landmark(std::string_view name, Segment segment) {
    const auto position = atlas().landmarks().position_mm(name, frames());
    if (!position) FAIL("no landmark " + std::string(name));
    return frames().from_limb(segment, *position);
  }

  const geometry::CubicSpline& curve() const { return curve_; }
  double knot(std::string_view point) const {
    const CoursePoint* found = course_.find(point);
    if (found == nullptr) FAIL("no point " + std::string(point));
    return found->knot;
  }
  // Where the course first reaches a level.
  double knot_at(Segment segment, double fraction) const {
    CrossingSurface level;
    level.normal = frames().proximal(segment);
    level.through = frames().to_limb(segment, fraction, 0.0, 0.0);
    const auto u = find_crossing(curve_, level, curve_.first_knot(), curve_.last_knot());
    if (!u) FAIL(course_.id + " does not reach this level");
    return *u;
  }
  SegmentPoint at_knot(Segment segment, double u) const {
    return frames().from_limb(segment, curve_.position(u));
  }
  SegmentPoint at_level(Segment segment, double fraction) const {
    return at_knot(segment, knot_at(segment, fraction));
  }
  SegmentPoint at_level_of(std::string_view landmark_name, Segment segment) const {
    return at_level(segment, landmark(landmark_name, segment).fraction);
  }
  SegmentPoint at_point(std::string_view point, Segment segment) const {
    return at_knot(segment, knot(point));
  }
  // Parameters every `step_mm` or closer, ends included.
  std::vector<double> samples(double step_mm = 0.5) const {
    return samples_between(curve_.first_knot(), curve_.last_knot(), step_mm);
  }
  static std::vector<double> samples_between(double from, double to, double step_mm = 0.5) {
    const int n = 1 + static_cast<int>(std::ceil((to - from) / step_mm));
    std::vector<double> us;
    for (int i = 0; i <= n; ++i) us.push_back(from + (to - from) * i / n);
    return us;
  }
  double radius_of_curvature_mm(double u) const {
    const Eigen::Vector3d d = curve_.derivative(u);
    const double bend = d.cross(curve_.second_derivative(u)).norm();
    return bend > 0.0 ? std::pow(d.norm(), 3) / bend : std::numeric_limits<double>::infinity();
  }

 private:
  const Atlas* atlas_;
  const Course& course_;
  geometry::CubicSpline curve_;
};

}  // namespace endplate::limb
