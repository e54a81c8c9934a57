#include "models/recovery/forecast.hpp"

#include <tbb/global_control.h>

#include <map>

#include "fixture.hpp"
#include "models/recovery/timing.hpp"
#include "models/recovery/tinel.hpp"

using namespace recovery_tests;

namespace {

// Every number of a forecast, in order.
std::vector<double> numbers(const recovery::Forecast& forecast) {
  std::vector<double> all = forecast.weights;
  const auto add = [&](const std::optional<Summary>& s) {
    if (s) all.insert(all.end(), {s->mean, s->sd, s->p05, s->p50, s->p95});
  };
  for (const auto& t : forecast.targets) {
    all.push_back(static_cast<double>(t.target));
    add(t.axons_arrive_days);
    add(t.first_units_days);
    add(t.first_movement_days);
    add(t.useful_days);
    all.push_back(t.chance_axons_in_time);
  }
  return all;
}

}  // namespace

TEST_CASE("the same seed gives the same numbers with one, two and eight threads", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0, {0.4, 0.35, 0.25})}, 1500);
  const auto with = [&](std::size_t threads) {
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    return numbers(recovery::forecast(asked.question));
  };
  const std::vector<double> one = with(1);
  CHECK(one == with(2));
  CHECK(one == with(8));
}

TEST_CASE("a target's dates do not depend on which other targets are asked for", "[recovery]") {
  const Asked all(radial_limb(), {lesion_on("radial nerve", 180.0)}, 500);
  Asked alone(radial_limb(), {lesion_on("radial nerve", 180.0)}, 500);
  alone.question.targets = {all.question.targets[all.index("EI")]};
  const auto a = recovery::forecast(all.question);
  const auto b = recovery::forecast(alone.question);
  CHECK(all.of(a, "EI").first_movement_days->p50 == b.targets[0].first_movement_days->p50);
}

// A lesion that moves with the limb keeps its share of the way; one that stays where it was in the
// mean limb does not.
TEST_CASE("the lesion lies at its own place in every sampled limb", "[recovery]") {
  Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)});
  anatomy::NerveMetrics twice = asked.limbs.front();
  for (double& mm : twice.length_mm) mm *= 2.0;
  for (auto& leaves : twice.leaves_parent_at_mm) {
    for (double& mm : leaves) mm *= 2.0;
  }
  asked.limbs.push_back(twice);
  asked.question.lesions.front().places_mm = {180.0, 360.0};
  const auto moved = asked.of(recovery::forecast(asked.question), "BR").distance_mm;
  CHECK(moved.p95 == Approx(2.0 * moved.p05));
  asked.question.lesions.front().places_mm.clear();
  const auto stayed = asked.of(recovery::forecast(asked.question), "BR").distance_mm;
  CHECK(stayed.p05 == Approx(moved.p05));
  CHECK(stayed.p95 == Approx(moved.p95 + 180.0));
}

TEST_CASE("axons that grow reach the nearer muscle first", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)});
  const auto result = recovery::forecast(asked.question);
  double before = 0.0;
  for (const auto& target : result.targets) {
    REQUIRE(target.axons_arrive_days);
    CHECK(target.axons_arrive_days->p50 >= before);
    before = target.axons_arrive_days->p50;
  }
  CHECK(asked.of(result, "BR").first_movement_days->p50 <
        asked.of(result, "EI").first_movement_days->p50);
}

TEST_CASE("axons come before units, units before movement, movement before use", "[recovery]") {
  const Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 30.0)});
  for (const auto& target : recovery::forecast(asked.question).targets) {
    const bool motor =
        asked.question.targets[target.target].target.kind == recovery::TargetKind::motor;
    CHECK(target.first_units_days.has_value() == motor);
    CHECK(target.first_movement_days.has_value() == motor);
    REQUIRE(target.useful_days);
    CHECK(target.axons_arrive_days->p50 < target.useful_days->p50);
    if (!motor) continue;
    CHECK(target.axons_arrive_days->p05 < target.first_units_days->p05);
    CHECK(target.first_units_days->p50 < target.first_movement_days->p50);
    CHECK(target.first_movement_days->p95 < target.useful_days->p95);
  }
}

