#include "calibrate/approach_page.hpp"

#include <fmt/format.h>

#include <map>

#include "models/limb/fit_summary.hpp"

namespace endplate::calibrate {
namespace {

using calibration::approach_shares;
using calibration::ApproachPrediction;
using calibration::ApproachShares;
using calibration::mean_covered;
using calibration::within_printed;
using incision::ApproachMeasure;
using incision::ApproachRule;
using incision::LimbDistance;
using incision::RuleCheck;

std::string number(const std::optional<double>& value, int digits = 1) {
  return value ? fmt::format("{:.{}f}", *value, digits) : "";
}

std::string share(std::size_t part, std::size_t whole) {
  return fmt::format(
      "{} of {} ({:.0f} %)", part, whole,
      whole == 0 ? 0.0 : 100.0 * static_cast<double>(part) / static_cast<double>(whole));
}

std::string interval(const std::optional<LimbDistance>& limb) {
  return limb ? fmt::format("{:.0f} to {:.0f}", limb->low_mm, limb->high_mm) : "";
}

std::string mean_of(const std::optional<LimbDistance>& limb) {
  return limb ? fmt::format("{:.1f}", limb->mean_mm) : "";
}

std::string pose_of(const ApproachMeasure& m) {
  std::string text;
  for (const auto& [key, deg] : m.pose_deg) {
    std::string_view name = key;
    if (name.ends_with("_deg")) name.remove_suffix(4);
    std::string words(name);
    for (char& c : words) c = c == '_' ? ' ' : c;
    text += fmt::format("{}{} {:.0f}°", text.empty() ? "" : ", ", words, deg);
  }
  return text.empty() ? "anatomical" : text;
}

std::string taken_as(const ApproachMeasure& m) {
  if (m.track) return "track of " + m.track->cut.label;
  if (!m.fitted_as.empty()) return "`" + m.fitted_as + "`";
  std::string text = fmt::format("{} from {}", to_string(m.measure.definition), m.measure.landmark);
  if (!m.from_landmark_mm.isZero()) {
    text += fmt::format(" (anterior {:.0f}, proximal {:.0f}, lateral {:.0f} mm of it)",
                        m.from_landmark_mm.x(), m.from_landmark_mm.y(), m.from_landmark_mm.z());
  }
  return m.measure.plane.empty() ? text : text + ", " + m.measure.plane;
}

std::string verdict(const std::optional<bool>& holds) {
  return !holds ? "" : *holds ? "yes" : "**no**";
}

std::string printed(const incision::Published& p) {
  std::string text = number(p.mean_mm, 1);
  if (p.sd_mm) text += fmt::format(" ± {:.1f}", *p.sd_mm);
  if (p.min_mm || p.max_mm) text += fmt::format(" ({} to {})", number(p.min_mm), number(p.max_mm));
  return text;
}

std::string_view criterion(RuleCheck check) {
  switch (check) {
    case RuleCheck::beyond:
      return "beyond";
    case RuleCheck::before:
      return "before";
    case RuleCheck::band:
      return "band";
    case RuleCheck::place:
      return "place";
    case RuleCheck::possible:
      return "possible";
    case RuleCheck::change:
      return "change";
    case RuleCheck::none:
      break;
  }
  return "";
}

std::string figure_of(const ApproachRule& rule) {
  if (rule.low_mm && rule.high_mm && *rule.low_mm == *rule.high_mm) return number(rule.low_mm);
  if (rule.low_mm && rule.high_mm) {
    return fmt::format("{:.0f} to {:.0f}", *rule.low_mm, *rule.high_mm);
  }
  if (rule.low_mm) return fmt::format("above {:.0f}", *rule.low_mm);
  return rule.high_mm ? fmt::format("below {:.0f}", *rule.high_mm) : "";
}

std::string figure_in_words(const ApproachRule& rule, const incision::RuleVerdict& verdict) {
  return rule.check == RuleCheck::change ? fmt::format("{:+.1f} mm", verdict.figure)
                                         : fmt::format("{:.1f} %", 100.0 * verdict.figure);
}

void add_rows(std::string& out, const std::vector<ApproachMeasure>& measures,
              const std::vector<ApproachPrediction>& predictions) {
  out +=
      "\n## Every row\n"
      "| row | study | nerve distance taken as | pose | published, mm | without the study, mm | 90 "
      "% "
      "of limbs, mm | full fit, mm | 90 % of limbs, mm | within | covered | in the fit |\n"
      "| --- | --- | --- | --- | --- | ---: | --- | ---: | --- | --- | --- | --- |\n";
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const ApproachMeasure& m = measures[i];
    const ApproachPrediction& p = predictions[i];
    out += fmt::format("| {} | {} | {} | {} | {}{} | {} | {} | {} | {} | {} | {} | {} |\n",
                       m.published.row, m.published.study, taken_as(m), pose_of(m),
                       printed(m.published), m.median ? " median" : "", mean_of(p.without),
                       interval(p.without), mean_of(p.full), interval(p.full),
                       verdict(within_printed(m, p.without)), verdict(mean_covered(m, p.without)),
                       m.fit_study.empty() ? "no" : "yes");
  }
}

void add_misses(std::string& out, const evidence::DataPackage& package,
                const std::vector<ApproachMeasure>& measures,
                const std::vector<ApproachPrediction>& predictions) {
  std::map<std::string, std::string, std::less<>> why;
  for (const evidence::Row row : package.table("approach_misses")) {
    why.emplace(std::string(row.text("row")), std::string(row.text("reason")));
  }
  out +=
      "\n## Misses\n"
      "| row | published, mm | without the study, mm | full fit, mm | missed | why |\n"
      "| --- | --- | ---: | ---: | --- | --- |\n";
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const auto in_spread = within_printed(measures[i], predictions[i].without);
    const auto in_limbs = mean_covered(measures[i], predictions[i].without);
    if (in_spread.value_or(true) && in_limbs.value_or(true)) continue;
    const std::string what = !in_limbs.value_or(true) && !in_spread.value_or(true) ? "both"
                             : !in_limbs.value_or(true)                            ? "covered"
                                                                                   : "within";
    const auto found = why.find(measures[i].published.row);
    out += fmt::format("| {} | {} | {} | {} | {} | {} |\n", measures[i].published.row,
                       printed(measures[i].published), mean_of(predictions[i].without),
                       mean_of(predictions[i].full), what,
                       found == why.end() ? "not explained" : found->second);
  }
}

