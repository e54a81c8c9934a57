#include "output/recovery_text.hpp"

#include <algorithm>

#include "output/dates.hpp"
#include "output/envelope.hpp"
#include "output/text_table.hpp"

namespace endplate::cli {
namespace {

using recovery::RecoveryAnswer;
using recovery::TargetKind;

constexpr std::size_t kMostRows = 18;

std::string joined(const std::vector<std::string>& parts) {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : "; ") + part;
  return out;
}

std::string by_words(const recovery::Decision& decision) {
  if (decision.by_from == "today" && decision.by_days == 0.0) return "now";
  if (decision.by_date) {
    return iso_date(*decision.by_date) +
           (decision.overdue ? " (today: the usual date has passed)" : "");
  }
  return fmt::format("{} after the {}", span_of(decision.by_days), decision.by_from);
}

std::string lesion_text(const RecoveryAnswer& answer) {
  std::string out;
  for (const recovery::RecoveryLesion& lesion : answer.lesions) {
    // A trunk or a root is its own place.
    std::string text = lesion.place.contains(lesion.nerve) ? "" : lesion.nerve + ", ";
    text += lesion.place + "; " + lesion.mechanism;
    const auto& chance = lesion.grade_chance;
    const bool mixed = std::ranges::count_if(chance, [](double c) { return c > 0.0; }) > 1;
    if (lesion.preganglionic) {
      text += "; torn from the cord, no axons to grow";
    } else if (lesion.repaired) {
      text += "; forecast " + lesion.operation;
    } else if (answer.no_forecast.empty() && mixed) {
      text += fmt::format(
          "; forecast without repair, grade not known: conduction block {} %, axons grow {} %, "
          "nothing "
          "grows {} %",
          per_cent(chance[0]), per_cent(chance[1]), per_cent(chance[2]));
      text += answer.findings_used ? ", given the findings" : "";
    } else {
      std::string grade = lesion.grade;
      std::ranges::replace(grade, '_', ' ');
      text += "; " + (grade == "unknown" ? std::string("grade not known") : grade);
    }
    out += labelled("Lesion", text);
  }
  const bool likely = std::ranges::any_of(
      answer.lesions, [](const auto& lesion) { return lesion.grade_chance[0] >= 0.05; });
  if (answer.block_first_days && likely) {
    out += labelled(
        "Block",
        fmt::format("if it is a conduction block, everything returns together: "
                    "first movement {:.0f} to {:.0f} weeks, useful {:.0f} to "
                    "{:.0f} weeks after the injury",
                    answer.block_first_days->p05 / 7.0, answer.block_first_days->p95 / 7.0,
                    answer.block_useful_days->p05 / 7.0, answer.block_useful_days->p95 / 7.0));
  }
  return out;
}

// Areas beyond the autonomous zones stay in the JSON document.
bool shown(const recovery::RecoveryTarget& target, bool any_zone) {
  return target.kind == TargetKind::motor || target.autonomous_zone || !any_zone;
}

// Without the part of the muscle, where no other part of it is listed.
std::string short_name(const recovery::RecoveryTarget& target, const RecoveryAnswer& answer) {
  const std::string base = target.name.substr(0, target.name.find(','));
  const auto same = std::ranges::count_if(answer.targets, [&](const auto& other) {
    return other.name.substr(0, other.name.find(',')) == base;
  });
  return target.kind == TargetKind::motor && same == 1 ? base : target.name;
}

std::string targets_text(const RecoveryAnswer& answer) {
  using enum TextTable::Align;
  const bool any_zone =
      std::ranges::any_of(answer.targets, [](const auto& t) { return t.autonomous_zone; });
  TextTable table({{"Target", left, 22},
                   {"Way mm", right},
                   {"Arrive mo", right},
                   {"Units mo", right},
                   {"M1 mo", right},
                   {"M3/S3 mo", right},
                   {"In time %", right},
                   {"Useful %", right}});
  const auto cell = [](const std::optional<Summary>& summary) {
    return summary ? months(*summary) : std::string("-");
  };
  std::size_t rows = 0;
  std::size_t left_out = 0;
  bool partial = false;
  for (const recovery::RecoveryTarget& target : answer.targets) {
    if (!shown(target, any_zone) || rows == kMostRows) {
      ++left_out;
      continue;
    }
    ++rows;
    const auto& f = target.forecast;
    const bool motor = target.kind == TargetKind::motor;
    partial = partial || target.partial;
    table.add_row(
        {(motor ? "" : "skin: ") + short_name(target, answer) + (target.partial ? " *" : ""),
         fmt::format("{:.0f}", f.distance_mm.p50), cell(f.axons_arrive_days),
         !motor               ? ""
         : f.first_units_days ? months(f.first_units_days->p50)
                              : "-",
         motor ? cell(f.first_movement_days) : "", cell(f.useful_days),
         per_cent(f.chance_axons_in_time),
         f.chance_useful ? per_cent(f.chance_useful->chance) + " " + f.chance_useful->scale : "-"});
  }
  std::string out = table.to_string();
  std::string note =
      "Months from the injury, middle (90 % interval), if the axons grow: they arrive, first units "
      "on "
      "EMG, first movement (M1), useful (M3, S3). Axons at a muscle are not movement. In time: "
      "they "
      "find a muscle that can still become useful.";
  if (partial) note += " * part of its axons come another way or were spared.";
  if (left_out > 0) note += fmt::format(" {} more targets with --json.", left_out);
  for (const std::string& line : wrap(note, kTerminalWidth)) out += line + '\n';
  return out;
}

std::string timing_text(const RecoveryAnswer& answer) {
  if (!answer.timing) return labelled("Operation", answer.no_timing);
  const recovery::OperationTiming& timing = *answer.timing;
  const auto when = [&](double days) {
    if (answer.injury_date) return iso_date(recovery::plus_days(*answer.injury_date, days));
    return days < 1.0 ? std::string("the day of injury") : span_of(days) + " after injury";
  };
  std::string text = fmt::format("if a {} is needed: {} % {} {} ({})", timing.procedure,
                                 per_cent(timing.chance_by_date.front().chance), timing.scale,
                                 when(timing.chance_by_date.front().days), timing.of);
  for (const std::size_t k : {6UL, 12UL}) {
    if (k >= timing.chance_by_date.size()) continue;
    text += fmt::format(", {} % {}", per_cent(timing.chance_by_date[k].chance),
                        when(timing.chance_by_date[k].days));
  }
  if (timing.best_before_days) text += "; best before " + when(*timing.best_before_days);
  if (timing.unlikely_after_days) {
    text += "; unlikely (under 20 %) after " + when(*timing.unlikely_after_days);
  }
  return labelled("Operation", text);
}

std::string tinel_text(const RecoveryAnswer& answer) {
  if (answer.tinel.steps.empty()) return labelled("Tinel", answer.tinel.says_nothing);
  std::string text;
  for (const std::size_t k : {0UL, 2UL, 5UL}) {
    if (k >= answer.tinel.steps.size()) continue;
    const recovery::TinelStep& step = answer.tinel.steps[k];
    text += text.empty()
                ? "if axons grow, expected beyond the lesion toward " + answer.tinel.toward + ": "
                : "; ";
    text += fmt::format("{:.0f} mm ({:.0f}-{:.0f}) ", step.advance_mm.p50, step.advance_mm.p05,
                        step.advance_mm.p95);
    text += answer.injury_date
                ? "on " + iso_date(recovery::plus_days(*answer.injury_date, step.days))
                : "at " + span_of(step.days);
  }
  return labelled("Tinel", text);
}

}  // namespace