TEST_CASE("a conduction block returns all at once, without axons to wait for", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0, {1.0, 0.0, 0.0})});
  const auto result = recovery::forecast(asked.question);
  for (const auto& target : result.targets) {
    CHECK_FALSE(target.axons_arrive_days);
    CHECK(target.useful_days->p50 == Approx(result.block_useful_days->p50));
    CHECK(target.useful_days->p95 < 110.0);
    CHECK(target.chance_useful->chance == Approx(1.0));
  }
}

TEST_CASE("a divided nerve without repair grows nothing", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0, {0.0, 0.0, 1.0})});
  for (const auto& target : recovery::forecast(asked.question).targets) {
    CHECK_FALSE(target.axons_arrive_days);
    CHECK_FALSE(target.useful_days);
    CHECK(target.chance_axons_in_time == 0.0);
    CHECK(target.chance_useful->chance == 0.0);
  }
}

TEST_CASE("a root torn from the cord has no axons to grow, whatever is repaired", "[recovery]") {
  auto torn = repaired(lesion_on("C5 root", 0.0), 10.0);
  torn.lesion.preganglionic = true;
  const Asked asked(MadeUpLimb(), {torn});
  for (const auto& target : recovery::forecast(asked.question).targets) {
    CHECK_FALSE(target.axons_arrive_days);
    CHECK(target.chance_axons_in_time == 0.0);
  }
}

TEST_CASE("a graft takes one coaptation delay more than a suture", "[recovery]") {
  const Asked suture(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 60.0, 1)}, 20000);
  const Asked graft(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 60.0, 2)}, 20000);
  const auto a = recovery::forecast(suture.question);
  const auto b = recovery::forecast(graft.question);
  const double delay = tables().parameters.find("coaptation delay", "any", "operated").mean;
  CHECK(graft.of(b, "EI").axons_arrive_days->mean - suture.of(a, "EI").axons_arrive_days->mean ==
        Approx(delay).margin(0.5));
}

TEST_CASE("two levels of one nerve cost the way from the upper and both crossings", "[recovery]") {
  const auto upper = lesion_on("radial nerve", 150.0);
  const auto lower = lesion_on("radial nerve", 250.0);
  const Asked one(radial_limb(), {upper}, 20000);
  const Asked two(radial_limb(), {upper, lower}, 20000);
  const double latency = tables().parameters.find("latency", "any", "none").mean;
  const auto a = recovery::forecast(one.question);
  const auto b = recovery::forecast(two.question);
  CHECK(two.of(b, "EI").distance_mm.mean == Approx(one.of(a, "EI").distance_mm.mean));
  CHECK(two.of(b, "EI").axons_arrive_days->mean - one.of(a, "EI").axons_arrive_days->mean ==
        Approx(latency).margin(0.3));
  // A lower lesion that is divided stops what passed the upper one.
  const Asked stopped(radial_limb(), {upper, lesion_on("radial nerve", 250.0, {0.0, 0.0, 1.0})});
  CHECK(stopped.of(recovery::forecast(stopped.question), "EI").chance_axons_in_time == 0.0);
}

TEST_CASE("axons in time and a useful result are two chances, the second the smaller",
          "[recovery]") {
  const Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 200.0, 2)});
  for (const auto& target : recovery::forecast(asked.question).targets) {
    REQUIRE(target.chance_useful);
    CHECK(target.chance_useful->chance < target.chance_axons_in_time);
    const bool motor =
        asked.question.targets[target.target].target.kind == recovery::TargetKind::motor;
    CHECK(target.chance_useful->scale == (motor ? "M3" : "S3"));
  }
}

TEST_CASE("a muscle that kept some of its axons is given no chance of use", "[recovery]") {
  const Asked asked(MadeUpLimb(), {lesion_on("C5 root", 10.0)});
  CHECK_FALSE(asked.of(recovery::forecast(asked.question), "BIC-L").chance_useful);
}

TEST_CASE("the young do better after a repair and the old worse", "[recovery]") {
  std::map<int, double> chance;
  for (const int age : {10, 30, 60}) {
    Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 20.0)});
    asked.question.age_years = age;
    chance[age] = asked.of(recovery::forecast(asked.question), "BR").chance_useful->chance;
  }
  CHECK(chance[10] > chance[30]);
  CHECK(chance[30] > chance[60]);
}

