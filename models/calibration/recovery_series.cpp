#include "models/calibration/recovery_series.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/math/distributions/lognormal.hpp>
#include <cmath>
#include <map>

#include "models/recovery/growth.hpp"

namespace endplate::calibration {
namespace {

constexpr double kDaysAMonth = 365.25 / 12.0;
// Evenly likely delays, and days of arrival after each; more change no printed figure.
constexpr int kDelays = 10;
constexpr int kArrivals = 16;

// The law of arrival of the forecast for the patients of a series, whose delays are lognormal.
std::vector<double> arrivals(const RecoverySeries& row, int coaptations, double delay_sd_months,
                             const recovery::Parameters& parameters) {
  const auto& rate = parameters.find("rate", row.nerve, "operated");
  const auto& delay = parameters.find("coaptation delay", "any", "operated");
  const recovery::Slowing slowing{parameters.find("rate reference distance", "any", "any").mean,
                                  parameters.find("slowing length", "any", "any").mean};
  recovery::ArrivalLaw law;
  law.delay_mean_days = coaptations * delay.mean;
  law.delay_sd_days = std::sqrt(static_cast<double>(coaptations)) * delay.sd;
  law.transit_median_days = slowing.effective_mm(row.way_mm + 0.5 * row.gap_mm) / rate.median();
  law.transit_log_sd = rate.log_sd();
  const double log_variance = std::log1p(std::pow(delay_sd_months / row.delay_months, 2));
  const boost::math::lognormal delays(std::log(row.delay_months) - 0.5 * log_variance,
                                      std::sqrt(log_variance));
  std::vector<double> days;
  days.reserve(static_cast<std::size_t>(kDelays) * kArrivals);
  for (int d = 0; d < kDelays; ++d) {
    law.start_days = boost::math::quantile(delays, (d + 0.5) / kDelays) * kDaysAMonth;
    for (int k = 0; k < kArrivals; ++k) days.push_back(law.quantile((k + 0.5) / kArrivals));
  }
  std::ranges::sort(days);
  return days;
}

Donor donor_from(std::string_view text) {
  if (text == "near") return Donor::near;
  if (text == "intercostal") return Donor::intercostal;
  return text == "distant" ? Donor::distant : Donor::none;
}

Procedure procedure_from(std::string_view text) {
  if (text == "graft") return Procedure::graft;
  return text == "transfer" ? Procedure::transfer : Procedure::repair;
}

}  // namespace

Expected<RecoverySeriesTable> recovery_series(const evidence::DataPackage& package,
                                              const recovery::Parameters& parameters) {
  RecoverySeriesTable table;
  std::vector<Problem> problems;
  std::map<std::string, std::size_t> index;
  std::vector<std::string> lower;
  for (const evidence::Row r : package.table("recovery_series")) {
    const bool in_outcomes = !r.text("outcome_row").empty();
    const std::string published(r.text(in_outcomes ? "outcome_row" : "transfer_row"));
    if (published.empty()) {
      problems.push_back({fmt::format("recovery_series.csv, row {}", r.line()),
                          "the row names no published row",
                          "Fill in outcome_row or transfer_row."});
      continue;
    }
    if (r.text("use") == "left out") {
      table.left_out.push_back({published, std::string(r.text("study")),
                                std::string(r.text("scale")), std::string(r.text("reason"))});
      continue;
    }
    RecoverySeries row;
    row.id = r.text("id");
    row.study = r.text("study");
    row.row = published;
    row.in_outcomes = in_outcomes;
    row.fitted = r.text("use") == "fit";
    row.procedure = procedure_from(r.text("procedure"));
    row.donor = donor_from(r.text("donor"));
    row.nerve = r.text("nerve");
    row.target = r.text("target");
    row.sensory = r.text("kind") == "sensory";
    row.scale = r.text("scale");
    row.higher_grade = row.scale == "M4" || row.scale == "S3+";
    row.delay_months = r.number("delay_months").value_or(0.0);
    row.way_mm = r.number("way_mm").value_or(0.0);
    row.delay_assumed = r.text("delay_basis") == "assumed";
    row.way_assumed = r.text("way_basis") == "assumed";
    row.gap_mm = r.number("gap_mm").value_or(0.0);
    row.share_under_16 = r.number("share_under_16").value_or(0.0);
    row.share_over_40 = r.number("share_over_40").value_or(0.0);
    row.shoulder = r.text("movement") == "shoulder";
    row.n = static_cast<int>(r.number("n").value_or(0.0));
    row.count = static_cast<int>(r.number("count").value_or(0.0));
    row.reason = r.text("reason");
    row.arrival_days =
        arrivals(row, static_cast<int>(r.number("coaptations").value_or(1.0)),
                 r.number("delay_sd_months").value_or(0.5 * row.delay_months), parameters);
    index.emplace(row.id, table.rows.size());
    lower.emplace_back(r.text("within"));
    table.rows.push_back(std::move(row));
  }
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    if (lower[i].empty()) continue;
    const auto found = index.find(lower[i]);
    if (found != index.end()) {
      table.rows[i].within = found->second;
      continue;
    }
    problems.push_back({fmt::format("recovery_series.csv, {}, column within", table.rows[i].id),
                        fmt::format("no row {} that is judged", lower[i]),
                        "Name the row of the same patients with the lower grade."});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return table;
}

}  // namespace endplate::calibration
