#include "geometry/thin_plate_spline.hpp"

#include <catch2/catch.hpp>
#include <limits>

using namespace endplate::geometry;

using Points = std::vector<Eigen::Vector3d>;

namespace {

const Points kFrom{{0, 0, 0},     {60, 5, -3},   {10, 250, 4}, {-5, 240, 50},
                   {45, 120, 30}, {-20, 90, 10}, {5, 180, -35}};

Points bent() {
  Points to;
  for (const auto& p : kFrom) {
    to.emplace_back(p.x() + 1e-3 * p.y() * p.y(), 1.1 * p.y() - 0.1 * p.z(), p.z() + 0.05 * p.x());
  }
  return to;
}

}  // namespace

TEST_CASE("a warp without smoothing meets its landmarks", "[geometry][warp]") {
  const auto warp = ThinPlateSpline::fit(kFrom, bent());
  REQUIRE(warp.has_value());
  const Points to = bent();
  for (std::size_t i = 0; i < kFrom.size(); ++i) CHECK(((*warp)(kFrom[i]) - to[i]).norm() < 1e-10);
  const Points all = (*warp)(kFrom);
  REQUIRE(all.size() == kFrom.size());
  CHECK((all[3] - (*warp)(kFrom[3])).norm() == 0.0);
}

TEST_CASE("an affine map is found again everywhere and bends nothing", "[geometry][warp]") {
  Eigen::Matrix3d linear;
  linear << 1.1, 0.2, 0.0, -0.1, 0.9, 0.3, 0.05, 0.0, 1.2;
  const Eigen::Vector3d offset(400, -30, 7);
  Points to;
  for (const auto& p : kFrom) to.emplace_back(linear * p + offset);
  for (const double smoothing_mm : {0.0, 50.0}) {
    const auto warp = ThinPlateSpline::fit(kFrom, to, smoothing_mm);
    REQUIRE(warp.has_value());
    const Eigen::Vector3d far(700, -900, 300);
    CHECK(((*warp)(far) - (linear * far + offset)).norm() < 1e-8);
    CHECK((warp->jacobian(far) - linear).norm() < 1e-10);
    CHECK(std::abs(warp->bending_energy_mm()) < 1e-8);
  }
}

TEST_CASE("smoothing trades distance at the landmarks for less bending", "[geometry][warp]") {
  const Points to = bent();
  double last_distance_mm = -1.0;
  double last_energy_mm = std::numeric_limits<double>::infinity();
  for (const double smoothing_mm : {0.0, 1.0, 30.0, 1000.0}) {
    const auto warp = ThinPlateSpline::fit(kFrom, to, smoothing_mm);
    REQUIRE(warp.has_value());
    double distance_mm = 0.0;
    for (std::size_t i = 0; i < to.size(); ++i) distance_mm += ((*warp)(kFrom[i]) - to[i]).norm();
    CHECK(distance_mm > last_distance_mm);
    CHECK(warp->bending_energy_mm() < last_energy_mm);
    CHECK(warp->bending_energy_mm() > 0.0);
    last_distance_mm = distance_mm;
    last_energy_mm = warp->bending_energy_mm();
  }
}

TEST_CASE("each landmark is met as its own smoothing says", "[geometry][warp]") {
  const Points to = bent();
  std::vector<double> each(to.size(), 50.0);
  each[2] = 0.0;
  for (const AffinePart affine : {AffinePart::free, AffinePart::identity}) {
    const auto warp = ThinPlateSpline::fit(kFrom, to, each, affine);
    REQUIRE(warp.has_value());
    CHECK(((*warp)(kFrom[2]) - to[2]).norm() < 1e-9);
    CHECK(((*warp)(kFrom[3]) - to[3]).norm() > 0.1);
  }
  const auto same = ThinPlateSpline::fit(kFrom, to, std::vector<double>(to.size(), 3.0));
  const auto one = ThinPlateSpline::fit(kFrom, to, 3.0);
  CHECK(((*same)(Eigen::Vector3d(9, 9, 9)) - (*one)(Eigen::Vector3d(9, 9, 9))).norm() == 0.0);
  each.pop_back();
  CHECK(ThinPlateSpline::fit(kFrom, to, each).error().what == "7 landmarks have 6 smoothings");
}

