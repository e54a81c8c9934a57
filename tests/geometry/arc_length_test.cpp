#include "geometry/arc_length.hpp"

#include <catch2/catch.hpp>
#include <numbers>

using namespace endplate::geometry;

namespace {

// A circle's arc by waypoints every three degrees; the knots are true arc lengths.
CubicSpline arc(double radius_mm, double turn_rad) {
  const int n = 1 + static_cast<int>(turn_rad / (3.0 * std::numbers::pi / 180.0));
  std::vector<double> knots;
  CubicSpline::Points points(n + 1, 3);
  for (int i = 0; i <= n; ++i) {
    const double angle = turn_rad * i / n;
    knots.push_back(radius_mm * angle);
    points.row(i) << radius_mm * std::cos(angle), radius_mm * std::sin(angle), 0.0;
  }
  return {knots, points};
}

}  // namespace

TEST_CASE("the length of a straight curve is the distance of its ends", "[geometry]") {
  CubicSpline::Points points(3, 3);
  points << 0, 0, 0, 30, 40, 0, 60, 80, 0;
  const CubicSpline curve({0.0, 50.0, 100.0}, points);
  CHECK(arc_length(curve, 0.0, 100.0) == Approx(100.0).epsilon(1e-12));
  CHECK(arc_length(curve, 20.0, 70.0) == Approx(50.0).epsilon(1e-12));
}

// Closed form: radius times angle. A natural end is straight, which the first pieces feel.
TEST_CASE("the length of an arc of a circle is its radius times its angle", "[geometry]") {
  const CubicSpline curve = arc(40.0, std::numbers::pi);
  CHECK(arc_length(curve, 0.0, 40.0 * std::numbers::pi) ==
        Approx(40.0 * std::numbers::pi).epsilon(1e-4));
  CHECK(arc_length(curve, 30.0, 90.0) == Approx(60.0).epsilon(1e-6));
}

TEST_CASE("lengths have a sign, add up, and go on beyond the ends", "[geometry]") {
  const CubicSpline curve = arc(25.0, 2.0);
  const double whole = arc_length(curve, 0.0, 50.0);
  CHECK(arc_length(curve, 50.0, 0.0) == Approx(-whole));
  CHECK(arc_length(curve, 0.0, 17.3) + arc_length(curve, 17.3, 50.0) ==
        Approx(whole).epsilon(1e-9));
  CHECK(arc_length(curve, 12.0, 12.0) == 0.0);
  const double speed = curve.derivative(50.0).norm();
  CHECK(arc_length(curve, 50.0, 56.0) == Approx(6.0 * speed).epsilon(1e-9));
}

TEST_CASE("the table of lengths agrees with the integral, and its inverse with it", "[geometry]") {
  const CubicSpline curve = arc(18.0, 2.5);
  const ArcLengthTable table(curve);
  CHECK(table.total_mm() == Approx(arc_length(curve, 0.0, 45.0)).epsilon(1e-9));
  for (const double u : {0.0, 0.4, 10.3, 33.3, 45.0}) {
    CHECK(table.length_at(u) == Approx(arc_length(curve, 0.0, u)).margin(1e-3));
    CHECK(table.parameter_at(table.length_at(u)) == Approx(u).margin(1e-9));
  }
  CHECK(table.length_at(-3.0) == 0.0);
  CHECK(table.parameter_at(1e6) == 45.0);
}
