#include "geometry/cubic_spline.hpp"

#include <Eigen/LU>

namespace endplate::geometry {

Eigen::MatrixXd second_derivative_operator(const std::vector<double>& knots) {
  const auto n = static_cast<Eigen::Index>(knots.size());
  const auto knot = [&](Eigen::Index i) { return knots[static_cast<std::size_t>(i)]; };
  Eigen::MatrixXd left = Eigen::MatrixXd::Identity(n, n);
  Eigen::MatrixXd right = Eigen::MatrixXd::Zero(n, n);
  for (Eigen::Index i = 1; i + 1 < n; ++i) {
    const double before = knot(i) - knot(i - 1);
    const double after = knot(i + 1) - knot(i);
    left(i, i - 1) = before / 6.0;
    left(i, i) = (before + after) / 3.0;
    left(i, i + 1) = after / 6.0;
    right(i, i - 1) = 1.0 / before;
    right(i, i) = -1.0 / before - 1.0 / after;
    right(i, i + 1) = 1.0 / after;
  }
  return left.partialPivLu().solve(right);
}

}  // namespace endplate::geometry
