#include "models/limb/found_points.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

#include "limb_fixture.hpp"
#include "models/limb/case_limb.hpp"

namespace endplate::limb {
namespace {

using anatomy::NerveMetrics;
using casefile::AtLandmark;
using casefile::Toward;

constexpr const char* kCutaneous = "posterior antebrachial cutaneous nerve";
constexpr const char* kDeep = "deep branch of radial nerve";
constexpr const char* kArm = "acromion to lateral epicondyle";

const anatomy::NerveTree& own_tree() {
  static const auto tree = anatomy::NerveTree::from(own_tables());
  REQUIRE(tree.has_value());
  return *tree;
}

CaseLimb limb_of(const casefile::Limb& limb) {
  auto built = CaseLimb::from(own_tables(), own_tree(), limb);
  if (!built) FAIL(built.error().problems.front().place + ": " + built.error().problems[0].what);
  return *std::move(built);
}

Problem refused(const casefile::LocatedPoint& located) {
  casefile::Limb limb;
  limb.ultrasound = {located};
  const auto built = CaseLimb::from(own_tables(), own_tree(), limb);
  REQUIRE_FALSE(built.has_value());
  CHECK(built.error().fault == Fault::input);
  return built.error().problems.front();
}

// Where a branch leaves the radial nerve, mm from its beginning.
double leaves(const NerveMetrics& metrics, const char* branch) {
  return metrics.leaves_parent_at_mm[own_tree().find(branch).value()].front();
}

casefile::LocatedPoint cutaneous_at(double offset_mm, std::optional<double> error_mm) {
  return {kCutaneous, "origin", AtLandmark{"lateral epicondyle", offset_mm, Toward::proximal},
          error_mm};
}

struct Moments {
  double mean = 0.0;
  double sd = 0.0;
};

Moments moments_of(const std::vector<double>& values, const std::vector<double>& weights) {
  double sum = 0.0;
  double total = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    sum += weights[i] * values[i];
    total += weights[i];
  }
  Moments result{sum / total, 0.0};
  double squares = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    squares += weights[i] * std::pow(values[i] - result.mean, 2);
  }
  result.sd = std::sqrt(squares / total);
  return result;
}

FoundPoint found_at(double arc_mm, double sd_mm, double distal_mm, double error_mm,
                    const std::string& landmark, double landmark_sd_mm) {
  FoundPoint point;
  point.level.arc_mm = arc_mm;
  point.level.parts_mm = Eigen::Vector3d(arc_mm, 0.0, 0.0);
  point.level.sd_mm = sd_mm;
  point.at.landmark = landmark;
  point.found_parts_mm = Eigen::Vector3d(arc_mm + distal_mm, 0.0, 0.0);
  point.landmark_sd_mm = landmark_sd_mm;
  point.error_mm = error_mm;
  return point;
}

Level level_at(std::size_t course, double arc_mm) {
  Level level;
  level.course = course;
  level.arc_mm = arc_mm;
  return level;
}

}  // namespace

TEST_CASE("the points of a nerve are listed once, as they may be given", "[limb][ultrasound]") {
  const auto names = points_to_find("radial nerve", own_tables());
  CHECK(std::ranges::count(names, "bifurcation") == 1);
  CHECK(std::ranges::count(names, "pierces: lateral intermuscular septum") == 1);
  CHECK(points_to_find("no such nerve", own_tables()).empty());
  for (const std::string& name : names) {
    CHECK(std::ranges::count(names, name) == 1);
  }
}

TEST_CASE("a found point takes its neighbours along by exp(-d / 100 mm)", "[limb][ultrasound]") {
  const std::vector<Level> levels{level_at(0, 100.0), level_at(0, 150.0), level_at(0, 250.0),
                                  level_at(1, 150.0)};
  const FoundPoints found({found_at(150.0, 12.0, -18.0, 5.0, "lateral epicondyle", 4.0)}, levels);
  const Gaussian z = found.posterior();
  // One reading of 12 z with errors of 5 and 4 mm.
  const double gain = 12.0 / (144.0 + 25.0 + 16.0);
  for (Eigen::Index i = 0; i < 3; ++i) {
    const double rho =
        std::exp(-std::abs(levels[static_cast<std::size_t>(i)].arc_mm - 150.0) / 100.0);
    CHECK(z.mean[i] == Approx(rho * gain * -18.0));
    CHECK(z.covariance(i, i) == Approx(1.0 - rho * rho * gain * 12.0));
  }
  // Another course knows nothing of it.
  CHECK(std::abs(z.mean[3]) < 1e-12);
  CHECK(z.covariance(3, 3) == Approx(1.0));
}