void add_rules(std::string& out, const evidence::DataPackage& package,
               const std::vector<ApproachMeasure>& measures,
               const std::vector<ApproachPrediction>& predictions,
               const std::vector<ApproachRule>& rules) {
  std::map<std::string, std::size_t, std::less<>> index_of;
  for (std::size_t i = 0; i < measures.size(); ++i) index_of[measures[i].published.row] = i;
  struct Ledger {
    std::string rule;
    std::string surface;
  };
  std::map<std::string, Ledger, std::less<>> ledger;
  for (const evidence::Row row : package.table("approaches")) {
    ledger[std::string(row.text("id"))] = {std::string(row.text("safe_rule")),
                                           std::string(row.text("surface"))};
  }
  std::string judged;
  std::string left_out;
  std::size_t count = 0;
  std::size_t confirmed = 0;
  for (const ApproachRule& rule : rules) {
    const Ledger& row = ledger.at(rule.row);
    if (rule.check == RuleCheck::none) {
      left_out += fmt::format("| {} | {} | {} |\n", rule.row, row.rule, rule.reason);
      continue;
    }
    const std::size_t of = index_of.at(rule.of_row);
    const auto& distance = predictions[of].without;
    const auto from = rule.from_row.empty() ? std::optional<LimbDistance>()
                                            : predictions[index_of.at(rule.from_row)].without;
    if (!distance || (rule.check == RuleCheck::change && !from)) {
      left_out += fmt::format("| {} | {} | the fit without the study holds the point no more |\n",
                              rule.row, row.rule);
      continue;
    }
    const auto result = judge(rule, *distance, from ? &*from : nullptr);
    ++count;
    confirmed += result.confirmed ? 1 : 0;
    judged += fmt::format("| {} | {} | {} | {} | {} | {} mm | {} ({}) | {} | {} | {} |\n", rule.row,
                          row.rule, row.surface, pose_of(measures[of]), criterion(rule.check),
                          figure_of(rule), mean_of(distance), interval(distance),
                          figure_in_words(rule, result), result.confirmed ? "yes" : "**no**",
                          rule.reason);
  }
  out += fmt::format(
      "\n## Safe-zone rules\n"
      "{} of {} judged rules are confirmed, by the fit without the study where that entered the "
      "fit, on the row's own surface and in its pose. The criteria were fixed before the first "
      "rule was judged: beyond and before, at most {:.0f} % of limbs have the nerve on the wrong "
      "side of the figure; band, at least {:.0f} % of limbs have it in the band; place, the figure "
      "lies in the 90 % interval of limbs; possible, more than {:.0f} % of limbs have it there; "
      "change, the distance changes between the poses as the rule says. Chances are those of "
      "{} sampled limbs for tracks and of the normal distribution of limbs for the others. What is "
      "computed is, for beyond and before, the chance of the wrong side; for band and possible, of "
      "lying there; for place, of lying as far off or farther; for change, the change itself. A "
      "rule confirmed here is confirmed for the nerves of the model alone, not for vessels or "
      "tendons.\n\n"
      "| row | rule | surface | pose | check | figure | limb (90 %), mm | computed | confirmed | "
      "how read |\n| --- | --- | --- | --- | --- | --- | --- | ---: | --- | --- |\n",
      confirmed, count, 100.0 * incision::kRareLimb, 100.0 * incision::kCommonLimb,
      100.0 * incision::kSeenLimb, calibration::kApproachLimbs);
  out += judged;
  out +=
      "\n## Rules that are not judged\n"
      "| row | rule | why |\n| --- | --- | --- |\n";
  out += left_out;
}

