#include "models/calibration/recovery_series.hpp"

#include <map>
#include <set>
#include <string>

#include "../recovery/fixture.hpp"

using namespace recovery_tests;

namespace {

const calibration::RecoverySeriesTable& series() {
  static const calibration::RecoverySeriesTable kSeries = [] {
    auto read = calibration::recovery_series(tables().package, tables().parameters);
    REQUIRE(read);
    return std::move(*read);
  }();
  return kSeries;
}

}  // namespace

TEST_CASE("every published fraction is predicted or left out with a reason", "[calibration]") {
  std::map<std::string, int> seen;
  for (const evidence::Row row : tables().package.table("recovery_series")) {
    ++seen[std::string(row.text("outcome_row"))];
  }
  for (const evidence::Row row : tables().package.table("outcomes")) {
    const std::string id(row.text("id"));
    CAPTURE(id);
    CHECK(seen[id] == 1);
  }
  for (const auto& row : series().left_out) {
    CAPTURE(row.row);
    CHECK(row.reason.size() > 10);
  }
}

TEST_CASE("counts are those of the published rows", "[calibration]") {
  std::map<std::string, std::pair<double, double>> published;
  for (const evidence::Row row : tables().package.table("outcomes")) {
    if (!row.number("outcome_count")) continue;
    published[std::string(row.text("id"))] = {*row.number("outcome_count"), *row.number("n")};
  }
  std::set<std::string> studies;
  for (const auto& row : series().rows) {
    CAPTURE(row.id);
    studies.insert(row.study);
    if (!row.in_outcomes) continue;
    REQUIRE(published.contains(row.row));
    CHECK(published[row.row].first == row.count);
    CHECK(published[row.row].second == row.n);
    CHECK(row.reason.size() > 10);
  }
  CHECK(series().rows.size() > 60);
  CHECK(studies.size() > 30);
}

TEST_CASE("a higher grade stands within the lower grade of the same patients", "[calibration]") {
  for (const auto& row : series().rows) {
    if (!row.within) continue;
    const auto& lower = series().rows[*row.within];
    CAPTURE(row.id);
    CHECK(row.higher_grade);
    CHECK_FALSE(lower.higher_grade);
    CHECK(lower.study == row.study);
    CHECK(lower.n == row.n);
    CHECK(lower.count >= row.count);
    CHECK(lower.way_mm == row.way_mm);
    CHECK(lower.delay_months == row.delay_months);
  }
}

TEST_CASE("axons of a series arrive after the operation, later over a longer way",
          "[calibration]") {
  for (const auto& row : series().rows) {
    CHECK(row.arrival_days[row.arrival_days.size() / 2] > 0.8 * row.delay_months * 30.44);
    CHECK(std::ranges::is_sorted(row.arrival_days));
  }
  const auto of = [&](const char* id) -> const calibration::RecoverySeries& {
    return *std::ranges::find(series().rows, std::string(id), &calibration::RecoverySeries::row);
  };
  CHECK(of("p_wristext_graft_zhu23").arrival_days[20] <
        of("p_thumbext_graft_zhu23").arrival_days[20]);
}
