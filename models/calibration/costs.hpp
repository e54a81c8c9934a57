#pragma once
// Cost functions of the limb fit, for Ceres. Only fit.cpp includes this.
#include <ceres/ceres.h>

#include <cmath>
#include <memory>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "models/limb/atlas.hpp"

namespace ceres {
// Found by the geometry's templates through argument-dependent lookup.
template <class T, int N>
double value_of(const Jet<T, N>& scalar) {
  return scalar.a;
}
}  // namespace ceres

namespace endplate::calibration {

using geometry::value_of;
using limb::Course;

constexpr int kOffsets = 3;  // of a waypoint: anterior, proximal, lateral

// What of a course does not change during a fit.
struct CourseBase {
  const Course* course;
  const CourseBase* parent = nullptr;  // of a branch
  Eigen::MatrixX3d start;              // own waypoints, limb frame, before any offset
  std::vector<Eigen::Matrix3d> axes;   // by waypoint: anterior, proximal, lateral
  Eigen::MatrixXd seconds_of;
};

inline CourseBase base_of(const Course& course) {
  const limb::SegmentFrames frames;
  CourseBase base{&course,
                  nullptr,
                  limb::positions_mm(course, frames, std::nullopt),
                  {},
                  geometry::second_derivative_operator(course.knots)};
  for (const limb::Waypoint& waypoint : course.waypoints) {
    Eigen::Matrix3d& axes = base.axes.emplace_back();
    axes << frames.anterior(waypoint.segment), frames.proximal(waypoint.segment),
        frames.lateral(waypoint.segment);
  }
  return base;
}

// What the shape of a course hangs on: its own offsets (three for each waypoint in turn) and, for a
// branch, its trunk's offsets and the knot where it leaves.
template <class Scalar>
struct ShapeBlocks {
  const Scalar* offsets = nullptr;
  const Scalar* parent_offsets = nullptr;
  const Scalar* parent_knot = nullptr;
};

template <class Scalar>
geometry::BasicCubicSpline<Scalar> moved_curve(const CourseBase& base,
                                               const ShapeBlocks<Scalar>& blocks) {
  using Points = typename geometry::BasicCubicSpline<Scalar>::Points;
  const Eigen::Index first = base.parent != nullptr ? 1 : 0;
  Points points(base.start.rows() + first, 3);
  points.bottomRows(base.start.rows()) = base.start.cast<Scalar>();
  for (Eigen::Index i = 0; i < base.start.rows(); ++i) {
    const auto w = static_cast<std::size_t>(i);
    for (int axis = 0; axis < 3; ++axis) {
      for (int along = 0; along < 3; ++along) {
        points(i + first, axis) +=
            blocks.offsets[kOffsets * i + along] * Scalar(base.axes[w](axis, along));
      }
    }
  }
  if (base.parent != nullptr) {
    const auto trunk = moved_curve<Scalar>(*base.parent, {blocks.parent_offsets, nullptr, nullptr});
    points.row(0) = trunk.position(*blocks.parent_knot).transpose();
  }
  return {base.course->knots, std::move(points), base.seconds_of};
}

template <class Scalar>
std::vector<double> values_of(const Scalar* scalars, std::size_t count) {
  std::vector<double> values(count);
  for (std::size_t i = 0; i < count; ++i) values[i] = value_of(scalars[i]);
  return values;
}

// The model's reading of one measure times the study's factor, against the study's.
struct MeasureCost {
  const CourseBase* base;
  limb::MeasureGeometry geometry;
  double observed_mm;
  double sigma_mm;
  bool has_point;
  bool has_other;
  bool has_factor;

  // Blocks: own offsets; of a branch its trunk's offsets and knot; then point, other, log factor.
  template <class Scalar>
  bool operator()(Scalar const* const* blocks, Scalar* residual) const {
    std::size_t next = 0;
    ShapeBlocks<Scalar> shape{blocks[next++]};
    if (base->parent != nullptr) {
      shape.parent_offsets = blocks[next++];
      shape.parent_knot = blocks[next++];
    }
    const Scalar point = has_point ? blocks[next++][0] : Scalar(0.0);
    const Scalar other = has_other ? blocks[next++][0] : Scalar(base->course->knots.front());
    const Scalar factor = has_factor ? exp(blocks[next++][0]) : Scalar(1.0);

    const auto model =
        limb::take_measure(geometry, moved_curve(*base, shape), values_only(shape), point, other);
    // A crossing that a step has lost: the solver shortens the step.
    if (!model) return false;
    residual[0] = (*model * factor - Scalar(observed_mm)) / Scalar(sigma_mm);
    return true;
  }

