// What to look for on which day.
#include "models/schedule/schedule.hpp"

#include <set>

#include "../recovery/fixture.hpp"

using namespace recovery_tests;
using casefile::Date;

namespace {

const Date kInjury{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(2)};

Date after(double days) {
  return recovery::plus_days(kInjury, days);
}

recovery::RecoveryTarget muscle(const std::string& name, double units, double movement) {
  recovery::RecoveryTarget target;
  target.name = name;
  target.kind = recovery::TargetKind::motor;
  target.forecast.axons_arrive_days = Summary{units - 20, 5, units - 30, units - 20, units - 10};
  target.forecast.first_units_days = Summary{units, 5, units - 10, units, units + 10};
  target.forecast.first_movement_days =
      Summary{movement, 5, movement - 20, movement, movement + 20};
  return target;
}

recovery::RecoveryAnswer closed_palsy() {
  recovery::RecoveryAnswer answer;
  answer.injury_date = kInjury;
  answer.decision.next = "Watch";
  answer.decision.by_date = after(91);
  answer.lesions.emplace_back();
  answer.targets.push_back(muscle("far", 200, 260));
  answer.targets.push_back(muscle("near", 70, 120));
  recovery::RecoveryTarget skin;
  skin.name = "web";
  skin.kind = recovery::TargetKind::sensory;
  skin.autonomous_zone = true;
  skin.forecast.useful_days = Summary{400, 20, 350, 400, 450};
  answer.targets.push_back(skin);
  return answer;
}

const schedule::EmgStudy* study(const schedule::Schedule& schedule, const std::string& key) {
  const auto found = std::ranges::find(schedule.emg, key, &schedule::EmgStudy::key);
  return found == schedule.emg.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("the sheet stands in the order of return, muscles by movement and skin by feeling",
          "[schedule]") {
  const auto result = schedule::schedule_of(closed_palsy(), tables().package, after(7));
  REQUIRE(result.sheet.size() == 3);
  CHECK(result.sheet[0].target == "near");
  CHECK(result.sheet[0].window.late_days == 140.0);
  CHECK(result.sheet[1].target == "far");
  CHECK(result.sheet[2].sign == "useful feeling (S3)");
}

TEST_CASE("the first needle study tells block from axon loss at three to four weeks",
          "[schedule]") {
  const auto result = schedule::schedule_of(closed_palsy(), tables().package, after(7));
  const auto* early = study(result, "emg-early");
  REQUIRE(early != nullptr);
  // Fibrillation takes 14 to 18 days to appear (edx_fib_onset): a study before that misleads.
  CHECK(early->window.early_days > 18.0);
  CHECK(early->window.late_days == 28.0);
  CHECK(early->readings.size() >= 3);
  for (const auto& reading : early->readings) CHECK_FALSE(reading.source.empty());
  CHECK(study(schedule::schedule_of(closed_palsy(), tables().package, after(40)), "emg-early") ==
        nullptr);
}

TEST_CASE("after a repair no study looks for a block", "[schedule]") {
  auto answer = closed_palsy();
  answer.lesions.front().repaired = true;
  CHECK(study(schedule::schedule_of(answer, tables().package, after(7)), "emg-early") == nullptr);
}

TEST_CASE("first units are looked for in the first muscle whose window is not over", "[schedule]") {
  const auto soon = schedule::schedule_of(closed_palsy(), tables().package, after(7));
  REQUIRE(study(soon, "emg-first-units") != nullptr);
  CHECK(study(soon, "emg-first-units")->muscle == "near");
  const auto later = schedule::schedule_of(closed_palsy(), tables().package, after(100));
  REQUIRE(study(later, "emg-first-units") != nullptr);
  CHECK(study(later, "emg-first-units")->muscle == "far");
}

TEST_CASE("a muscle that kept axons dates no study and no end of waiting", "[schedule]") {
  auto answer = closed_palsy();
  for (auto& target : answer.targets) target.partial = true;
  const auto result = schedule::schedule_of(answer, tables().package, after(7));
  CHECK(study(result, "emg-first-units") == nullptr);
  for (const auto& appointment : result.appointments) CHECK(appointment.key != "late");
}

TEST_CASE("appointments stand by date, none before today, each key once", "[schedule]") {
  auto answer = closed_palsy();
  answer.decision.steps = {{28, after(28), "first EMG and conduction"}, {56, after(56), "examine"}};
  const auto result = schedule::schedule_of(answer, tables().package, after(7));
  std::set<std::string> keys;
  Date before = after(7);
  for (const auto& appointment : result.appointments) {
    CHECK_FALSE(appointment.date < before);
    before = appointment.date;
    keys.insert(appointment.key);
  }
  // The rule's own EMG stands for the early one.
  CHECK(keys == std::set<std::string>{"decision", "step-28", "step-56", "emg-first-units"});
  CHECK(keys.size() == result.appointments.size());
}

TEST_CASE("the last day of a muscle is an entry only when the decision does not come before",
          "[schedule]") {
  const auto has_late = [](double decision_days) {
    auto answer = closed_palsy();
    answer.decision.by_date = after(decision_days);
    const auto result = schedule::schedule_of(answer, tables().package, after(7));
    return std::ranges::count(result.appointments, "late", &schedule::Appointment::key) == 1;
  };
  CHECK_FALSE(has_late(91));
  CHECK(has_late(150));
}

TEST_CASE("without a forecast there is a decision and no order", "[schedule]") {
  auto answer = closed_palsy();
  answer.targets.clear();
  answer.no_forecast = "not run";
  const auto result = schedule::schedule_of(answer, tables().package, after(7));
  CHECK(result.sheet.empty());
  CHECK(result.no_sheet == "not run");
  REQUIRE_FALSE(result.appointments.empty());
  CHECK(std::ranges::count(result.appointments, "decision", &schedule::Appointment::key) == 1);
}

TEST_CASE("without the date of the injury nothing is put on a day", "[schedule]") {
  auto answer = closed_palsy();
  answer.injury_date.reset();
  answer.decision.by_date.reset();
  CHECK(schedule::schedule_of(answer, tables().package, after(7)).appointments.empty());
}
