#include "geometry/cubic_spline.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <stdexcept>

namespace endplate::geometry {

CubicSpline::CubicSpline(std::vector<double> knots, const Eigen::MatrixX3d& waypoints)
    : knots_(std::move(knots)), points_(waypoints) {
  if (knots_.size() < 2 || static_cast<Eigen::Index>(knots_.size()) != points_.rows()) {
    throw std::invalid_argument("a spline has at least two waypoints and one knot for each");
  }
  seconds_ = second_derivative_operator(knots_) * points_;
}

Eigen::MatrixXd CubicSpline::second_derivative_operator(const std::vector<double>& knots) {
  const auto n = static_cast<Eigen::Index>(knots.size());
  Eigen::MatrixXd left = Eigen::MatrixXd::Identity(n, n);
  Eigen::MatrixXd right = Eigen::MatrixXd::Zero(n, n);
  for (Eigen::Index i = 1; i + 1 < n; ++i) {
    const double before = knots[static_cast<std::size_t>(i)] - knots[static_cast<std::size_t>(i - 1)];
    const double after = knots[static_cast<std::size_t>(i + 1)] - knots[static_cast<std::size_t>(i)];
    left(i, i - 1) = before / 6.0;
    left(i, i) = (before + after) / 3.0;
    left(i, i + 1) = after / 6.0;
    right(i, i - 1) = 1.0 / before;
    right(i, i) = -1.0 / before - 1.0 / after;
    right(i, i + 1) = 1.0 / after;
  }
  return left.partialPivLu().solve(right);
}

std::size_t CubicSpline::segment(double u) const {
  const auto above = std::ranges::upper_bound(knots_, u);
  const auto index = static_cast<std::size_t>(above - knots_.begin());
  return std::clamp<std::size_t>(index, 1, knots_.size() - 1) - 1;
}

Eigen::Vector3d CubicSpline::position(double u) const {
  u = std::clamp(u, first_knot(), last_knot());
  const std::size_t i = segment(u);
  const auto row = static_cast<Eigen::Index>(i);
  const double h = knots_[i + 1] - knots_[i];
  const double a = (knots_[i + 1] - u) / h;
  const double b = (u - knots_[i]) / h;
  return a * points_.row(row) + b * points_.row(row + 1) +
         ((a * a * a - a) * seconds_.row(row) + (b * b * b - b) * seconds_.row(row + 1)) * (h * h / 6.0);
}

Eigen::Vector3d CubicSpline::derivative(double u) const {
  u = std::clamp(u, first_knot(), last_knot());
  const std::size_t i = segment(u);
  const auto row = static_cast<Eigen::Index>(i);
  const double h = knots_[i + 1] - knots_[i];
  const double a = (knots_[i + 1] - u) / h;
  const double b = (u - knots_[i]) / h;
  return (points_.row(row + 1) - points_.row(row)) / h +
         ((1.0 - 3.0 * a * a) * seconds_.row(row) + (3.0 * b * b - 1.0) * seconds_.row(row + 1)) * (h / 6.0);
}

}  // namespace endplate::geometry
