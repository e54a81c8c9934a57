#include "geometry/thin_plate_variance.hpp"

#include <catch2/catch.hpp>

#include "geometry/thin_plate_spline.hpp"

using namespace endplate::geometry;

using Points = std::vector<Eigen::Vector3d>;

namespace {

const Points kFrom{{0, 0, 0},     {60, 5, -3},   {10, 250, 4}, {-5, 240, 50},
                   {45, 120, 30}, {-20, 90, 10}, {5, 180, -35}};
const std::vector<double> kEach{0.0, 5.0, 80.0, 20.0, 0.0, 40.0, 1.0};

// The spline is a weighted sum of its targets: the weight of each at x is what the spline gives for
// a target of 1 there and 0 elsewhere.
std::vector<double> weights_at(const Eigen::Vector3d& x, AffinePart affine) {
  std::vector<double> weights;
  for (std::size_t i = 0; i < kFrom.size(); ++i) {
    const bool moves = affine == AffinePart::identity;
    Points to = moves ? kFrom : Points(kFrom.size(), Eigen::Vector3d::Zero());
    to[i].x() += 1.0;
    const auto warp = ThinPlateSpline::fit(kFrom, to, kEach, affine);
    weights.push_back((*warp)(x).x() - (moves ? x.x() : 0.0));
  }
  return weights;
}

}  // namespace

// Of g(x) less the weighted sum of what is seen, by the variances of differences.
TEST_CASE("the variance is that of the spline's own weights", "[geometry][warp]") {
  for (const AffinePart affine : {AffinePart::free, AffinePart::identity}) {
    const auto variance = ThinPlateVariance::of(kFrom, kEach, affine);
    REQUIRE(variance.has_value());
    for (const Eigen::Vector3d& x :
         Points{{12, 40, 3}, {10, 251, 4}, {300, -100, 60}, {45, 120, 30}}) {
      const auto weights = weights_at(x, affine);
      double expected = 0.0;
      for (std::size_t i = 0; i < kFrom.size(); ++i) {
        expected += 2.0 * weights[i] * (x - kFrom[i]).norm() + weights[i] * weights[i] * kEach[i];
        for (std::size_t j = 0; j < kFrom.size(); ++j) {
          expected -= weights[i] * weights[j] * (kFrom[i] - kFrom[j]).norm();
        }
      }
      CHECK((*variance)(x) == Approx(expected).margin(1e-9));
    }
  }
}

TEST_CASE("the variance is 0 at a landmark that is met and grows away from all",
          "[geometry][warp]") {
  const auto variance = ThinPlateVariance::of(kFrom, kEach, AffinePart::identity);
  CHECK((*variance)(kFrom[0]) < 1e-9);
  double last = 0.0;
  for (const double away_mm : {1.0, 10.0, 100.0, 1000.0}) {
    const double here = (*variance)(kFrom[0] - Eigen::Vector3d(0.0, away_mm, 0.0));
    CHECK(here > last);
    last = here;
  }
  CHECK_FALSE(ThinPlateVariance::of({{0, 0, 0}}, {1.0}, AffinePart::identity).has_value());
}