  template <class Scalar>
  geometry::CubicSpline values_only(const ShapeBlocks<Scalar>& shape) const {
    const auto own = values_of(shape.offsets, kOffsets * base->course->waypoints.size());
    if (base->parent == nullptr) return moved_curve<double>(*base, {own.data(), nullptr, nullptr});
    const auto trunk =
        values_of(shape.parent_offsets, kOffsets * base->parent->course->waypoints.size());
    const double knot = value_of(*shape.parent_knot);
    return moved_curve<double>(*base, {own.data(), trunk.data(), &knot});
  }
};

// Waypoints stay near where anatomy puts them, and the fit must not add bends: the second
// differences of the offsets are held to zero.
struct ShapeCost {
  const CourseBase* base;

  static constexpr double kBendSd_mm = 4.0;

  std::size_t residuals() const {
    const std::size_t n = base->course->waypoints.size();
    return kOffsets * n + (n > 2 ? kOffsets * (n - 2) : 0);
  }
  template <class Scalar>
  bool operator()(Scalar const* const* blocks, Scalar* residual) const {
    const Scalar* offsets = blocks[0];
    const auto& waypoints = base->course->waypoints;
    std::size_t k = 0;
    for (std::size_t i = 0; i < waypoints.size(); ++i) {
      for (std::size_t axis = 0; axis < kOffsets; ++axis) {
        residual[k++] = offsets[kOffsets * i + axis] / Scalar(waypoints[i].prior_sd_mm);
      }
    }
    // The knots of a branch have its start in front.
    const auto knots = std::span(base->course->knots).last(waypoints.size());
    for (std::size_t i = 1; i + 1 < waypoints.size(); ++i) {
      const double before = knots[i] - knots[i - 1];
      const double after = knots[i + 1] - knots[i];
      const double share = before / (before + after);
      for (std::size_t axis = 0; axis < kOffsets; ++axis) {
        const Scalar chord = offsets[kOffsets * (i - 1) + axis] * Scalar(1.0 - share) +
                             offsets[kOffsets * (i + 1) + axis] * Scalar(share);
        residual[k++] = (offsets[kOffsets * i + axis] - chord) / Scalar(kBendSd_mm);
      }
    }
    return true;
  }
};

// A point that anatomy puts distal to another stays so, by a hinge.
struct OrderCost {
  static constexpr double kGap_mm = 1.0;
  static constexpr double kSd_mm = 1.0;
  template <class Scalar>
  bool operator()(const Scalar* proximal, const Scalar* distal, Scalar* residual) const {
    const Scalar short_by = *proximal + Scalar(kGap_mm) - *distal;
    residual[0] = value_of(short_by) > 0.0 ? short_by / Scalar(kSd_mm) : Scalar(0.0);
    return true;
  }
};

// A point is hardly held by its start: this only keeps an unconstrained one in place.
struct PointPriorCost {
  double start;
  static constexpr double kSd_mm = 80.0;
  template <class Scalar>
  bool operator()(const Scalar* knot, Scalar* residual) const {
    residual[0] = (*knot - Scalar(start)) / Scalar(kSd_mm);
    return true;
  }
};

struct FactorPriorCost {
  double sd;
  template <class Scalar>
  bool operator()(const Scalar* log_factor, Scalar* residual) const {
    residual[0] = *log_factor / Scalar(sd);
    return true;
  }
};

template <class Cost>
auto dynamic_cost(Cost cost, const std::vector<int>& block_sizes, int residuals) {
  auto function =
      std::make_unique<ceres::DynamicAutoDiffCostFunction<Cost, 8>>(new Cost(std::move(cost)));
  for (const int size : block_sizes) function->AddParameterBlock(size);
  function->SetNumResiduals(residuals);
  return function.release();  // the problem owns it
}

}  // namespace endplate::calibration
