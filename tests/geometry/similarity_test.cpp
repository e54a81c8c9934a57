#include "geometry/similarity.hpp"

#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <limits>

using namespace endplate::geometry;

using Points = std::vector<Eigen::Vector3d>;

namespace {

const Points kCross{{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}};

}  // namespace

// Worked by hand. The arms of a cross become 2 and 4 long, turned by 90 degrees about z and moved
// by (1, 2, 3). The turn is that one by symmetry; the scale is the sum of x . y over the sum of x .
// x: (2 + 2 + 4 + 4) / 4 = 3, so each arm is missed by 1. At scale 1 they are missed by 1 and by 3.
TEST_CASE("a stretched cross gets the scale and the residuals worked by hand",
          "[geometry][similarity]") {
  const Points to{{1, 4, 3}, {1, 0, 3}, {-3, 2, 3}, {5, 2, 3}};
  const auto fit = fit_similarity(kCross, to);
  REQUIRE(fit.has_value());
  CHECK(fit->similarity.scale == Approx(3.0));
  CHECK((fit->similarity.translation_mm - Eigen::Vector3d(1, 2, 3)).norm() < 1e-12);
  Eigen::Matrix3d turn;
  turn << 0, -1, 0, 1, 0, 0, 0, 0, 1;
  CHECK((fit->similarity.rotation - turn).norm() < 1e-12);
  for (const double residual_mm : fit->residuals_mm) CHECK(residual_mm == Approx(1.0));
  CHECK(fit->rms_mm == Approx(1.0));

  const auto rigid = fit_similarity(kCross, to, Scaling::fixed_at_one);
  REQUIRE(rigid.has_value());
  CHECK(rigid->similarity.scale == Approx(1.0));
  CHECK(rigid->residuals_mm[1] == Approx(1.0));
  CHECK(rigid->residuals_mm[2] == Approx(3.0));
  CHECK(rigid->rms_mm == Approx(std::sqrt(5.0)));
}

TEST_CASE("a similarity is found again from the points that it moved", "[geometry][similarity]") {
  const Points from{{3, -40, 12}, {250, 8, -31}, {90, 55, 4}, {140, -22, 60}, {-12, 31, -44}};
  Similarity truth;
  truth.rotation = Eigen::AngleAxisd(2.1, Eigen::Vector3d(1, -2, 0.5).normalized()).matrix();
  truth.scale = 0.87;
  truth.translation_mm = {-310, 45, 1200};
  Points to;
  for (const auto& p : from) to.push_back(truth(p));
  const auto fit = fit_similarity(from, to);
  REQUIRE(fit.has_value());
  CHECK(fit->similarity.scale == Approx(0.87));
  CHECK((fit->similarity.rotation - truth.rotation).norm() < 1e-12);
  CHECK(fit->rms_mm < 1e-9);
}

TEST_CASE("a mirror image is matched by a turn and never by a reflection",
          "[geometry][similarity]") {
  const Points from{{0, 0, 0}, {10, 0, 0}, {0, 20, 0}, {0, 0, 30}};
  Points to;
  for (const auto& p : from) to.emplace_back(p.x(), p.y(), -p.z());
  const auto fit = fit_similarity(from, to);
  REQUIRE(fit.has_value());
  CHECK(fit->similarity.rotation.determinant() == Approx(1.0));
  CHECK(fit->similarity.scale > 0.0);
  CHECK(fit->rms_mm > 1.0);
}

TEST_CASE("points that determine no turn are refused", "[geometry][similarity]") {
  const Points line{{0, 0, 0}, {10, 0, 0}, {30, 0, 0.001}};
  CHECK(fit_similarity(line, {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}).error().what ==
        "the matched points lie on one line");
  CHECK_FALSE(fit_similarity({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, line).has_value());
  CHECK_FALSE(fit_similarity(Points(3, {1, 1, 1}), Points(3, {1, 1, 1})).has_value());
  CHECK_FALSE(fit_similarity({{0, 0, 0}, {1, 0, 0}}, {{0, 0, 0}, {1, 0, 0}}).has_value());
  CHECK_FALSE(fit_similarity(kCross, {{0, 0, 0}}).has_value());
  Points nan = kCross;
  nan[2].z() = std::numeric_limits<double>::quiet_NaN();
  CHECK_FALSE(fit_similarity(nan, kCross).has_value());
}