TEST_CASE("found points are conditioned as the precision form says", "[limb][ultrasound]") {
  const std::vector<Level> levels{level_at(0, 90.0), level_at(0, 160.0), level_at(0, 240.0)};
  const std::vector<FoundPoint> points{found_at(120.0, 10.0, 8.0, 3.0, "lateral epicondyle", 4.0),
                                       found_at(200.0, 14.0, -6.0, 6.0, "lateral epicondyle", 4.0)};
  const Gaussian z = FoundPoints(points, levels).posterior();

  const std::vector<double> arcs{90.0, 160.0, 240.0, 120.0, 200.0};
  Eigen::MatrixXd prior(5, 5);
  for (Eigen::Index i = 0; i < 5; ++i) {
    for (Eigen::Index j = 0; j < 5; ++j) {
      prior(i, j) = std::exp(
          -std::abs(arcs[static_cast<std::size_t>(i)] - arcs[static_cast<std::size_t>(j)]) / 100.0);
    }
  }
  // Both were found from one landmark, whose error they share.
  Eigen::Matrix2d error;
  error << 9.0 + 16.0, 16.0, 16.0, 36.0 + 16.0;
  Eigen::MatrixXd h = Eigen::MatrixXd::Zero(2, 5);
  h(0, 3) = 10.0;
  h(1, 4) = 14.0;
  const Eigen::MatrixXd covariance =
      (prior.inverse() + h.transpose() * error.inverse() * h).inverse();
  const Eigen::VectorXd mean =
      covariance * h.transpose() * error.inverse() * Eigen::Vector2d(8.0, -6.0);
  CHECK((z.mean - mean.head(3)).norm() < 1e-10);
  CHECK((z.covariance - covariance.topLeftCorner(3, 3)).norm() < 1e-10);
}

TEST_CASE("limbs with a found point are those of the published limbs that have it there",
          "[limb][ultrasound]") {
  constexpr int kLimbs = 4000;
  constexpr double kError_mm = 6.0;
  casefile::Limb limb = adult(casefile::Sex::male);
  const CaseLimb before = limb_of(limb);
  const auto place = AtLandmark{"lateral epicondyle", 140.0, Toward::proximal};
  const auto limbs = before.sample(kLimbs, 3);
  const auto places = before.sample_places_mm("radial nerve", place, kLimbs, 3);
  REQUIRE(places.has_value());
  const double landmark_sd_mm = before.place("radial nerve", place).value().sd_mm;
  std::vector<double> weights;
  std::vector<double> deep;
  std::vector<double> cutaneous;
  std::vector<double> arm;
  const auto sizes = before.size().sample(kLimbs, 3);
  const double variance = kError_mm * kError_mm + landmark_sd_mm * landmark_sd_mm;
  for (std::size_t i = 0; i < limbs.size(); ++i) {
    const double off = leaves(limbs[i], kCutaneous) - (*places)[i];
    weights.push_back(std::exp(-0.5 * off * off / variance));
    deep.push_back(leaves(limbs[i], kDeep));
    cutaneous.push_back(leaves(limbs[i], kCutaneous));
    arm.push_back(300.0 * sizes[i].scale.arm);
  }

  limb.ultrasound = {cutaneous_at(140.0, kError_mm)};
  const CaseLimb after = limb_of(limb);
  const std::vector<double> alike(static_cast<std::size_t>(kLimbs), 1.0);
  std::vector<double> deep_after;
  std::vector<double> cutaneous_after;
  for (const NerveMetrics& one : after.sample(kLimbs, 9)) {
    deep_after.push_back(leaves(one, kDeep));
    cutaneous_after.push_back(leaves(one, kCutaneous));
  }
  const auto agree = [&](const std::vector<double>& weighed, const Moments& conditioned) {
    const Moments expected = moments_of(weighed, weights);
    CHECK(conditioned.mean == Approx(expected.mean).margin(1.6));
    CHECK(conditioned.sd == Approx(expected.sd).epsilon(0.08));
  };
  agree(deep, moments_of(deep_after, alike));
  agree(cutaneous, moments_of(cutaneous_after, alike));
  agree(arm, {after.size().mean_mm(kArm), after.size().sd_mm(kArm)});
  // The mean limb goes along.
  CHECK(leaves(after.metrics(), kCutaneous) ==
        Approx(moments_of(cutaneous_after, alike).mean).margin(2.0));
  // And it is no small step: the point moved, and it is known better than before.
  CHECK(moments_of(cutaneous_after, alike).sd < 0.9 * moments_of(cutaneous, alike).sd);
  CHECK(std::abs(moments_of(cutaneous_after, alike).mean - moments_of(cutaneous, alike).mean) >
        8.0);
}

