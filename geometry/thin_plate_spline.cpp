#include "geometry/thin_plate_spline.hpp"

#include <Eigen/LU>
#include <numbers>
#include <string>

#include "geometry/point_spread.hpp"
#include "geometry/thin_plate_system.hpp"

namespace endplate::geometry {

namespace {

std::unexpected<GeometryProblem> refused(std::string what, std::string mend) {
  return std::unexpected(GeometryProblem{std::move(what), std::move(mend)});
}

}  // namespace

GeometryResult<ThinPlateSpline> ThinPlateSpline::fit(const std::vector<Eigen::Vector3d>& from_mm,
                                                     const std::vector<Eigen::Vector3d>& to_mm,
                                                     double smoothing_mm) {
  return fit(from_mm, to_mm, std::vector<double>(from_mm.size(), smoothing_mm));
}

GeometryResult<ThinPlateSpline> ThinPlateSpline::fit(const std::vector<Eigen::Vector3d>& from_mm,
                                                     const std::vector<Eigen::Vector3d>& to_mm,
                                                     const std::vector<double>& smoothing_mm,
                                                     AffinePart affine) {
  if (from_mm.size() != to_mm.size()) {
    return refused(std::to_string(from_mm.size()) + " landmarks are matched with " +
                       std::to_string(to_mm.size()),
                   "give one target for each landmark");
  }
  const Eigen::Matrix3Xd to = columns_of(to_mm);
  if (!to.allFinite()) {
    return refused("a landmark has a coordinate that is not finite", "give numbers");
  }
  const auto system = thin_plate_system(from_mm, smoothing_mm, affine);
  if (!system) return std::unexpected(system.error());
  const Eigen::Index n = to.cols();
  Eigen::MatrixXd targets = Eigen::MatrixXd::Zero(system->matrix.rows(), 3);
  targets.topRows(n) = to.transpose();
  if (affine == AffinePart::identity) targets.topRows(n) -= system->landmarks_mm.transpose();
  const Eigen::MatrixXd solution = system->matrix.partialPivLu().solve(targets);
  if (!solution.allFinite()) {
    return refused("the equations of the warp have no solution", "spread the landmarks more");
  }
  ThinPlateSpline warp;
  warp.landmarks_mm_ = system->landmarks_mm;
  warp.centre_mm_ = system->centre_mm;
  warp.coefficients_ = solution.topRows(n).transpose() / system->extent_mm;
  warp.offset_mm_ = solution.row(n).transpose();
  if (affine == AffinePart::free) {
    warp.linear_ = solution.bottomRows<3>().transpose() / system->extent_mm;
  } else {
    warp.offset_mm_ += warp.centre_mm_;
  }
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
