#include "geometry/thin_plate_system.hpp"

#include <cmath>
#include <string>
#include <utility>

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

Eigen::VectorXd ThinPlateSystem::row(const Eigen::Vector3d& x_mm) const {
  const Eigen::Index n = landmarks_mm.cols();
  Eigen::VectorXd row(n + affine_columns());
  row.head(n) = -(landmarks_mm.colwise() - x_mm).colwise().norm().transpose() / extent_mm;
  row[n] = 1.0;
  if (affine == AffinePart::free) row.tail<3>() = (x_mm - centre_mm) / extent_mm;
  return row;
}

GeometryResult<ThinPlateSystem> thin_plate_system(const std::vector<Eigen::Vector3d>& from_mm,
                                                  const std::vector<double>& smoothing_mm,
                                                  AffinePart affine) {
  if (affine == AffinePart::identity && from_mm.size() < 2) {
    return refused("fewer than two landmarks are matched", "give at least two landmarks");
  }
  if (affine == AffinePart::free && from_mm.size() < 4) {
    return refused("fewer than four landmarks are matched",
                   "give at least four landmarks that lie in no one plane");
  }
  if (smoothing_mm.size() != from_mm.size()) {
    return refused(std::to_string(from_mm.size()) + " landmarks have " +
                       std::to_string(smoothing_mm.size()) + " smoothings",
                   "give one smoothing for each landmark");
  }
  ThinPlateSystem system;
  system.affine = affine;
  system.landmarks_mm = columns_of(from_mm);
  const Eigen::Matrix3Xd& from = system.landmarks_mm;
  if (!from.allFinite()) {
    return refused("a landmark has a coordinate that is not finite", "give numbers");
  }
  for (const double smoothing : smoothing_mm) {
    if (smoothing >= 0.0 && std::isfinite(smoothing)) continue;
    return refused("the smoothing is negative or no number", "give 0 mm or more");
  }
  if (affine == AffinePart::free && dimension_of(from, kLeastShare) < 3) {
    return refused("the landmarks lie in one plane", "add a landmark in front of or behind it");
  }
  system.centre_mm = from.rowwise().mean();
  system.extent_mm = (from.colwise() - system.centre_mm).colwise().norm().maxCoeff();
  const Eigen::Index n = from.cols();
  const Eigen::Index more = system.affine_columns();
  system.matrix = Eigen::MatrixXd::Zero(n + more, n + more);
  for (Eigen::Index j = 0; j < n; ++j) {
    const Eigen::VectorXd row = system.row(from.col(j));
    for (Eigen::Index i = j + 1; i < n; ++i) {
      if (-row[i] >= kLeastDistanceShare) continue;
      return refused("landmarks " + std::to_string(j + 1) + " and " + std::to_string(i + 1) +
                         " lie at one place",
                     "leave one of them out");
    }
    system.matrix.row(j) = row;
    system.matrix.col(j).tail(more) = row.tail(more);
    system.matrix(j, j) = smoothing_mm[static_cast<std::size_t>(j)] / system.extent_mm;
  }
  return system;
}

}  // namespace endplate::geometry
