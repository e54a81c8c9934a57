#include "models/plan/series.hpp"

#include <algorithm>

namespace endplate::plan {
namespace {

using evidence::Row;

constexpr double kPercent = 100.0;

PublishedResult from_outcome(const Row& row) {
  PublishedResult result;
  result.row = row.text("id");
  result.scale = row.text("outcome_scale");
  result.share = row.number("outcome_fraction");
  result.low = row.number("low_fraction");
  result.high = row.number("high_fraction");
  result.count = row.number("outcome_count");
  result.n = row.number("n");
  result.stand_in = row.text("stand_in");
  result.study = row.text("study");
  result.provenance = row.text("provenance");
  return result;
}

PublishedResult from_regeneration(const Row& row) {
  PublishedResult result;
  result.row = row.text("id");
  if (const auto percent = row.number("value")) result.share = *percent / kPercent;
  result.n = row.number("n");
  result.stand_in = row.text("stand_in");
  result.study = row.text("study");
  result.provenance = row.text("provenance");
  return result;
}

PublishedResult from_tendon(const Row& series, const Row& row) {
  PublishedResult result;
  result.row = row.text("id");
  result.count = series.number("count");
  result.n = series.number("n");
  if (result.count && result.n) result.share = *result.count / *result.n;
  result.study = row.text("study");
  result.provenance = row.text("provenance");
  return result;
}

// A share whose n is that of a whole review tells less than a counted one.
double weight(const PublishedResult& result) {
  if (result.count && result.n) return 1e6 + *result.n;
  return result.n.value_or(0.0);
}

PublishedResult read(const evidence::DataPackage& package, const Row& series) {
  PublishedResult result;
  if (!series.text("outcome_row").empty()) {
    result = from_outcome(row_with_id(package.table("outcomes"), series.text("outcome_row")));
  } else if (!series.text("regeneration_row").empty()) {
    result = from_regeneration(
        row_with_id(package.table("regeneration"), series.text("regeneration_row")));
  } else {
    result = from_tendon(series,
                         row_with_id(package.table("tendon_transfers"), series.text("tendon_row")));
  }
  if (!series.text("scale").empty()) result.scale = series.text("scale");
  result.entry = series.text("entry");
  return result;
}

}  // namespace

std::vector<PublishedResult> published_series(const evidence::DataPackage& package,
                                              const SeriesQuestion& question) {
  std::vector<std::pair<bool, PublishedResult>> results;
  for (const Row series : package.table("plan_series")) {
    if (series.text("option") != question.kind) continue;
    const auto nerves = series.list("nerve");
    if (!nerves.empty() && std::ranges::none_of(nerves, [&](const std::string& nerve) {
          return question.nerves.contains(nerve);
        })) {
      continue;
    }
    const auto mechanisms = series.list("mechanism");
    if (!mechanisms.empty() && std::ranges::none_of(mechanisms, [&](const std::string& mechanism) {
          return question.mechanisms.contains(mechanism);
        })) {
      continue;
    }
    if (!question.function.empty() && series.text("function") != question.function) continue;
    const auto transfers = series.list("transfers");
    const auto speaks_of = [&](const std::string& transfer) {
      return std::ranges::find(transfers, transfer) != transfers.end();
    };
    if (!transfers.empty() && std::ranges::none_of(question.transfers, speaks_of)) continue;
    const bool of_best = !question.transfers.empty() && speaks_of(question.transfers.front());
    results.push_back({of_best, read(package, series)});
  }
  std::ranges::stable_sort(results, std::ranges::greater{}, [](const auto& result) {
    return std::pair(result.first, weight(result.second));
  });
  std::vector<PublishedResult> in_order;
  for (auto& result : results) in_order.push_back(std::move(result.second));
  return in_order;
}

std::vector<PublishedResult> published_tendon(const evidence::DataPackage& package,
                                              std::string_view tendon_row) {
  std::vector<PublishedResult> results;
  for (const Row series : package.table("plan_series")) {
    if (series.text("tendon_row") == tendon_row) results.push_back(read(package, series));
  }
  return results;
}

}  // namespace endplate::plan