std::string decision_text(const recovery::Decision& decision) {
  std::string out = labelled("DECISION", decision.next + ".");
  out += labelled("By", by_words(decision));
  if (!decision.unless.empty()) out += labelled("Unless", decision.unless);
  out += labelled("Because", joined(decision.reasons) + " [" + decision.source + "]");
  std::vector<std::string> steps;
  for (const recovery::DatedStep& step : decision.steps) {
    steps.push_back(
        (step.date ? iso_date(*step.date) : span_of(step.days_from_injury) + " after the injury") +
        " " + step.what);
  }
  if (!steps.empty()) out += labelled("Dates", joined(steps));
  if (!decision.practice.empty()) out += labelled("Practice", decision.practice);
  return out;
}

std::string recovery_text(const RecoveryAnswer& answer, const CommonOptions& options, Side side) {
  std::string title = fmt::format("{} LIMB: recovery, reckoned on {}",
                                  side == Side::right ? "RIGHT" : "LEFT", iso_date(options.today));
  std::string out = title + "\n\n" + decision_text(answer.decision) + '\n';
  out += lesion_text(answer);
  if (!answer.no_forecast.empty()) {
    out += labelled("Forecast", "none: " + answer.no_forecast);
  } else {
    out += '\n' + targets_text(answer) + '\n' + timing_text(answer) + tinel_text(answer);
  }
  out += warnings_text(answer.warnings);
  if (!answer.assumptions.empty()) out += labelled("Assumed", joined(answer.assumptions));
  if (!answer.assumed_parameters.empty()) {
    out +=
        labelled("", fmt::format("{} figures of the forecast rest on an assumption, each with its "
                                 "reason in --json",
                                 answer.assumed_parameters.size()));
  }
  out += '\n';
  for (const std::string& line : wrap(std::string(standing_caution()), kTerminalWidth))
    out += line + '\n';
  return out;
}

}  // namespace endplate::cli
