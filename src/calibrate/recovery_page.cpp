#include "calibrate/recovery_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace endplate::calibrate {
namespace {

using calibration::Procedure;
using calibration::RecoveryFit;
using calibration::RecoverySeries;
using calibration::RecoverySeriesTable;
using calibration::SeriesReading;

std::string_view words(Procedure procedure) {
  switch (procedure) {
    case Procedure::repair:
      return "repair";
    case Procedure::graft:
      return "graft";
    case Procedure::transfer:
      break;
  }
  return "transfer";
}

std::string procedure_words(const RecoverySeries& row) {
  std::string out(words(row.procedure));
  if (row.donor == calibration::Donor::near) out += ", near";
  if (row.donor == calibration::Donor::distant) out += ", distant";
  if (row.donor == calibration::Donor::intercostal) out += ", intercostal";
  if (row.gap_mm > 0.0) out += fmt::format(" {:.0f} mm", row.gap_mm);
  return out;
}

std::string share_line(std::string_view name, const std::vector<const SeriesReading*>& readings) {
  const auto n = readings.size();
  if (n == 0) return "";
  const auto inside =
      std::ranges::count_if(readings, [](const SeriesReading* r) { return r->inside(); });
  const auto covered =
      std::ranges::count_if(readings, [](const SeriesReading* r) { return r->count_covered; });
  const auto percent = [&](auto part) {
    return 100.0 * static_cast<double>(part) / static_cast<double>(n);
  };
  double expected = 0.0;
  for (const SeriesReading* r : readings) expected += r->expected_inside;
  return fmt::format("| {} | {} | {} ({:.1f} %) | {:.0f} % | {} ({:.1f} %) |\n", name, n, inside,
                     percent(inside), percent(expected), covered, percent(covered));
}

std::string shares(const RecoveryFit& fit, const std::vector<RecoverySeries>& rows) {
  const auto those = [&](const std::function<bool(const RecoverySeries&)>& wanted) {
    std::vector<const SeriesReading*> found;
    for (const SeriesReading& r : fit.readings) {
      if (wanted(rows[r.row])) found.push_back(&r);
    }
    return found;
  };
  std::string out =
      "| rows | number | chance in the series' own 95 % interval | the same, if the fit were right "
      "| "
      "count in the predicted 95 % interval |\n| --- | ---: | ---: | ---: | ---: |\n";
  out += share_line("all", those([](const RecoverySeries&) { return true; }));
  out += share_line("without patients of another row",
                    those([](const RecoverySeries& r) { return r.fitted && !r.within; }));
  out +=
      share_line("repair and graft, what `recovery` forecasts",
                 those([](const RecoverySeries& r) { return r.procedure != Procedure::transfer; }));
  for (const Procedure procedure : {Procedure::repair, Procedure::graft, Procedure::transfer}) {
    out += share_line(words(procedure),
                      those([&](const RecoverySeries& r) { return r.procedure == procedure; }));
  }
  out += share_line("motor", those([](const RecoverySeries& r) { return !r.sensory; }));
  out += share_line("sensory", those([](const RecoverySeries& r) { return r.sensory; }));
  for (const char* scale : {"M3", "M4", "S3", "S3+"}) {
    out += share_line(scale, those([&](const RecoverySeries& r) { return r.scale == scale; }));
  }
  out +=
      share_line("fewer than 30 patients", those([](const RecoverySeries& r) { return r.n < 30; }));
  out +=
      share_line("30 patients and more", those([](const RecoverySeries& r) { return r.n >= 30; }));
  return out;
}

std::string effects(const RecoveryFit& fit) {
  std::string out =
      "| effect, on the logit scale | before the data | fitted | why so before |\n| --- | ---: | "
      "---: | --- |\n";
  for (std::size_t k = 0; k < calibration::kEffects; ++k) {
    const calibration::EffectPrior& prior = calibration::effect_priors()[k];
    const auto c = static_cast<Eigen::Index>(k);
    out += fmt::format("| {} | {:.2f} ± {:.2f} | {:.2f} ± {:.2f} | {} |\n", prior.name, prior.mean,
                       prior.sd, fit.all.effects[c], std::sqrt(fit.all.covariance(c, c)),
                       prior.reason);
  }
  return out;
}

std::string line_of(const SeriesReading& r, const RecoverySeries& row) {
  const double share = static_cast<double>(row.count) / row.n;
  const std::string_view verdict = r.inside()           ? "in"
                                   : r.left_out < share ? "MISS, low"
                                                        : "MISS, high";
  return fmt::format(
      "| {} | {} | {} | {} | {:.1f}{} | {:.0f}{} | {} | {}/{} | {:.2f} | {:.2f}-{:.2f} | {:.2f} | "
      "{:.2f}-{:.2f} | {} | {} |\n",
      row.row, row.study, row.target, procedure_words(row), row.delay_months,
      row.delay_assumed ? "*" : "", row.way_mm, row.way_assumed ? "*" : "", row.scale, row.count,
      row.n, share, r.published.low, r.published.high, r.left_out, r.predicted.low,
      r.predicted.high, verdict, r.count_covered ? "yes" : "no");
}

}  // namespace