TEST_CASE("the chance of use lies within the range of published series", "[recovery]") {
  const Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 60.0, 2)});
  const auto forecast = recovery::forecast(asked.question);
  for (const auto& target : forecast.targets) {
    REQUIRE(target.chance_useful);
    REQUIRE(target.chance_useful->p05);
    REQUIRE(target.chance_useful->p95);
    CHECK(*target.chance_useful->p05 < target.chance_useful->chance);
    CHECK(target.chance_useful->chance < *target.chance_useful->p95);
    CHECK(*target.chance_useful->p95 <= target.chance_axons_in_time);
  }
  // Without an operation no series says how much they differ.
  const Asked alone(radial_limb(), {lesion_on("radial nerve", 180.0)});
  const auto spontaneous = recovery::forecast(alone.question);
  for (const auto& target : spontaneous.targets) CHECK_FALSE(target.chance_useful->p05);
}

TEST_CASE("a longer graft is no better", "[recovery]") {
  std::map<int, double> chance;
  for (const int gap : {10, 100}) {
    auto lesion = repaired(lesion_on("radial nerve", 180.0), 60.0, 2);
    lesion.gap_mm = gap;
    const Asked asked(radial_limb(), {lesion});
    chance[gap] = asked.of(recovery::forecast(asked.question), "ED").chance_useful->chance;
  }
  CHECK(chance[100] < chance[10]);
}

TEST_CASE("a repair after a year or a year and a half still helps some, without a cliff",
          "[recovery]") {
  // Of 40 phrenic transfers to the upper trunk 1 of 4 operated after a year reached M3 (NICE 2013,
  // guidance 468); of plexus reconstructions after 12 months 36 per cent did (Martin 2019).
  std::vector<double> chances;
  for (int month = 1; month <= 30; ++month) {
    const Asked asked(radial_limb(), {repaired(lesion_on("radial nerve", 180.0), 30.44 * month)},
                      500);
    chances.push_back(asked.of(recovery::forecast(asked.question), "ED").chance_useful->chance);
  }
  for (std::size_t k = 1; k < chances.size(); ++k) {
    CHECK(chances[k] < chances[k - 1]);
    CHECK(chances[k - 1] - chances[k] < 0.08);
  }
  CHECK(chances[14] > 0.2);  // operated at 15 months
  CHECK(chances[14] < 0.7);
  CHECK(chances[18] > 0.05);  // at 19 months
}

TEST_CASE("an unknown grade is a mixture that findings shift", "[recovery]") {
  Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0, {0.42, 0.35, 0.23})}, 4000);
  const auto before = recovery::forecast(asked.question);
  CHECK(before.grade_chance[0][0] == Approx(0.42).margin(0.03));

  // No flicker at three months: hardly a block any more.
  asked.question.findings = {{asked.index("BR"), 91.0, recovery::Finding::Kind::movement, false}};
  const auto dead = recovery::forecast(asked.question);
  CHECK(dead.findings_used);
  CHECK(dead.grade_chance[0][0] < 0.10);
  CHECK(dead.grade_chance[0][2] > before.grade_chance[0][2]);
  // A flicker at three weeks: hardly divided.
  asked.question.findings = {{asked.index("BR"), 21.0, recovery::Finding::Kind::movement, true}};
  const auto alive = recovery::forecast(asked.question);
  CHECK(alive.grade_chance[0][0] > 0.8);
  CHECK(alive.grade_chance[0][2] < 0.1);
  // What is not examined shifts nothing.
  asked.question.findings.clear();
  CHECK(recovery::forecast(asked.question).grade_chance == before.grade_chance);
}