TEST_CASE("what was found on one nerve leaves the others where they were", "[limb][ultrasound]") {
  casefile::Limb limb = adult(casefile::Sex::female);
  limb.stature_mm = 1650.0;
  limb.measured_mm = {{"arm length", 305.0}, {"forearm length", 250.0}, {"hand length", 182.0}};
  const CaseLimb before = limb_of(limb);
  limb.ultrasound = {cutaneous_at(125.0, 3.0)};
  const CaseLimb after = limb_of(limb);
  const auto ulnar = own_tree().find("dorsal branch of ulnar nerve").value();
  const auto sampled_before = before.sample(20, 3);
  const auto sampled_after = after.sample(20, 3);
  for (std::size_t i = 0; i < 20; ++i) {
    CHECK(sampled_after[i].leaves_parent_at_mm[ulnar].front() ==
          Approx(sampled_before[i].leaves_parent_at_mm[ulnar].front()));
  }
  CHECK(after.metrics().leaves_parent_at_mm[ulnar].front() ==
        Approx(before.metrics().leaves_parent_at_mm[ulnar].front()));
}

TEST_CASE("an error that is not given is taken and said", "[limb][ultrasound]") {
  casefile::Limb limb;
  limb.ultrasound = {cutaneous_at(110.0, std::nullopt)};
  const CaseLimb built = limb_of(limb);
  CHECK(built.found_points().front().error_mm == Approx(5.1));
  CHECK(std::ranges::any_of(built.assumptions(), [](const std::string& words) {
    return words.find("5.1 mm is taken") != std::string::npos;
  }));
  CHECK(built.warnings().empty());
}

TEST_CASE("a point found far from where limbs have it is answered with a warning",
          "[limb][ultrasound]") {
  casefile::Limb limb;
  limb.ultrasound = {cutaneous_at(20.0, 3.0)};
  const CaseLimb built = limb_of(limb);
  REQUIRE(built.warnings().size() == 1);
  CHECK(built.warnings().front().starts_with("/limb/ultrasound/0: the point was found"));
  CHECK(built.warnings().front().find("distal") != std::string::npos);
}

TEST_CASE("a point that the nerve lacks, or a level that it does not reach, is refused",
          "[limb][ultrasound]") {
  casefile::LocatedPoint located = cutaneous_at(110.0, 3.0);
  located.point = "arcade of Frohse";
  CHECK(refused(located).place == "/limb/ultrasound/0/point");
  CHECK(refused(located).mend.find("pierces: deep fascia") != std::string::npos);
  located = cutaneous_at(600.0, 3.0);
  CHECK(refused(located).place == "/limb/ultrasound/0/at");
  located = cutaneous_at(110.0, 3.0);
  located.nerve = "radial nerve";
  CHECK(refused(located).what.find("convention") != std::string::npos);
  located.nerve = "C5 root";
  CHECK(refused(located).what.find("places no point") != std::string::npos);
}

}  // namespace endplate::limb
