#include "models/limb/found_points.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace endplate::limb {
namespace {

// A square root of a matrix that rounding may have left slightly indefinite.
Eigen::MatrixXd root_of(const Eigen::MatrixXd& covariance) {
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(covariance);
  return solver.eigenvectors() * solver.eigenvalues().cwiseMax(0.0).cwiseSqrt().asDiagonal();
}

}  // namespace

double FoundPoint::surprise_mm(const Eigen::Vector3d& ratio) const {
  const double distal_mm = at.toward == casefile::Toward::distal ? at.offset_mm : -at.offset_mm;
  return (found_parts_mm - level.parts_mm).dot(ratio) +
         distal_mm * (1.0 - ratio[static_cast<Eigen::Index>(found_in)]);
}

FoundPoints::FoundPoints(std::vector<FoundPoint> points, const std::vector<Level>& levels)
    : points_(std::move(points)) {
  const auto n = static_cast<Eigen::Index>(levels.size());
  const auto m = static_cast<Eigen::Index>(points_.size());
  const auto tie = [](const Level& a, const Level& b) {
    return a.course == b.course ? level_correlation(a.arc_mm, b.arc_mm) : 0.0;
  };
  level_correlation_.resize(n, n);
  cross_.resize(n, m);
  correlation_.resize(m, m);
  error_ = Eigen::MatrixXd::Zero(m, m);
  for (Eigen::Index i = 0; i < n; ++i) {
    const Level& level = levels[static_cast<std::size_t>(i)];
    for (Eigen::Index j = 0; j < n; ++j) {
      level_correlation_(i, j) = tie(level, levels[static_cast<std::size_t>(j)]);
    }
    for (Eigen::Index j = 0; j < m; ++j) {
      cross_(i, j) = tie(level, points_[static_cast<std::size_t>(j)].level);
    }
  }
  for (Eigen::Index i = 0; i < m; ++i) {
    const FoundPoint& one = points_[static_cast<std::size_t>(i)];
    for (Eigen::Index j = 0; j < m; ++j) {
      const FoundPoint& other = points_[static_cast<std::size_t>(j)];
      correlation_(i, j) = tie(one.level, other.level);
      if (one.at.landmark == other.at.landmark) {
        error_(i, j) = one.landmark_sd_mm * other.landmark_sd_mm;
      }
    }
    error_(i, i) += one.error_mm * one.error_mm;
  }
  from_levels_ = level_correlation_.ldlt().solve(cross_).transpose();
  own_root_ = root_of(correlation_ - from_levels_ * cross_);
  error_root_ = root_of(error_);
}

Eigen::VectorXd FoundPoints::sds_mm(const Eigen::Vector3d& ratio) const {
  Eigen::VectorXd sds(static_cast<Eigen::Index>(points_.size()));
  for (Eigen::Index i = 0; i < sds.size(); ++i) {
    const Level& level = points_[static_cast<std::size_t>(i)].level;
    sds[i] = level.sd_mm * ratio[static_cast<Eigen::Index>(level.segment)];
  }
  return sds;
}

Eigen::MatrixXd FoundPoints::own_covariance(const Eigen::VectorXd& sds_mm) const {
  return sds_mm.asDiagonal() * correlation_ * sds_mm.asDiagonal() + error_;
}

Observation FoundPoints::size_observation(const LimbSize& size) const {
  // ratio = D W x, with D one over the segment's length on the mean limb.
  const Eigen::MatrixXd weights = size.segment_weights();
  const Eigen::Vector3d lengths_mm = weights * size.moments().mean;
  const auto m = static_cast<Eigen::Index>(points_.size());
  Observation observation;
  observation.combinations.resize(m, weights.cols());
  observation.values.resize(m);
  for (Eigen::Index i = 0; i < m; ++i) {
    const FoundPoint& point = points_[static_cast<std::size_t>(i)];
    // surprise = constant + gradient . ratio, and is 0 but for sd z and the errors.
    const double constant = point.surprise_mm(Eigen::Vector3d::Zero());
    Eigen::Vector3d gradient;
    for (Eigen::Index k = 0; k < 3; ++k) {
      gradient[k] = point.surprise_mm(Eigen::Vector3d::Unit(k)) - constant;
    }
    observation.combinations.row(i) = -(gradient.cwiseQuotient(lengths_mm)).transpose() * weights;
    observation.values[i] = constant;
  }
  observation.error = own_covariance(sds_mm(Eigen::Vector3d::Ones()));
  return observation;
}

double FoundPoints::surprise_sd_mm(std::size_t point, const LimbSize& size) const {
  const Observation observation = size_observation(size);
  const auto i = static_cast<Eigen::Index>(point);
  return std::hypot(size.sd_mm(Eigen::VectorXd(observation.combinations.row(i))),
                    std::sqrt(observation.error(i, i)));
}

Eigen::VectorXd FoundPoints::correct(const Eigen::VectorXd& prior_draw,
                                     const Eigen::Vector3d& ratio,
                                     const Eigen::VectorXd& normals) const {
  const auto m = static_cast<Eigen::Index>(points_.size());
  const Eigen::VectorXd sds = sds_mm(ratio);
  const Eigen::VectorXd z = from_levels_ * prior_draw + own_root_ * normals.head(m);
  Eigen::VectorXd surprise = -sds.cwiseProduct(z) - error_root_ * normals.tail(m);
  for (Eigen::Index i = 0; i < m; ++i) {
    surprise[i] += points_[static_cast<std::size_t>(i)].surprise_mm(ratio);
  }
  return prior_draw + cross_ * sds.asDiagonal() * own_covariance(sds).ldlt().solve(surprise);
}

Gaussian FoundPoints::posterior() const {
  const Eigen::Vector3d same = Eigen::Vector3d::Ones();
  const auto m = static_cast<Eigen::Index>(points_.size());
  const Eigen::VectorXd sds = sds_mm(same);
  Eigen::VectorXd surprise(m);
  for (Eigen::Index i = 0; i < m; ++i) {
    surprise[i] = points_[static_cast<std::size_t>(i)].surprise_mm(same);
  }
  const Eigen::MatrixXd cross = cross_ * sds.asDiagonal();
  const Eigen::LDLT<Eigen::MatrixXd> own(own_covariance(sds));
  return {cross * own.solve(surprise),
          level_correlation_ - cross * own.solve(Eigen::MatrixXd(cross.transpose()))};
}

}  // namespace endplate::limb
