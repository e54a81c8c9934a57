#pragma once
// How many directions a set of points spans.
#include <Eigen/Core>
#include <Eigen/Eigenvalues>
#include <vector>

namespace endplate::geometry {

// One column a point.
inline Eigen::Matrix3Xd columns_of(const std::vector<Eigen::Vector3d>& points) {
  Eigen::Matrix3Xd columns(3, static_cast<Eigen::Index>(points.size()));
  for (std::size_t i = 0; i < points.size(); ++i) {
    columns.col(static_cast<Eigen::Index>(i)) = points[i];
  }
  return columns;
}

// 0 for points at one place, 1 on a line, 2 in a plane, 3 in space; a direction counts when the
// spread in it is more than `share` of the largest one.
inline int dimension_of(const Eigen::Matrix3Xd& points, double share) {
  if (points.cols() == 0) return 0;
  const Eigen::Matrix3Xd centred = points.colwise() - points.rowwise().mean();
  const Eigen::Matrix3d covariance = centred * centred.transpose();
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(covariance, Eigen::EigenvaluesOnly);
  const Eigen::Vector3d spread_squared = solver.eigenvalues();  // ascending
  if (!(spread_squared[2] > 0.0)) return 0;
  return static_cast<int>((spread_squared.array() > share * share * spread_squared[2]).count());
}

}  // namespace endplate::geometry
