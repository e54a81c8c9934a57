#pragma once
// Natural cubic spline through waypoints in space, with fixed knots.
//
// Position is linear in the waypoints, so a fit may move them freely. The scalar type may be a dual
// number: then waypoints and parameter carry derivatives.
#include <Eigen/Core>
#include <algorithm>
#include <cstddef>
#include <stdexcept>
#include <utility>
#include <vector>

namespace endplate::geometry {

// The n by n matrix that turns the waypoints of a natural cubic spline into its second derivatives
// at the knots. `knots`: strictly increasing, at least 2.
Eigen::MatrixXd second_derivative_operator(const std::vector<double>& knots);

// The value part of a scalar; dual numbers bring their own overload.
inline double value_of(double scalar) {
  return scalar;
}

template <class Scalar>
class BasicCubicSpline {
 public:
  using Point = Eigen::Matrix<Scalar, 3, 1>;
  using Points = Eigen::Matrix<Scalar, Eigen::Dynamic, 3>;

  // `waypoints`: one row of x, y, z a knot. `seconds_of` is second_derivative_operator(knots).
  BasicCubicSpline(std::vector<double> knots, Points waypoints, const Eigen::MatrixXd& seconds_of)
      : knots_(std::move(knots)), points_(std::move(waypoints)) {
    if (knots_.size() < 2 || static_cast<Eigen::Index>(knots_.size()) != points_.rows()) {
      throw std::invalid_argument("a spline has at least two waypoints and one knot for each");
    }
    seconds_ = seconds_of.cast<Scalar>() * points_;
  }
  BasicCubicSpline(const std::vector<double>& knots, const Points& waypoints)
      : BasicCubicSpline(knots, waypoints, second_derivative_operator(knots)) {}

  // Beyond its ends the curve goes on straight.
  Point position(const Scalar& u) const {
    const Scalar inside = clamp(u);
    const Local at = local(inside);
    Point p = points_.row(at.row).transpose() * at.a + points_.row(at.row + 1).transpose() * at.b +
              (seconds_.row(at.row).transpose() * (at.a * at.a * at.a - at.a) +
               seconds_.row(at.row + 1).transpose() * (at.b * at.b * at.b - at.b)) *
                  Scalar(at.h * at.h / 6.0);
    if (value_of(u) != value_of(inside)) p += derivative(inside) * Scalar(u - inside);
    return p;
  }

  Point derivative(const Scalar& u) const {
    const Local at = local(clamp(u));
    return (points_.row(at.row + 1) - points_.row(at.row)).transpose() / Scalar(at.h) +
           (seconds_.row(at.row).transpose() * (Scalar(1.0) - Scalar(3.0) * at.a * at.a) +
            seconds_.row(at.row + 1).transpose() * (Scalar(3.0) * at.b * at.b - Scalar(1.0))) *
               Scalar(at.h / 6.0);
  }

  Point second_derivative(const Scalar& u) const {
    const Local at = local(clamp(u));
    return seconds_.row(at.row).transpose() * at.a + seconds_.row(at.row + 1).transpose() * at.b;
  }

  double first_knot() const { return knots_.front(); }
  double last_knot() const { return knots_.back(); }
  const std::vector<double>& knots() const { return knots_; }
  const Points& waypoints() const { return points_; }

 private:
  struct Local {
    Eigen::Index row;
    double h;
    Scalar a;
    Scalar b;
  };

  Scalar clamp(const Scalar& u) const {
    if (value_of(u) < first_knot()) return Scalar(first_knot());
    if (value_of(u) > last_knot()) return Scalar(last_knot());
    return u;
  }

  Local local(const Scalar& u) const {
    const auto above = std::ranges::upper_bound(knots_, value_of(u));
    const auto i = std::clamp<std::size_t>(static_cast<std::size_t>(above - knots_.begin()), 1,
                                           knots_.size() - 1) -
                   1;
    const double h = knots_[i + 1] - knots_[i];
    return {static_cast<Eigen::Index>(i), h, (Scalar(knots_[i + 1]) - u) / Scalar(h),
            (u - Scalar(knots_[i])) / Scalar(h)};
  }

  std::vector<double> knots_;
  Points points_;
  Points seconds_;
};

using CubicSpline = BasicCubicSpline<double>;

}  // namespace endplate::geometry
