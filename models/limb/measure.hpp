#pragma once
// How a published distance between a point of a nerve and a landmark was measured, and the same
// measurement taken on a model course.
//
// Everything is in the limb frame: mm; X anterior, Y proximal, Z lateral on the right limb.
#include <Eigen/Core>
#include <optional>
#include <string_view>

#include "geometry/arc_length.hpp"
#include "geometry/cubic_spline.hpp"

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

// Where a course crosses a half-plane: normal . (p - through) = 0 and facing . (p - through) > 0.
// A zero `facing` takes the whole plane.
struct CrossingPlane {
  Eigen::Vector3d normal = Eigen::Vector3d::Zero();
  Eigen::Vector3d through = Eigen::Vector3d::Zero();
  Eigen::Vector3d facing = Eigen::Vector3d::Zero();
};

// A measure whose names are resolved on one limb.
struct MeasureGeometry {
  Definition definition = Definition::axial;
  Eigen::Vector3d landmark = Eigen::Vector3d::Zero();
  Eigen::Vector3d distal = Eigen::Vector3d::Zero();    // unit, along the segment
  Eigen::Vector3d sideways = Eigen::Vector3d::Zero();  // unit, for offsets
  CrossingPlane plane;                                 // crossing and offset_at_level
  // along only: the level on the course where the distance starts, if no point says it.
  std::optional<CrossingPlane> from_level;
  // Stretch of the course, in its parameter, where a crossing or nearest place is looked for.
  double search_from = 0.0;
  double search_to = 0.0;
};

// The parameter where the curve crosses the plane within [from, to]; of several crossings the one
// nearest to the middle of that stretch. Nothing when it does not cross.
std::optional<double> find_crossing(const geometry::CubicSpline& curve, const CrossingPlane& plane,
                                    double from, double to);

// The parameter within [from, to] where the curve comes nearest to `point`.
double find_nearest(const geometry::CubicSpline& curve, const Eigen::Vector3d& point, double from,
                    double to);

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
  const auto crossing = [&](const CrossingPlane& plane) -> std::optional<Scalar> {
    const auto root = find_crossing(values, plane, measure.search_from, measure.search_to);
    if (!root) return std::nullopt;
    const double slope = plane.normal.dot(values.derivative(*root));
    const Point off = curve.position(Scalar(*root)) - plane.through.cast<Scalar>();
    return Scalar(*root) - along_axis(off, plane.normal) / Scalar(slope);
  };

  switch (measure.definition) {
    case Definition::axial:
      return along_axis(from_landmark(point), measure.distal);
    case Definition::crossing: {
      const auto u = crossing(measure.plane);
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
      const auto u = crossing(measure.plane);
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
