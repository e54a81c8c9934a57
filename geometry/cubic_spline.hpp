#pragma once
// Natural cubic spline through waypoints in space, with fixed knots.
//
// The position is linear in the waypoints, so a fit may move them without rebuilding anything.
#include <Eigen/Core>
#include <cstddef>
#include <vector>

namespace endplate::geometry {

class CubicSpline {
 public:
  // `knots`: strictly increasing, at least 2. `waypoints`: one row of x, y, z a knot.
  CubicSpline(std::vector<double> knots, const Eigen::MatrixX3d& waypoints);

  // `u` is clamped to [first knot, last knot].
  Eigen::Vector3d position(double u) const;
  Eigen::Vector3d derivative(double u) const;

  double first_knot() const { return knots_.front(); }
  double last_knot() const { return knots_.back(); }
  const std::vector<double>& knots() const { return knots_; }

  // The matrix that turns waypoints into second derivatives at the knots (n by n, rows by knot).
  static Eigen::MatrixXd second_derivative_operator(const std::vector<double>& knots);

 private:
  std::size_t segment(double u) const;

  std::vector<double> knots_;
  Eigen::MatrixX3d points_;
  Eigen::MatrixX3d seconds_;
};

}  // namespace endplate::geometry