TEST_CASE("findings that fit no sampled patient are reported, not followed", "[recovery]") {
  // Axons have to grow, and yet the farthest muscle moves on the tenth day.
  Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)}, 1000);
  asked.question.findings = {{asked.index("EI"), 10.0, recovery::Finding::Kind::movement, true}};
  const auto early = recovery::forecast(asked.question);
  CHECK(early.findings_contradict);
  CHECK_FALSE(early.findings_used);

  // Only a handful of the slowest patients would fit so late a silence.
  asked.question.findings.clear();
  for (int k = 0; k < 6; ++k) {
    asked.question.findings.push_back(
        {asked.index("BR"), 420.0, recovery::Finding::Kind::movement, false});
  }
  const auto late = recovery::forecast(asked.question);
  CHECK(late.findings_contradict);
  for (const double weight : late.weights) CHECK(weight == 1.0);
}

TEST_CASE("a later operation never helps and the curve has no edge", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0, {0.0, 0.0, 1.0})});
  const auto timing = recovery::operation_timing(asked.question, 14.0, true);
  REQUIRE(timing);
  CHECK(timing->scale == "M3");
  CHECK(timing->chance_by_date.front().days == 14.0);
  for (std::size_t k = 1; k < timing->chance_by_date.size(); ++k) {
    const double fall = timing->chance_by_date[k - 1].chance - timing->chance_by_date[k].chance;
    CHECK(fall >= 0.0);
    CHECK(fall < 0.08);
  }
  REQUIRE(timing->best_before_days);
  REQUIRE(timing->unlikely_after_days);
  CHECK(*timing->best_before_days < *timing->unlikely_after_days);
  CHECK(timing->chance_by_date.back().chance > 0.0);
}

TEST_CASE("torn roots do not dilute what a repair can do for the others", "[recovery]") {
  MadeUpLimb limb;
  const auto whole = lesion_on("superior trunk", 10.0, {0.0, 0.0, 1.0});
  const Asked alone(limb, {whole});
  std::vector<recovery::LesionModel> lesions{whole};
  for (const char* root : {"C7 root", "C8 root", "T1 root"}) {
    lesions.push_back(lesion_on(root, 0.0, {0.0, 0.0, 1.0}));
    lesions.back().lesion.preganglionic = true;
  }
  const Asked both(limb, lesions);
  REQUIRE(both.question.targets.size() > alone.question.targets.size());
  const auto of_alone = recovery::operation_timing(alone.question, 60.0, true);
  const auto of_both = recovery::operation_timing(both.question, 60.0, true);
  REQUIRE(of_alone);
  REQUIRE(of_both);
  CHECK(of_both->chance_by_date.front().chance > 0.8 * of_alone->chance_by_date.front().chance);
}

TEST_CASE("where a repair is unlikely from the first day no day is the best", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 10.0, {0.0, 0.0, 1.0})});
  const auto timing = recovery::operation_timing(asked.question, 1500.0, true);
  REQUIRE(timing);
  CHECK_FALSE(timing->best_before_days);
  CHECK(timing->unlikely_after_days == 1500.0);
}

TEST_CASE("tapping a nerve with skin fibres advances, a deep motor nerve says nothing",
          "[recovery]") {
  const MadeUpLimb limb = radial_limb();
  const Asked radial(limb, {lesion_on("radial nerve", 180.0)});
  const auto forecast = recovery::forecast(radial.question);
  const auto schedule = recovery::tinel_schedule(radial.question, forecast, 30.0);
  REQUIRE(schedule.steps.size() > 3);
  for (std::size_t k = 1; k < schedule.steps.size(); ++k) {
    CHECK(schedule.steps[k].advance_mm.p50 >= schedule.steps[k - 1].advance_mm.p50);
    CHECK(schedule.steps[k].advance_mm.p95 <= schedule.length_mm + 1.0);
  }

  for (const char* nerve : {"posterior interosseous nerve", "anterior interosseous nerve",
                            "deep branch of ulnar nerve", "suprascapular nerve"}) {
    CAPTURE(nerve);
    const Asked deep(limb, {lesion_on(nerve, 2.0)});
    const auto silent =
        recovery::tinel_schedule(deep.question, recovery::forecast(deep.question), 30.0);
    CHECK(silent.steps.empty());
    CHECK(silent.says_nothing.find("no skin fibres") != std::string::npos);
  }

  const Asked divided(limb, {lesion_on("radial nerve", 180.0, {0.0, 0.0, 1.0})});
  CHECK(recovery::tinel_schedule(divided.question, recovery::forecast(divided.question), 30.0)
            .steps.empty());
}