TEST_CASE("with the identity as affine part a shift is free and a turn is not",
          "[geometry][warp]") {
  Points shifted;
  Points turned;
  for (const auto& p : kFrom) {
    shifted.emplace_back(p + Eigen::Vector3d(3, -5, 8));
    turned.emplace_back(-p.z(), p.y(), p.x());
  }
  const std::vector<double> each(kFrom.size(), 20.0);
  const auto shift = ThinPlateSpline::fit(kFrom, shifted, each, AffinePart::identity);
  const Eigen::Vector3d far(700, -900, 300);
  CHECK(((*shift)(far)-far - Eigen::Vector3d(3, -5, 8)).norm() < 1e-9);
  const auto turn = ThinPlateSpline::fit(kFrom, turned, each, AffinePart::identity);
  CHECK(((*turn)(kFrom[1]) - turned[1]).norm() > 1.0);
  // Landmarks in one plane determine it all the same.
  const Points flat{{0, 0, 0}, {100, 0, 0}, {0, 100, 0}};
  CHECK(ThinPlateSpline::fit(flat, flat, {1, 1, 1}, AffinePart::identity).has_value());
}

TEST_CASE("the derivative is that of finite differences", "[geometry][warp]") {
  const auto warp = ThinPlateSpline::fit(kFrom, bent(), 2.0);
  const Eigen::Vector3d x(17, 133, 21);
  constexpr double kStep_mm = 1e-4;
  for (int axis = 0; axis < 3; ++axis) {
    const Eigen::Vector3d step = kStep_mm * Eigen::Vector3d::Unit(axis);
    const Eigen::Vector3d slope = ((*warp)(x + step) - (*warp)(x - step)) / (2.0 * kStep_mm);
    CHECK((warp->jacobian(x).col(axis) - slope).norm() < 1e-7);
  }
}

// The integral of the squares of the second derivatives over a cube six times as wide as the
// landmarks, by the midpoint rule: its error at the landmarks and beyond the cube is some per cent.
TEST_CASE("the bending energy is the integral that the header states", "[geometry][warp]") {
  const Points from{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}};
  Points to = from;
  to[4] = {1.5, 0.8, 1.1};
  const auto warp = ThinPlateSpline::fit(from, to);
  REQUIRE(warp.has_value());
  constexpr int kCells = 48;
  constexpr double kCell = 6.0 / kCells;
  const auto integral = [&](double low, int cells, double cell) {
    double sum = 0.0;
    for (int i = 0; i < cells * cells * cells; ++i) {
      const Eigen::Vector3d x =
          Eigen::Vector3d::Constant(low) +
          cell * Eigen::Vector3d(i % cells + 0.5, i / cells % cells + 0.5, i / cells / cells + 0.5);
      for (int axis = 0; axis < 3; ++axis) {
        const Eigen::Vector3d step = 1e-3 * Eigen::Vector3d::Unit(axis);
        sum += ((warp->jacobian(x + step) - warp->jacobian(x - step)) / 2e-3).squaredNorm();
      }
    }
    return sum * cell * cell * cell;
  };
  CHECK(integral(-2.5, kCells, kCell) == Approx(warp->bending_energy_mm()).epsilon(0.1));
}

TEST_CASE("landmarks that determine no warp are refused", "[geometry][warp]") {
  const Points four{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
  CHECK(ThinPlateSpline::fit(four, four).has_value());
  const Points three(four.begin(), four.begin() + 3);
  CHECK(ThinPlateSpline::fit(three, three).error().what == "fewer than four landmarks are matched");
  CHECK_FALSE(ThinPlateSpline::fit(four, three).has_value());
  const Points flat{{0, 0, 0}, {100, 0, 0}, {0, 100, 0}, {100, 100, 0}, {30, 40, 0.001}};
  CHECK(ThinPlateSpline::fit(flat, flat).error().what == "the landmarks lie in one plane");
  Points twice = four;
  twice.push_back(twice[1]);
  CHECK(ThinPlateSpline::fit(twice, twice).error().what == "landmarks 2 and 5 lie at one place");
  Points nan = four;
  nan[0].x() = std::numeric_limits<double>::quiet_NaN();
  CHECK_FALSE(ThinPlateSpline::fit(nan, four).has_value());
  CHECK_FALSE(ThinPlateSpline::fit(four, nan).has_value());
  CHECK_FALSE(ThinPlateSpline::fit(four, four, -1.0).has_value());
  CHECK_FALSE(ThinPlateSpline::fit(Points(5, {1, 1, 1}), Points(5, {1, 1, 1})).has_value());
}
