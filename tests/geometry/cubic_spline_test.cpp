#include "geometry/cubic_spline.hpp"

#include <catch2/catch.hpp>

using namespace endplate::geometry;

namespace {

CubicSpline bend() {
  CubicSpline::Points points(5, 3);
  points << 0, 0, 0, 5, 9, 1, 9, 21, -2, 4, 30, 3, -7, 41, 8;
  return {{0.0, 10.0, 23.0, 34.0, 50.0}, points};
}

}  // namespace

TEST_CASE("a spline passes through its waypoints", "[geometry]") {
  const CubicSpline curve = bend();
  for (std::size_t i = 0; i < curve.knots().size(); ++i) {
    const Eigen::Vector3d waypoint = curve.waypoints().row(static_cast<Eigen::Index>(i));
    CHECK((curve.position(curve.knots()[i]) - waypoint).norm() < 1e-12);
  }
}

TEST_CASE("position, slope and bend of a spline do not jump at its knots", "[geometry]") {
  const CubicSpline curve = bend();
  constexpr double kHair = 1e-9;
  for (const double knot : {10.0, 23.0, 34.0}) {
    CHECK((curve.position(knot + kHair) - curve.position(knot - kHair)).norm() < 1e-7);
    CHECK((curve.derivative(knot + kHair) - curve.derivative(knot - kHair)).norm() < 1e-7);
    CHECK((curve.second_derivative(knot + kHair) - curve.second_derivative(knot - kHair)).norm() <
          1e-7);
  }
}

TEST_CASE("the derivatives of a spline are those of its position", "[geometry]") {
  const CubicSpline curve = bend();
  constexpr double kStep = 1e-4;
  for (const double u : {0.5, 7.0, 11.0, 29.0, 33.9, 49.0}) {
    const Eigen::Vector3d slope =
        (curve.position(u + kStep) - curve.position(u - kStep)) / (2.0 * kStep);
    CHECK((slope - curve.derivative(u)).norm() < 1e-7);
    const Eigen::Vector3d second =
        (curve.derivative(u + kStep) - curve.derivative(u - kStep)) / (2.0 * kStep);
    CHECK((second - curve.second_derivative(u)).norm() < 1e-7);
  }
}

TEST_CASE("a natural spline is straight at its ends and goes on straight beyond them",
          "[geometry]") {
  const CubicSpline curve = bend();
  CHECK(curve.second_derivative(0.0).norm() < 1e-12);
  CHECK(curve.second_derivative(50.0).norm() < 1e-12);
  const Eigen::Vector3d beyond = curve.position(50.0) + 7.0 * curve.derivative(50.0);
  CHECK((curve.position(57.0) - beyond).norm() < 1e-12);
  const Eigen::Vector3d before = curve.position(0.0) - 4.0 * curve.derivative(0.0);
  CHECK((curve.position(-4.0) - before).norm() < 1e-12);
}

TEST_CASE("a spline through points of a line is that line", "[geometry]") {
  CubicSpline::Points points(4, 3);
  points << 0, 0, 0, 2, 4, 6, 3, 6, 9, 10, 20, 30;
  const CubicSpline curve({0.0, 2.0, 3.0, 10.0}, points);
  for (const double u : {0.3, 1.9, 2.5, 8.0}) {
    CHECK((curve.position(u) - Eigen::Vector3d(u, 2.0 * u, 3.0 * u)).norm() < 1e-12);
  }
}

TEST_CASE("two waypoints make a straight line", "[geometry]") {
  CubicSpline::Points points(2, 3);
  points << 0, 0, 0, 3, 4, 0;
  const CubicSpline curve({0.0, 5.0}, points);
  CHECK((curve.position(2.5) - Eigen::Vector3d(1.5, 2.0, 0.0)).norm() < 1e-12);
}

TEST_CASE("moving a waypoint moves the spline in proportion", "[geometry]") {
  const CubicSpline curve = bend();
  CubicSpline::Points moved = curve.waypoints();
  moved.row(2) += Eigen::RowVector3d(1.0, -2.0, 0.5);
  CubicSpline::Points twice = curve.waypoints();
  twice.row(2) += 2.0 * Eigen::RowVector3d(1.0, -2.0, 0.5);
  for (const double u : {5.0, 20.0, 40.0}) {
    const Eigen::Vector3d one = CubicSpline(curve.knots(), moved).position(u) - curve.position(u);
    const Eigen::Vector3d two = CubicSpline(curve.knots(), twice).position(u) - curve.position(u);
    CHECK((two - 2.0 * one).norm() < 1e-12);
  }
}

TEST_CASE("a spline without a knot for each waypoint cannot be made", "[geometry]") {
  CHECK_THROWS_AS(CubicSpline({0.0, 1.0, 2.0}, CubicSpline::Points::Zero(2, 3)),
                  std::invalid_argument);
}
