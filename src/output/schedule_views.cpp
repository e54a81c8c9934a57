#include "output/schedule_views.hpp"

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using schedule::Window;

std::string day_words(const recovery::RecoveryAnswer& answer, double days) {
  if (answer.injury_date) return iso_date(recovery::plus_days(*answer.injury_date, days));
  return span_of(days);
}

Json day_json(const recovery::RecoveryAnswer& answer, double days) {
  if (!answer.injury_date) return nullptr;
  return iso_date(recovery::plus_days(*answer.injury_date, days));
}

Json window_json(const recovery::RecoveryAnswer& answer, const Window& window) {
  return {{"early_days", window.early_days},
          {"middle_days", window.middle_days},
          {"late_days", window.late_days},
          {"early", day_json(answer, window.early_days)},
          {"middle", day_json(answer, window.middle_days)},
          {"late", day_json(answer, window.late_days)}};
}

std::string emg_text(const schedule::EmgStudy& study, const recovery::RecoveryAnswer& answer) {
  const std::string when = fmt::format("{} to {}", day_words(answer, study.window.early_days),
                                       day_words(answer, study.window.late_days));
  std::string out =
      labelled("EMG", study.muscle.empty()
                          ? when + ", muscles below the lesion"
                          : fmt::format("{}, best about {}, {}", when,
                                        day_words(answer, study.window.middle_days), study.muscle));
  for (const schedule::EmgReading& reading : study.readings) {
    out += labelled("",
                    fmt::format("[ ] {}: {} [{}]", reading.finding, reading.means, reading.source));
  }
  return out;
}

// What the dates rest on: a sheet must not look like a reason to wait where many nerves grow
// nothing, or for an operation that is only planned.
std::string reckoned_text(const recovery::RecoveryAnswer& answer) {
  std::string out;
  for (const recovery::RecoveryLesion& lesion : answer.lesions) {
    const double none = lesion.grade_chance[2];
    std::string words = lesion.nerve + ", " + lesion.operation;
    if (!lesion.repaired && none > 0.0) {
      words += fmt::format(
          ": as it stands nothing grows in {} % of such lesions; the dates are those of the others "
          "and no reason to wait",
          per_cent(none));
    }
    out += labelled("Reckoned", words);
  }
  return out;
}

}  // namespace

std::string sheet_text(const schedule::Schedule& schedule, const recovery::RecoveryAnswer& answer,
                       const CommonOptions& options, Side side) {
  using enum TextTable::Align;
  std::string out = fmt::format("{} LIMB: order of return, reckoned on {}{}\n\n",
                                side == Side::right ? "RIGHT" : "LEFT", iso_date(options.today),
                                answer.injury_date ? "" : ", counted from the injury");
  out += labelled("DECISION", answer.decision.next + ".") + '\n';
  if (schedule.sheet.empty()) {
    out += labelled("Order", "none: " + schedule.no_sheet);
  } else {
    out += reckoned_text(answer) + '\n';
    TextTable table({{"", left},
                     {"Target", left, 28},
                     {"Look for", left, 20},
                     {"Not before", left},
                     {"Expected", left},
                     {"Late after", left},
                     {"Seen on", left}});
    bool partial = false;
    for (const schedule::SheetRow& row : schedule.sheet) {
      partial = partial || row.partial;
      table.add_row({"[ ]", row.target + (row.partial ? " *" : ""), row.sign,
                     day_words(answer, row.window.early_days),
                     day_words(answer, row.window.middle_days),
                     day_words(answer, row.window.late_days), "__________"});
    }
    out += table.to_string();
    std::string note =
        "Of the patients whose axons grow, one in twenty shows the sign before the first date and "
        "one in twenty after the last. A muscle that was not examined is not ticked.";
    if (partial) note += " * kept some of its axons: a movement says nothing of growth.";
    for (const std::string& line : wrap(note, kTerminalWidth)) out += line + '\n';
  }
  out += '\n';
  for (const schedule::EmgStudy& study : schedule.emg) out += emg_text(study, answer);
  if (!schedule.emg.empty()) out += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth)) {
    out += line + '\n';
  }
  return out;
}

Json schedule_json(const schedule::Schedule& schedule, const recovery::RecoveryAnswer& answer) {
  Json sheet = Json::array();
  for (const schedule::SheetRow& row : schedule.sheet) {
    Json item = {{"target", row.target}, {"look_for", row.sign}, {"partial", row.partial}};
    item["window"] = window_json(answer, row.window);
    sheet.push_back(std::move(item));
  }
  Json emg = Json::array();
  for (const schedule::EmgStudy& study : schedule.emg) {
    Json readings = Json::array();
    for (const schedule::EmgReading& reading : study.readings) {
      readings.push_back({{"finding", reading.finding},
                          {"means", reading.means},
                          {"id", reading.id},
                          {"source", reading.source},
                          {"provenance", reading.provenance}});
    }
    emg.push_back({{"key", study.key},
                   {"muscle", study.muscle.empty() ? Json(nullptr) : Json(study.muscle)},
                   {"window", window_json(answer, study.window)},
                   {"readings", std::move(readings)}});
  }
  Json appointments = Json::array();
  for (const schedule::Appointment& appointment : schedule.appointments) {
    appointments.push_back({{"key", appointment.key},
                            {"date", iso_date(appointment.date)},
                            {"what", appointment.what},
                            {"why", appointment.why}});
  }
  Json result = {{"sheet", std::move(sheet)}};
  if (!schedule.no_sheet.empty()) result["no_sheet"] = schedule.no_sheet;
  result["emg"] = std::move(emg);
  result["appointments"] = std::move(appointments);
  return result;
}

}  // namespace endplate::cli
