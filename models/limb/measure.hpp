#pragma once
// How a published distance between a point of a nerve and a landmark was measured, and the same
// measurement taken on a model course.
//
// Everything is in the limb frame: mm; X anterior, Y proximal, Z lateral on the right limb.
#include <Eigen/Core>
#include <cmath>
#include <optional>
#include <string_view>

#include "geometry/arc_length.hpp"
#include "geometry/cubic_spline.hpp"
#include "models/limb/bone_outline.hpp"

namespace endplate::limb {

enum class Definition {
  axial,            // level of the point beyond the landmark along the segment, distal positive
  crossing,         // the same for the place where the course crosses a plane
  along,            // arc length to the point from another point of the course, distal positive
  straight,         // straight line from landmark to point
  transverse,       // sideways offset of the point from the landmark, lateral positive
  offset_at_level,  // sideways offset of the course at the landmark's own level, lateral positive
  nearest,          // least distance of the course from the landmark
  length            // arc length of the whole course
};

std::optional<Definition> definition_from(std::string_view text);
std::string_view to_string(Definition definition);

// What a course crosses: a plane, or the half of the space round a bone's axis where the direction
// from the bone, by its local outline, has a given clock angle.
struct CrossingSurface {
  Eigen::Vector3d normal = Eigen::Vector3d::Zero();
  Eigen::Vector3d through = Eigen::Vector3d::Zero();
  // The plane counts only where distal . (p - distal_of) > 0; a zero `distal` takes all of it.
  Eigen::Vector3d distal = Eigen::Vector3d::Zero();
  Eigen::Vector3d distal_of = Eigen::Vector3d::Zero();

  const BoneOutline* outline = nullptr;                // instead of the plane
  double clock_rad = 0.0;                              // 0 anterior, growing to lateral
  Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();  // anterior, along the segment, lateral
  double length_mm = 1.0;                              // of the segment, from the frame's origin
  double breadth = 1.0;                                // scale across the segment
  double from_fraction = 0.0;                          // the outline counts only beyond this level

  // Zero on the surface.
  template <class Scalar>
  Scalar height(const Eigen::Matrix<Scalar, 3, 1>& p) const {
    using std::cos;
    using std::sin;
    if (outline == nullptr) {
      return (p - through.cast<Scalar>()).dot(normal.cast<Scalar>());
    }
    const auto round = round_bone(p);
    return round.lateral * Scalar(cos(clock_rad)) - round.anterior * Scalar(sin(clock_rad));
  }
  // Whether a place of zero height lies on the half that counts.
  bool counts(const Eigen::Vector3d& p) const {
    if (outline == nullptr) return distal.isZero() || distal.dot(p - distal_of) > 0.0;
    const auto round = round_bone<double>(p);
    return round.anterior * std::cos(clock_rad) + round.lateral * std::sin(clock_rad) > 0.0 &&
           (p - through).dot(axes.col(1)) > from_fraction * length_mm;
  }

 private:
  template <class Scalar>
  OutlinePosition<Scalar> round_bone(const Eigen::Matrix<Scalar, 3, 1>& p) const {
    const Eigen::Matrix<Scalar, 3, 1> local =
        axes.transpose().cast<Scalar>() * (p - through.cast<Scalar>());
    return outline->position<Scalar>(local(1) / Scalar(length_mm), local(0) / Scalar(breadth),
                                     local(2) / Scalar(breadth));
  }
};

// A measure whose names are resolved on one limb.
struct MeasureGeometry {
  Definition definition = Definition::axial;
  Eigen::Vector3d landmark = Eigen::Vector3d::Zero();
  Eigen::Vector3d distal = Eigen::Vector3d::Zero();    // unit, along the segment
  Eigen::Vector3d sideways = Eigen::Vector3d::Zero();  // unit, for offsets
  CrossingSurface surface;                             // crossing and offset_at_level
  // along only: the level on the course where the distance starts, if no point says it.
  std::optional<CrossingSurface> from_level;
  // Stretch of the course, in its parameter, where a crossing or nearest place is looked for.
  double search_from = 0.0;
  double search_to = 0.0;
};

// The parameter of the first place, going distally, where the curve crosses the surface within
// [from, to]. Nothing when it does not cross.
std::optional<double> find_crossing(const geometry::CubicSpline& curve,
                                    const CrossingSurface& surface, double from, double to);

// The parameter within [from, to] where the curve comes nearest to `point`.
double find_nearest(const geometry::CubicSpline& curve, const Eigen::Vector3d& point, double from,
                    double to);

// For the slope of a height along a course; heights are smooth well beyond this.
inline constexpr double kSlopeStep_mm = 1e-4;

// The measurement, mm. `values` is the curve without derivatives (the curve itself for double);
// `point` the parameter of the measured point (unused by crossing, offset_at_level, nearest and
// length), `other` that of the point an `along` distance starts from. A crossing that does not
// exist is nothing.
template <class Scalar>
std::optional<Scalar> take_measure(const MeasureGeometry& measure,
                                   const geometry::BasicCubicSpline<Scalar>& curve,
                                   const geometry::CubicSpline& values, const Scalar& point,
                                   const Scalar& other) {
  using std::sqrt;
  using Point = typename geometry::BasicCubicSpline<Scalar>::Point;
  const auto from_landmark = [&](const Scalar& u) {
    return Point(curve.position(u) - measure.landmark.cast<Scalar>());
  };
  const auto along_axis = [](const Point& v, const Eigen::Vector3d& axis) {
    return Scalar(v.dot(axis.cast<Scalar>()));
  };
  // One Newton step from the root of the values carries the derivatives of an implicit place.
  const auto crossing = [&](const CrossingSurface& surface) -> std::optional<Scalar> {
    const auto root = find_crossing(values, surface, measure.search_from, measure.search_to);
    if (!root) return std::nullopt;
    const Scalar height = surface.height<Scalar>(curve.position(Scalar(*root)));
    const double slope = (surface.height<double>(values.position(*root + kSlopeStep_mm)) -
                          surface.height<double>(values.position(*root - kSlopeStep_mm))) /
                         (2.0 * kSlopeStep_mm);
    return Scalar(*root) - height / Scalar(slope);
  };

  switch (measure.definition) {
    case Definition::axial:
      return along_axis(from_landmark(point), measure.distal);
    case Definition::crossing: {
      const auto u = crossing(measure.surface);
      if (!u) return std::nullopt;
      return along_axis(from_landmark(*u), measure.distal);
    }
    case Definition::along: {
      if (!measure.from_level) return geometry::arc_length(curve, other, point);
      const auto u = crossing(*measure.from_level);
      if (!u) return std::nullopt;
      return geometry::arc_length(curve, *u, point);
    }
    case Definition::straight: {
      const Point v = from_landmark(point);
      return sqrt(v.dot(v));
    }
    case Definition::transverse:
      return along_axis(from_landmark(point), measure.sideways);
    case Definition::offset_at_level: {
      const auto u = crossing(measure.surface);
      if (!u) return std::nullopt;
      return along_axis(from_landmark(*u), measure.sideways);
    }
    case Definition::nearest: {
      // At the nearest place the distance does not depend on the parameter to first order.
      const double u =
          find_nearest(values, measure.landmark, measure.search_from, measure.search_to);
      const Point v = from_landmark(Scalar(u));
      return sqrt(v.dot(v));
    }
    case Definition::length:
      return geometry::arc_length(curve, Scalar(curve.first_knot()), Scalar(curve.last_knot()));
  }
  return std::nullopt;
}

}  // namespace endplate::limb
