// Geometry against general-purpose libraries.
#include <Eigen/Geometry>
#include <array>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <numbers>

#include "../models/limb/course_fixture.hpp"
#include "geometry/arc_length.hpp"
#include "geometry/cubic_spline.hpp"

using namespace endplate;
using namespace endplate::geometry;

namespace {

struct SplineReference {
  double u;
  Eigen::Vector3d position;
  Eigen::Vector3d derivative;
  Eigen::Vector3d second;
};

double by_quadrature(const CubicSpline& curve, double from, double to) {
  const auto speed = [&](double u) { return curve.derivative(u).norm(); };
  double total = 0.0;
  std::vector<double> ends{from};
  for (const double knot : curve.knots()) {
    if (knot > from && knot < to) ends.push_back(knot);
  }
  ends.push_back(to);
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    total += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(speed, ends[i],
                                                                           ends[i + 1], 12, 1e-12);
  }
  return total;
}

}  // namespace

// SciPy 1.10.1, scipy.interpolate.CubicSpline(knots, waypoints, bc_type='natural').
TEST_CASE("a spline is the natural cubic spline of SciPy", "[published][geometry]") {
  const std::array<SplineReference, 9> references{{
      {0, {0, 0, 0}, {0.3745243531202, 0.9236301369863, 0.2809550989346}, {0, 0, 0}},
      {2.5,
       {0.9497985547381, 2.302373712817, 0.6696246324013},
       {0.3907095594453, 0.9155881814082, 0.2416393610125},
       {0.01294816506004, -0.006433564462484, -0.03145259033767}},
      {9,
       {4, 8, 1},
       {0.5842846270928, 0.8194063926941, -0.2285768645358},
       {0.04661339421613, -0.02316083206494, -0.1132293252156}},
      {15.75,
       {8.050518715218, 13.15191968108, -1.895160330158},
       {0.4743410804319, 0.7290971033105, -0.4474352228406},
       {-0.07918925989346, -0.003597475900558, 0.04838240423643}},
      {25,
       {7.050068587106, 20.07407407407, -1.349108367627},
       {-0.7118777834151, 0.7820142059868, 0.6169485314843},
       {-0.07977831332093, 0.004312531709792, 0.06612900952703}},
      {33.3,
       {0.5573075730911, 26.56086118087, 3.670951754344},
       {-0.6759091593734, 0.7745168061898, 0.4120930920218},
       {0.0375583988669, 0.001044731946558, -0.05128207973956}},
      {47,
       {-5.727977696272, 38.03140091512, 6.780379008353},
       {-0.2817965534979, 0.9556069958848, 0.2079925411523},
       {0.01997628812222, 0.02539179209651, 0.02148637888269}},
      {49.1,
       {-6.279472281678, 40.09349982877, 7.26858859161},
       {-0.247554342656, 1.003554604262, 0.2535060644977},
       {0.008411815068493, 0.01222602739726, 0.01205907534247}},
      {50, {-6.5, 41, 7.5}, {-0.2437690258752, 1.009056316591, 0.2589326484018}, {0, 0, 0}},
  }};
  CubicSpline::Points points(6, 3);
  points << 0, 0, 0, 4, 8, 1, 9, 17, -3, 3, 24, 2, -6, 39, 7, -6.5, 41, 7.5;
  const CubicSpline curve({0.0, 9.0, 21.0, 30.0, 48.0, 50.0}, points);
  for (const SplineReference& r : references) {
    INFO("u " << r.u);
    CHECK((curve.position(r.u) - r.position).norm() < 1e-10);
    CHECK((curve.derivative(r.u) - r.derivative).norm() < 1e-10);
    CHECK((curve.second_derivative(r.u) - r.second).norm() < 1e-10);
  }
}

// Boost.Math, adaptive Gauss-Kronrod quadrature with 31 nodes. The header of arc_length.hpp
// promises 1e-6 mm for radii from 3 mm up; a sharper bend would get 0.01 mm.
TEST_CASE("arc lengths of all nerve courses are those of adaptive quadrature",
          "[published][geometry]") {
  const limb::Atlas& atlas = limb::TestCourse::atlas();
  for (const limb::Course& course : atlas.courses()) {
    const limb::TestCourse nerve(course.id);
    const CubicSpline& curve = nerve.curve();
    double sharpest_mm = 1000.0;
    for (const double u : nerve.samples(0.25)) {
      sharpest_mm = std::min(sharpest_mm, nerve.radius_of_curvature_mm(u));
    }
    const double tolerance_mm = sharpest_mm >= 3.0 ? 1e-6 : 1e-2;
    INFO(course.id << ", sharpest radius " << sharpest_mm);
    const double end = curve.last_knot();
    CHECK(std::abs(arc_length(curve, 0.0, end) - by_quadrature(curve, 0.0, end)) < tolerance_mm);
    CHECK(std::abs(arc_length(curve, 0.21 * end, 0.83 * end) -
                   by_quadrature(curve, 0.21 * end, 0.83 * end)) < tolerance_mm);
  }
}

