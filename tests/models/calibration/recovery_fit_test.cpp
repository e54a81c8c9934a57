#include "models/calibration/recovery_fit.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <string>

using namespace endplate::calibration;

namespace {

// A made-up series whose axons all arrive on one day.
RecoverySeries made_up(const std::string& study, double day, int n, double share) {
  RecoverySeries row;
  row.id = study + std::to_string(static_cast<int>(day));
  row.study = study;
  row.nerve = "radial nerve";
  row.scale = "M3";
  row.n = n;
  row.count = static_cast<int>(std::lround(share * n));
  row.arrival_days = {day};
  return row;
}

double window(double day, double median, double shape) {
  return 1.0 / (1.0 + std::pow(day / median, shape));
}

// Large series without a spread between them, by a window of 500 days and shape 4.
std::vector<RecoverySeries> made_up_rows() {
  std::vector<RecoverySeries> rows;
  int k = 0;
  for (const double day : {60.0, 200.0, 350.0, 450.0, 550.0, 700.0, 900.0}) {
    for (const char* study : {"a", "b"}) {
      rows.push_back(made_up(study + std::to_string(k), day, 500, 0.85 * window(day, 500.0, 4.0)));
    }
    ++k;
  }
  return rows;
}

}  // namespace

TEST_CASE("a fit to made-up counts finds what made them", "[calibration]") {
  const auto rows = made_up_rows();
  const auto fit = fit_recovery(rows);
  REQUIRE(fit);
  const Effects& effects = fit->all.effects;
  CHECK(std::exp(effects[window_log_median]) == Approx(500.0).epsilon(0.03));
  CHECK(std::exp(effects[window_log_shape]) == Approx(4.0).epsilon(0.06));
  CHECK(1.0 / (1.0 + std::exp(-effects[motor_base])) == Approx(0.85).epsilon(0.03));
  CHECK(std::exp(effects[log_spread]) < 0.4);
  for (const SeriesReading& reading : fit->readings) {
    CHECK(reading.left_out ==
          Approx(0.85 * window(rows[reading.row].arrival_days[0], 500.0, 4.0)).margin(0.03));
    CHECK(reading.count_covered);
  }
}

TEST_CASE("a study that is left out does not speak for itself", "[calibration]") {
  auto rows = made_up_rows();
  const auto before = fit_recovery(rows);
  REQUIRE(before);
  // The study now says that nobody recovers: its own prediction does not move, its verdict does.
  rows[0].count = 0;
  const auto after = fit_recovery(rows);
  REQUIRE(after);
  CHECK(after->readings[0].left_out == Approx(before->readings[0].left_out).margin(0.002));
  CHECK(before->readings[0].inside());
  CHECK_FALSE(after->readings[0].inside());
  CHECK_FALSE(after->readings[0].count_covered);
  CHECK(after->readings[0].fitted < before->readings[0].fitted);
}

TEST_CASE("studies that differ more than chance widen what is predicted", "[calibration]") {
  auto rows = made_up_rows();
  const auto alike = fit_recovery(rows);
  for (std::size_t k = 0; k < rows.size(); k += 2) rows[k].count = rows[k].count * 2 / 3;
  const auto unlike = fit_recovery(rows);
  REQUIRE(alike);
  REQUIRE(unlike);
  CHECK(unlike->all.effects[log_spread] > alike->all.effects[log_spread] + 0.3);
  const auto width = [](const SeriesReading& r) { return r.predicted.high - r.predicted.low; };
  CHECK(width(unlike->readings[1]) > width(alike->readings[1]));
}

TEST_CASE("a row that is judged only changes no estimate", "[calibration]") {
  auto rows = made_up_rows();
  const auto without = fit_recovery(rows);
  auto extra = made_up("other", 300.0, 100, 0.1);
  extra.fitted = false;
  rows.push_back(extra);
  const auto with = fit_recovery(rows);
  REQUIRE(without);
  REQUIRE(with);
  CHECK((with->all.effects - without->all.effects).norm() < 1e-9);
  CHECK_FALSE(with->readings.back().inside());
}

TEST_CASE("the interval of a count is the exact one", "[calibration]") {
  // Clopper CJ, Pearson ES, Biometrika 1934;26:404: 10 of 10 leaves 0.692 to 1, 0 of 10 leaves 0 to
  // 0.308; for 43 of 50 the values are those of binom.test in R.
  auto rows = made_up_rows();
  rows.push_back(made_up("x", 100.0, 10, 1.0));
  rows.push_back(made_up("y", 100.0, 10, 0.0));
  rows.push_back(made_up("z", 100.0, 50, 0.86));
  const auto fit = fit_recovery(rows);
  REQUIRE(fit);
  const auto& all = fit->readings;
  CHECK(all[all.size() - 3].published.low == Approx(0.6915).margin(0.0005));
  CHECK(all[all.size() - 3].published.high == 1.0);
  CHECK(all[all.size() - 2].published.low == 0.0);
  CHECK(all[all.size() - 2].published.high == Approx(0.3085).margin(0.0005));
  CHECK(all.back().published.low == Approx(0.7326).margin(0.0005));
  CHECK(all.back().published.high == Approx(0.9418).margin(0.0005));
}
