// All patients at once against TargetModel::course one by one.
#include "models/recovery/target_sample.hpp"

#include "fixture.hpp"

using namespace recovery_tests;

namespace {

// Limbs of several lengths: in some a branch leaves above a lesion, in others below it.
std::vector<anatomy::NerveMetrics> several_limbs() {
  std::vector<anatomy::NerveMetrics> limbs;
  for (int l = 0; l < 7; ++l) {
    anatomy::NerveMetrics limb = radial_limb().metrics;
    const double factor = 0.7 + 0.1 * l;
    for (double& length : limb.length_mm) length *= factor;
    for (auto& leaves : limb.leaves_parent_at_mm) {
      for (double& at : leaves) at *= factor;
    }
    limbs.push_back(std::move(limb));
  }
  return limbs;
}

// What the columns of one target should hold.
struct Expected {
  std::vector<recovery::Course> below;
  std::vector<recovery::Course> growing;
  double in_time = 0.0;
  double weight_below = 0.0;
};

Expected one_by_one(const recovery::ForecastQuestion& question, const recovery::TargetModel& model,
                    const std::vector<double>& weights, const recovery::Draws& draws) {
  using State = recovery::Course::State;
  Expected expected;
  const auto patients = recovery::sample_patients(question, draws);
  for (std::size_t i = 0; i < patients.size(); ++i) {
    const double weight = weights.empty() ? 1.0 : weights[i];
    const auto course =
        model.course(patients[i], static_cast<std::uint32_t>(i), question.limb(i), draws);
    if (course.state == State::not_below || weight <= 0.0) continue;
    expected.below.push_back(course);
    expected.weight_below += weight;
    if (course.state == State::block) expected.in_time += weight;
    if (course.state != State::growth) continue;
    expected.growing.push_back(course);
    expected.in_time += weight * model.in_time(course.arrive);
  }
  return expected;
}

void check_column(std::span<const float> column, const std::vector<recovery::Course>& courses,
                  double recovery::Course::*what) {
  REQUIRE(column.size() == courses.size());
  for (std::size_t i = 0; i < column.size(); ++i) {
    REQUIRE(double{column[i]} == Approx(courses[i].*what).epsilon(2e-6).margin(2e-3));
  }
}

// The least and the largest share of patients with the target below a lesion, over all targets.
std::pair<double, double> check_all_targets(const recovery::ForecastQuestion& question,
                                            const std::vector<double>& weights) {
  const recovery::Draws draws(question.seed);
  std::vector<recovery::TargetModel> models;
  for (const auto& below : question.targets) models.emplace_back(question, below);
  const anatomy::LimbColumns limbs(*question.limbs);
  const auto patients = recovery::sample_columns(question, draws);
  const auto ways = recovery::way_table(question, limbs, models);
  const auto leaving = recovery::departures(question, patients, models);
  std::pair<double, double> shares{1.0, 0.0};
  recovery::TargetSample sample;
  for (std::size_t t = 0; t < models.size(); ++t) {
    INFO(question.targets[t].target.name);
    recovery::sample_target(question, models[t], ways[t], {patients, leaving, weights}, draws,
                            sample);
    const Expected expected = one_by_one(question, models[t], weights, draws);
    check_column(sample.distance_mm.values(), expected.below, &recovery::Course::distance_mm);
    check_column(sample.growing.arrive.values(), expected.growing, &recovery::Course::arrive);
    check_column(sample.growing.useful.values(), expected.growing, &recovery::Course::useful);
    if (models[t].motor()) {
      check_column(sample.growing.units.values(), expected.growing, &recovery::Course::units);
      check_column(sample.growing.movement.values(), expected.growing, &recovery::Course::movement);
    }
    CHECK(sample.below == Approx(expected.weight_below));
    CHECK(sample.in_time == Approx(expected.in_time).epsilon(1e-5));
    const double share =
        static_cast<double>(expected.below.size()) / static_cast<double>(question.samples);
    shares = {std::min(shares.first, share), std::max(shares.second, share)};
  }
  return shares;
}

}  // namespace

TEST_CASE("the patients of a forecast are those that are followed one by one", "[recovery]") {
  // Neither whole blocks nor whole rounds of the limbs.
  constexpr std::size_t kSamples = 1303;
  auto grafted = repaired(lesion_on("middle trunk", 40.0), 100.0, 2);
  grafted.gap_mm = 40.0;
  grafted.chance_repair_fails = 0.1;
  auto uncertain = lesion_on("radial nerve", 180.0, {0.3, 0.5, 0.2});
  uncertain.lesion.sd_mm = 15.0;
  const std::vector<std::vector<recovery::LesionModel>> cases{
      {uncertain},
      // Several ways to one target.
      {lesion_on("superior trunk", 20.0, {0.2, 0.5, 0.3}), grafted,
       lesion_on("inferior trunk", 30.0, {0.3, 0.5, 0.2})},
      // Two lesions on one way.
      {lesion_on("radial nerve", 120.0, {0.2, 0.6, 0.2}),
       repaired(lesion_on("radial nerve", 200.0), 60.0)},
  };
  bool some_limbs_only = false;
  for (const auto& lesions : cases) {
    Asked asked(radial_limb(), lesions, kSamples);
    asked.limbs = several_limbs();
    REQUIRE(asked.question.targets.size() > 5);
    const auto [least, most] = check_all_targets(asked.question, {});
    CHECK(most > 0.99);
    some_limbs_only = some_limbs_only || (least > 0.0 && least < 1.0);
    std::vector<double> weights;
    for (std::size_t i = 0; i < kSamples; ++i) weights.push_back(0.5 * static_cast<double>(i % 4));
    check_all_targets(asked.question, weights);
  }
  CHECK(some_limbs_only);
}
