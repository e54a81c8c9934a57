#include "models/schedule/schedule.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::schedule {
namespace {

using recovery::RecoveryTarget;
using recovery::TargetKind;

Window window_of(const Summary& days) {
  return {days.p05, days.p50, days.p95};
}

class Planner {
 public:
  Planner(const recovery::RecoveryAnswer& answer, const evidence::DataPackage& package,
          casefile::Date today)
      : answer_(answer), package_(package), today_(today) {}

  Schedule schedule() {
    fill_sheet();
    early_study();
    study_of_first_units();
    appointments();
    return std::move(schedule_);
  }

 private:
  double today_days() const {
    return answer_.injury_date ? recovery::days_between(*answer_.injury_date, today_) : 0.0;
  }

  void fill_sheet() {
    schedule_.no_sheet = answer_.no_forecast;
    const bool any_zone = std::ranges::any_of(
        answer_.targets, [](const RecoveryTarget& target) { return target.autonomous_zone; });
    for (const RecoveryTarget& target : answer_.targets) {
      const bool motor = target.kind == TargetKind::motor;
      if (!motor && any_zone && !target.autonomous_zone) continue;
      const auto& days = motor ? target.forecast.first_movement_days : target.forecast.useful_days;
      if (!days) continue;
      schedule_.sheet.push_back({target.name, motor ? "first movement (M1)" : "useful feeling (S3)",
                                 window_of(*days), target.partial});
    }
    std::ranges::stable_sort(schedule_.sheet, {},
                             [](const SheetRow& row) { return row.window.middle_days; });
    if (schedule_.sheet.empty() && schedule_.no_sheet.empty()) {
      schedule_.no_sheet = "nothing grows from this lesion as it stands, so no order can be dated";
    }
  }

  EmgStudy study(std::string key, std::string_view moment) const {
    EmgStudy result;
    result.key = std::move(key);
    for (const evidence::Row row : package_.table("emg_rules")) {
      if (row.text("moment") != moment) continue;
      result.readings.push_back({std::string(row.text("id")), std::string(row.text("finding")),
                                 std::string(row.text("means")), std::string(row.text("source")),
                                 std::string(row.text("provenance"))});
      if (const auto from = row.number("from_days")) result.window.early_days = *from;
      if (const auto to = row.number("to_days")) result.window.late_days = *to;
    }
    return result;
  }

  // Tells block from axon loss. After a repair there is nothing to tell, and a torn root has no
  // axons that could be blocked.
  void early_study() {
    const bool open = std::ranges::any_of(answer_.lesions, [](const auto& lesion) {
      return !lesion.repaired && !lesion.preganglionic;
    });
    EmgStudy early = study("emg-early", "early");
    early.window.middle_days = early.window.late_days;
    if (open && early.window.late_days >= today_days()) schedule_.emg.push_back(std::move(early));
  }

  // Of the first muscle in order that may still show its first units.
  const RecoveryTarget* next_muscle() const {
    const RecoveryTarget* next = nullptr;
    for (const RecoveryTarget& target : answer_.targets) {
      const auto& arrive = target.forecast.axons_arrive_days;
      const auto& units = target.forecast.first_units_days;
      if (target.partial || !arrive || !units || units->p95 < today_days()) continue;
      if (next == nullptr || units->p50 < next->forecast.first_units_days->p50) next = &target;
    }
    return next;
  }

  void study_of_first_units() {
    const RecoveryTarget* muscle = next_muscle();
    if (muscle == nullptr) return;
    EmgStudy first = study("emg-first-units", "first units");
    first.muscle = muscle->name;
    first.window = window_of(*muscle->forecast.first_units_days);
    schedule_.emg.push_back(std::move(first));
  }

  void add(std::string key, double days, std::string what, std::string why) {
    if (!answer_.injury_date) return;
    const casefile::Date date = recovery::plus_days(*answer_.injury_date, days);
    schedule_.appointments.push_back(
        {std::move(key), std::max(date, today_), std::move(what), std::move(why)});
  }

  static std::string how_to_read(const EmgStudy& study) {
    std::string text;
    for (const EmgReading& reading : study.readings) {
      text += fmt::format("{}{}: {}.", text.empty() ? "" : " ", reading.finding, reading.means);
    }
    return text;
  }

  void appointments() {
    const recovery::Decision& decision = answer_.decision;
    if (decision.by_date) {
      schedule_.appointments.push_back(
          {"decision", *decision.by_date, decision.next,
           decision.unless.empty() ? "" : "Unless: " + decision.unless + "."});
    }
    bool has_early = false;
    for (const recovery::DatedStep& step : decision.steps) {
      if (!step.date) continue;
      has_early = has_early || (step.what.contains("EMG") && step.days_from_injury <= 35.0);
      schedule_.appointments.push_back(
          {fmt::format("step-{:.0f}", step.days_from_injury), *step.date, step.what, ""});
    }
    for (const EmgStudy& study : schedule_.emg) {
      if (study.key == "emg-early") {
        if (has_early) continue;
        add(study.key, study.window.middle_days, "EMG and nerve conduction", how_to_read(study));
      } else {
        add(study.key, study.window.middle_days, "EMG of " + study.muscle + " for first units",
            how_to_read(study));
      }
    }
    const auto due = std::ranges::find_if(schedule_.sheet, [&](const SheetRow& row) {
      return !row.partial && row.window.late_days >= today_days();
    });
    // Nobody is told to wait for a muscle beyond the day of the decision.
    const auto& decide_by = decision.by_date;
    if (due != schedule_.sheet.end() && answer_.injury_date && decide_by &&
        !(*decide_by < recovery::plus_days(*answer_.injury_date, due->window.late_days))) {
      add("late", due->window.late_days, "Last expected day for " + due->target + ": " + due->sign,
          "If it has not come, growth is late: decide again, do not wait for the next in order.");
    }
    std::ranges::stable_sort(schedule_.appointments, {}, &Appointment::date);
  }

  const recovery::RecoveryAnswer& answer_;
  const evidence::DataPackage& package_;
  casefile::Date today_;
  Schedule schedule_;
};

}  // namespace

Schedule schedule_of(const recovery::RecoveryAnswer& answer, const evidence::DataPackage& package,
                     casefile::Date today) {
  return Planner(answer, package, today).schedule();
}

}  // namespace endplate::schedule