std::string share_lines(std::string_view name, const ApproachShares& s) {
  return fmt::format("| {} | {} | {} | {} |\n", name, s.predicted, share(s.within, s.scored),
                     share(s.covered, s.with_mean));
}

}  // namespace

std::string approach_table(const std::vector<ApproachMeasure>& measures,
                           const std::vector<ApproachPrediction>& predictions) {
  std::string out =
      "row,full_mm,full_low_mm,full_high_mm,without_mm,without_low_mm,without_high_mm,"
      "without_sd_mm\n";
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const auto& full = predictions[i].full;
    const auto& without = predictions[i].without;
    if (!full) continue;
    out += fmt::format("{},{:.2f},{:.2f},{:.2f},", measures[i].published.row, full->mean_mm,
                       full->low_mm, full->high_mm);
    out += without ? fmt::format("{:.2f},{:.2f},{:.2f},{:.2f}\n", without->mean_mm, without->low_mm,
                                 without->high_mm, without->sd_mm)
                   : ",,,\n";
  }
  return out;
}

std::string approach_page(const evidence::DataPackage& package,
                          const std::vector<ApproachMeasure>& measures,
                          const std::vector<ApproachPrediction>& predictions,
                          const std::vector<ApproachRule>& rules) {
  const ApproachShares without = approach_shares(measures, predictions, false);
  const ApproachShares full = approach_shares(measures, predictions, true);
  std::string out =
      "# Published distances at incisions\n"
      "Written by `endplate-calibrate --approaches`; do not edit.\n\n";
  out += fmt::format(
      "{} of the {} rows of `approaches.csv` are computed on the limb; `approach_measures.csv` "
      "says how. Where the study of a row entered the fit of the courses, the row is predicted by "
      "a fit without that study; that prediction is judged, the full fit stands beside it. Nothing "
      "is tuned on a row. A fit without the study may hold a point of a nerve no more; such rows "
      "are not judged.\n\n"
      "A row without a pose is taken in the anatomical position, and on the ledger limb unless the "
      "study prints its arm. The interval is for one limb: spread between limbs, error of the fit, "
      "and the place of the landmark where no study of that quantity is in the fit. Distances from "
      "the track of a portal or a pin are means over {} sampled limbs of the mean size; the others "
      "are those of the mean limb. Within: the computed mean lies within one printed standard "
      "deviation of the printed mean or, where none is printed, in the printed range; rows with "
      "neither have no score. Covered: the printed mean lies in the interval.\n\n"
      "The first count was 38 of 63 within and 102 of 118 covered. Five readings were then mended, "
      "none of them by a row's figure: the tracks of elbow portals aim at the joint and no longer "
      "straight across (a technique page: the trocar keeps to the front of the humerus and makes "
      "for the radial head); a track goes with its landmark, whose place is as uncertain as for "
      "every other row; the portal of AP_067 is measured against the line of the course to its "
      "end; the border of the ulna of AP_116 to AP_119 stands where the bone is, and AP_032 has "
      "the humerus that its abstract prints. Rows in pronation rest on a "
      "share of the forearm's turn that was set with a published shift at the arcade of Frohse in "
      "sight (nerve-motion.md); that shift is no row here.\n\n"
      "After a count of 40 of 63 and 107 of 118, 19 rows of small nerves that had been drawn "
      "meanwhile were added, none of which had placed a nerve (6 of 14 within, 18 of 19 covered), "
      "and eight rows of five studies entered the fit (the radial nerve beside the humerus, the "
      "end of the posterior interosseous nerve), each still predicted without its own study.\n\n"
      "| prediction | rows | within | covered |\n| --- | ---: | ---: | ---: |\n",
      measures.size(), package.table("approaches").size(), calibration::kApproachLimbs);
  out += share_lines("without the study", without);
  out += share_lines("full fit", full);

  std::vector<ApproachMeasure> outside;
  std::vector<ApproachPrediction> of_outside;
  for (std::size_t i = 0; i < measures.size(); ++i) {
    if (!measures[i].fit_study.empty()) continue;
    outside.push_back(measures[i]);
    of_outside.push_back(predictions[i]);
  }
  out += share_lines("of these, studies that never entered a fit",
                     approach_shares(outside, of_outside, false));

  const limb::FitSummary summary = limb::FitSummary::from(package);
  const double expected =
      calibration::expected_within(measures, predictions, summary.between_studies);
  out += fmt::format(
      "\n**What share can be expected?** Studies of one distance differ: by {:.1f} mm and {:.0f} % "
      "of the distance (one standard deviation, estimated from the landmark distances, not from "
      "these rows), often more than the limbs of one study differ among themselves. A limb that "
      "stood exactly at the mean of all studies of every distance could expect to lie within the "
      "printed spread of {:.0f} of the {} rows ({:.0f} %); what is reached is {} ({:.0f} %). The "
      "goal of 80 % is therefore out of reach of any one limb, unless it is fitted to the study "
      "that judges it. What an honest limb can promise is the last column: its own interval, which "
      "holds the spread between studies, covers the printed mean.\n",
      summary.between_studies.at(0.0), 100.0 * summary.between_studies.slope, expected,
      without.scored, 100.0 * expected / static_cast<double>(without.scored), without.within,
      100.0 * static_cast<double>(without.within) / static_cast<double>(without.scored));

  std::string no_score;
  std::string not_predicted;
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const std::string& row = measures[i].published.row;
    auto& list = predictions[i].without ? no_score : not_predicted;
    if (predictions[i].without && within_printed(measures[i], predictions[i].without)) continue;
    list += (list.empty() ? "" : ", ") + row;
  }
  out += fmt::format("\nWithout a score for within (no deviation, no range): {}.\n", no_score);
  out += fmt::format(
      "\nNot predicted, because no other study holds the point or the crossing is not there: {}.\n",
      not_predicted.empty() ? "none" : not_predicted);
  add_misses(out, package, measures, predictions);
  add_rows(out, measures, predictions);
  out +=
      "\n## Rows that are not computed\n"
      "| row | approach | nerve | why |\n| --- | --- | --- | --- |\n";
  std::map<std::string, std::pair<std::string, std::string>, std::less<>> ledger;
  for (const evidence::Row row : package.table("approaches")) {
    ledger[std::string(row.text("id"))] = {std::string(row.text("approach")),
                                           std::string(row.text("nerve_at_risk"))};
  }
  for (const evidence::Row row : package.table("approach_measures_left_out")) {
    const auto& [approach, nerve] = ledger.at(std::string(row.text("row")));
    out += fmt::format("| {} | {} | {} | {} |\n", row.text("row"), approach, nerve,
                       row.text("reason"));
  }
  add_rules(out, package, measures, predictions, rules);
  out +=
      "\n## Approaches that are not drawn\n"
      "| approach | why |\n| --- | --- |\n";
  for (const evidence::Row row : package.table("approach_plans_left_out")) {
    out += fmt::format("| {} | {} |\n", row.text("approach"), row.text("reason"));
  }
  return out;
}

}  // namespace endplate::calibrate
