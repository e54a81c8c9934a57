#pragma once
// The equations that a thin-plate spline and its variance share.
#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/geometry_problem.hpp"

namespace endplate::geometry {

// The part of a warp that bends nothing.
enum class AffinePart {
  free,     // any affine map, at no cost
  identity  // a shift at no cost; what turns, stretches or shears counts as bending does
};

// Scaled by the extent of the landmarks about their centre, so that all entries are of like size.
struct ThinPlateSystem {
  Eigen::Matrix3Xd landmarks_mm;
  Eigen::Vector3d centre_mm = Eigen::Vector3d::Zero();
  double extent_mm = 1.0;
  AffinePart affine = AffinePart::free;
  Eigen::MatrixXd matrix;  // kernel and smoothing beside the affine columns

  // Columns of the affine part: 4, or 1 of a shift.
  Eigen::Index affine_columns() const { return affine == AffinePart::free ? 4 : 1; }
  // The row that stands for a point: its kernels, 1, and its place if the affine part is free.
  Eigen::VectorXd row(const Eigen::Vector3d& x_mm) const;
};

// Refuses values that are not finite, two landmarks at one place, and a smoothing that is negative
// or missing; for a free affine part fewer than 4 landmarks and landmarks in one plane; else fewer
// than 2.
GeometryResult<ThinPlateSystem> thin_plate_system(const std::vector<Eigen::Vector3d>& from_mm,
                                                  const std::vector<double>& smoothing_mm,
                                                  AffinePart affine);

}  // namespace endplate::geometry
