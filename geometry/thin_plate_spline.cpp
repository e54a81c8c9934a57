#include "geometry/thin_plate_spline.hpp"

#include <Eigen/LU>
#include <numbers>
#include <string>

#include "geometry/point_spread.hpp"

namespace endplate::geometry {

namespace {

// Landmarks flatter than this share of their extent leave the affine part to rounding and picking
// errors; closer ones than this make the equations as good as singular.
constexpr double kLeastShare = 1e-3;
constexpr double kLeastDistanceShare = 1e-6;

std::unexpected<GeometryProblem> refused(std::string what, std::string mend) {
  return std::unexpected(GeometryProblem{std::move(what), std::move(mend)});
}

}  // namespace

GeometryResult<ThinPlateSpline> ThinPlateSpline::fit(const std::vector<Eigen::Vector3d>& from_mm,
                                                     const std::vector<Eigen::Vector3d>& to_mm,
                                                     double smoothing_mm) {
  if (from_mm.size() != to_mm.size()) {
    return refused(std::to_string(from_mm.size()) + " landmarks are matched with " +
                       std::to_string(to_mm.size()),
                   "give one target for each landmark");
  }
  if (from_mm.size() < 4) {
    return refused("fewer than four landmarks are matched",
                   "give at least four landmarks that lie in no one plane");
  }
  ThinPlateSpline warp;
  warp.landmarks_mm_ = columns_of(from_mm);
  const Eigen::Matrix3Xd& from = warp.landmarks_mm_;
  const Eigen::Matrix3Xd to = columns_of(to_mm);
  if (!from.allFinite() || !to.allFinite()) {
    return refused("a landmark has a coordinate that is not finite", "give numbers");
  }
  if (!(smoothing_mm >= 0.0) || !std::isfinite(smoothing_mm)) {
    return refused("the smoothing is negative or no number", "give 0 mm or more");
  }
  if (dimension_of(from, kLeastShare) < 3) {
    return refused("the landmarks lie in one plane", "add a landmark in front of or behind it");
  }
  warp.centre_mm_ = from.rowwise().mean();
  const double extent_mm = (from.colwise() - warp.centre_mm_).colwise().norm().maxCoeff();
  const Eigen::Index n = from.cols();
  Eigen::MatrixXd kernel(n, n);
  for (Eigen::Index j = 0; j < n; ++j) {
    for (Eigen::Index i = 0; i < n; ++i) {
      kernel(i, j) = -(from.col(i) - from.col(j)).norm();
      if (i > j && -kernel(i, j) < kLeastDistanceShare * extent_mm) {
        return refused("landmarks " + std::to_string(j + 1) + " and " + std::to_string(i + 1) +
                           " lie at one place",
                       "leave one of them out");
      }
    }
  }
  // Centred and scaled, so that the polynomial columns are of like size.
  Eigen::MatrixXd polynomial(n, 4);
  polynomial.col(0).setOnes();
  polynomial.rightCols<3>() = ((from.colwise() - warp.centre_mm_) / extent_mm).transpose();
  Eigen::MatrixXd system = Eigen::MatrixXd::Zero(n + 4, n + 4);
  system.topLeftCorner(n, n) = kernel / extent_mm;
  system.topLeftCorner(n, n).diagonal().array() += smoothing_mm / extent_mm;
  system.topRightCorner(n, 4) = polynomial;
  system.bottomLeftCorner(4, n) = polynomial.transpose();
  Eigen::MatrixXd targets = Eigen::MatrixXd::Zero(n + 4, 3);
  targets.topRows(n) = to.transpose();
  const Eigen::MatrixXd solution = system.fullPivLu().solve(targets);
  if (!solution.allFinite()) {
    return refused("the equations of the warp have no solution", "spread the landmarks more");
  }
  warp.coefficients_ = solution.topRows(n).transpose() / extent_mm;
  warp.offset_mm_ = solution.row(n).transpose();
  warp.linear_ = solution.bottomRows<3>().transpose() / extent_mm;
  return warp;
}

Eigen::Vector3d ThinPlateSpline::operator()(const Eigen::Vector3d& x_mm) const {
  return offset_mm_ + linear_ * (x_mm - centre_mm_) -
         coefficients_ * (landmarks_mm_.colwise() - x_mm).colwise().norm().transpose();
}

std::vector<Eigen::Vector3d> ThinPlateSpline::operator()(
    const std::vector<Eigen::Vector3d>& points_mm) const {
  std::vector<Eigen::Vector3d> warped;
  warped.reserve(points_mm.size());
  for (const auto& point : points_mm) warped.push_back((*this)(point));
  return warped;
}

Eigen::Matrix3d ThinPlateSpline::jacobian(const Eigen::Vector3d& x_mm) const {
  Eigen::Matrix3d derivative = linear_;
  for (Eigen::Index i = 0; i < landmarks_mm_.cols(); ++i) {
    const Eigen::Vector3d away = x_mm - landmarks_mm_.col(i);
    const double distance = away.norm();
    if (distance > 0.0) derivative -= coefficients_.col(i) * (away / distance).transpose();
  }
  return derivative;
}

double ThinPlateSpline::bending_energy_mm() const {
  double sum = 0.0;
  for (Eigen::Index i = 0; i < landmarks_mm_.cols(); ++i) {
    for (Eigen::Index j = 0; j < landmarks_mm_.cols(); ++j) {
      sum -= coefficients_.col(i).dot(coefficients_.col(j)) *
             (landmarks_mm_.col(i) - landmarks_mm_.col(j)).norm();
    }
  }
  return 8.0 * std::numbers::pi * sum;
}

}  // namespace endplate::geometry