RecoveryShares recovery_shares(const RecoveryFit& fit) {
  RecoveryShares result;
  for (const SeriesReading& r : fit.readings) {
    ++result.rows;
    result.inside += r.inside() ? 1 : 0;
    result.covered += r.count_covered ? 1 : 0;
  }
  return result;
}

std::string recovery_page(const RecoveryFit& fit, const RecoverySeriesTable& table) {
  std::string out =
      "# Published recovery fractions beside the predicted chance\n"
      "Written by `endplate-calibrate --recovery`; do not edit. How the chances are made and what "
      "this is worth stands in [recovery.md](recovery.md).\n\n"
      "Every row is predicted by a fit that never saw its study. Its own 95 % interval is the "
      "exact one of its count (Clopper and Pearson). The predicted interval holds 90 % of studies "
      "like it: the uncertainty of the fit and the spread between studies. The last column says "
      "whether the count lies in the middle 95 % of what the other studies predict for so many "
      "patients.\n\n"
      "Studies of one operation differ by more than the play of their counts, so even the right "
      "chance lies outside the narrow interval of many a large series: how often it would lie "
      "inside, if the fit were right, stands beside.\n\n";
  out += shares(fit, table.rows);
  const auto middle =
      std::ranges::count_if(fit.readings, [](const SeriesReading& r) { return r.middle_inside(); });
  out += fmt::format(
      "\nThe predicted chance is the mean over studies, what a patient can expect whose surgeon is "
      "not known; that of the study in the middle is higher and lies in the interval in {} of {} "
      "rows.\n",
      middle, fit.readings.size());
  const auto misses =
      std::ranges::count_if(fit.readings, [](const SeriesReading& r) { return !r.inside(); });
  out += fmt::format(
      "\n{} of {} rows miss. An asterisk marks a delay or a way that the source does not print "
      "and that was assumed; the reason stands in `datasets/recovery_series.csv`, with what was "
      "taken for graft length and age.\n\n",
      misses, fit.readings.size());
  out +=
      "| row | study | target | procedure | delay, months | way, mm | grade | count | share | its "
      "95 % interval | predicted | 90 % of studies | verdict | count covered |\n"
      "| --- | --- | --- | --- | ---: | ---: | --- | ---: | ---: | --- | ---: | --- | --- | --- "
      "|\n";
  for (const bool inside : {false, true}) {
    for (const SeriesReading& r : fit.readings) {
      if (r.inside() == inside) out += line_of(r, table.rows[r.row]);
    }
  }
  out += "\n## The fit\n";
  out += effects(fit);
  out += fmt::format("\n## Left out ({} rows)\n", table.left_out.size());
  std::map<std::string, std::vector<std::string>> by_reason;
  for (const calibration::SeriesLeftOut& row : table.left_out) {
    by_reason[row.reason].push_back(row.row);
  }
  for (const auto& [reason, rows] : by_reason) {
    out += fmt::format("- {}: {}\n", reason, fmt::join(rows, ", "));
  }
  return out;
}

}  // namespace endplate::calibrate