// Closed form of a helix of radius a and rise 2 pi b a turn: length t sqrt(a^2 + b^2), curvature
// a / (a^2 + b^2). The natural ends differ from it, so the middle is compared.
TEST_CASE("a helix has the length and curvature of its closed form", "[published][geometry]") {
  constexpr double kRadius_mm = 12.0;
  constexpr double kRise_mm = 9.0;
  const double per_rad = std::hypot(kRadius_mm, kRise_mm);
  std::vector<double> knots;
  CubicSpline::Points points(121, 3);
  for (int i = 0; i <= 120; ++i) {
    const double t = 2.0 * std::numbers::pi * i / 60.0;
    knots.push_back(per_rad * t);
    points.row(i) << kRadius_mm * std::cos(t), kRise_mm * t, kRadius_mm * std::sin(t);
  }
  const CubicSpline curve(knots, points);
  const double from = 40.0;
  const double to = 140.0;
  CHECK(std::abs(arc_length(curve, from, to) - (to - from)) < 1e-3);
  const Eigen::Vector3d d = curve.derivative(90.0);
  const double curvature = d.cross(curve.second_derivative(90.0)).norm() / std::pow(d.norm(), 3);
  CHECK(curvature == Approx(kRadius_mm / (per_rad * per_rad)).epsilon(3e-3));
}

// Eigen::Transform composed of elementary rotations and translations.
TEST_CASE("segment frames are rigid motions as Eigen composes them", "[published][geometry]") {
  using limb::Segment;
  using limb::SegmentFrames;
  const limb::SegmentScale scale{1.07, 1.14, 1.07, 1.1};
  for (const Side side : {Side::right, Side::left}) {
    const SegmentFrames frames(scale, side);
    const Eigen::Affine3d mirror(Eigen::Scaling(1.0, 1.0, side == Side::right ? 1.0 : -1.0));
    const Eigen::Isometry3d elbow(
        Eigen::AngleAxisd(-SegmentFrames::kCarryingAngle_rad, Eigen::Vector3d::UnitX()));
    const Eigen::Isometry3d wrist =
        elbow * Eigen::Translation3d(2.0 * 1.1, -(245.0 * 1.14 + 7.0 * 1.07), 0.0);
    const auto check = [&](Segment segment, const Eigen::Isometry3d& frame, double along_mm) {
      const Eigen::Vector3d expected =
          mirror * (frame * Eigen::Vector3d(1.1 * 6.0, 0.3 * along_mm, 1.1 * -8.0));
      const Eigen::Vector3d p = frames.to_limb(segment, 0.3, 6.0, -8.0);
      CHECK((p - expected).norm() < 1e-10);
      const limb::SegmentPoint back = frames.from_limb(segment, p);
      CHECK(back.fraction == Approx(0.3));
      CHECK(back.x_mm == Approx(6.0));
      CHECK(back.z_mm == Approx(-8.0));
    };
    check(Segment::humerus, Eigen::Isometry3d::Identity(), 300.0 * 1.07);
    check(Segment::forearm, elbow, -245.0 * 1.14);
    check(Segment::hand, wrist, -180.0 * 1.07);
  }
}

// A scan a hundred times denser than the one that brackets the crossing.
TEST_CASE("the first crossing of a surface is the one that a dense scan finds",
          "[published][geometry]") {
  const limb::Atlas& atlas = limb::TestCourse::atlas();
  const limb::SegmentFrames frames;
  int crossings = 0;
  for (const limb::NerveMeasure& measure : atlas.measures()) {
    const limb::MeasureGeometry g = atlas.geometry_of(measure, frames);
    if (measure.definition != limb::Definition::crossing &&
        measure.definition != limb::Definition::offset_at_level) {
      continue;
    }
    const CubicSpline curve = atlas.curve(measure.course, frames);
    constexpr double kStep = 0.02;
    std::optional<double> scanned;
    const auto height = [&](double u) { return g.surface.height<double>(curve.position(u)); };
    double low = height(g.search_from);
    const int steps = static_cast<int>((g.search_to - g.search_from) / kStep);
    for (int k = 1; k <= steps && !scanned; ++k) {
      const double u = g.search_from + kStep * k;
      const double high = height(u);
      if ((low > 0.0) != (high > 0.0) && g.surface.counts(curve.position(u - 0.5 * kStep))) {
        scanned = u - 0.5 * kStep;
      }
      low = high;
    }
    const auto found = limb::find_crossing(curve, g.surface, g.search_from, g.search_to);
    INFO(measure.id);
    REQUIRE(found.has_value() == scanned.has_value());
    if (found) CHECK(std::abs(*found - *scanned) <= kStep);
    ++crossings;
  }
  CHECK(crossings > 20);
}
