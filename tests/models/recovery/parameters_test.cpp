#include "models/recovery/parameters.hpp"

#include <cmath>
#include <map>

#include "fixture.hpp"

using namespace recovery_tests;

namespace {

evidence::Row regeneration_row(std::string_view id) {
  for (const evidence::Row row : tables().package.table("regeneration")) {
    if (row.text("id") == id) return row;
  }
  throw std::logic_error("no such row");
}

double value(std::string_view id) {
  return *regeneration_row(id).number("value");
}

}  // namespace

TEST_CASE("the rates are what their published rows give", "[recovery]") {
  const auto& p = tables().parameters;
  const auto buchthal = regeneration_row("rate_sensory_median_wrist_buchthal79");
  const auto range = regeneration_row("rate_range_seddon43");
  const std::array<std::string, 4> cells{
      "rate_radial_axonotmesis_seddon43", "rate_radial_suture_seddon43",
      "rate_other_axonotmesis_seddon43", "rate_other_suture_seddon43"};
  double seddon = 0.0;
  for (const auto& id : cells) seddon += value(id) / 4.0;

  const std::array<double, 3> logs{
      std::log(seddon), std::log(0.5 * (*buchthal.number("low") + *buchthal.number("high"))),
      std::log(value("rate_radial_fracture_trojaborg70"))};
  const double mean = (logs[0] + logs[1] + logs[2]) / 3.0;
  double between = 0.0;
  for (const double x : logs) between += (x - mean) * (x - mean) / 2.0;
  const double within =
      std::log(*range.number("high") / *range.number("low")) / (2.0 * 1.6448536269514722);
  const double spread = std::sqrt(between + within * within);

  const std::array<std::pair<const char*, const char*>, 4> rows{{{"radial nerve", "none"},
                                                                 {"radial nerve", "operated"},
                                                                 {"any", "none"},
                                                                 {"any", "operated"}}};
  for (std::size_t k = 0; k < rows.size(); ++k) {
    const auto& rate = p.find("rate", rows[k].first, rows[k].second);
    CHECK(rate.median() == Approx(std::exp(mean) * value(cells[k]) / seddon).epsilon(0.002));
    CHECK(rate.log_sd() == Approx(spread).epsilon(0.002));
  }
}

TEST_CASE("the coaptation delay is the middle of its row", "[recovery]") {
  const auto row = regeneration_row("coaptation_delay_clinic");
  const double middle = 7.0 * 0.5 * (*row.number("low") + *row.number("high"));
  CHECK(tables().parameters.find("coaptation delay", "any", "operated").mean == Approx(middle));
}

TEST_CASE("the motor window has no edge and its middle is near the books' 18 months",
          "[recovery]") {
  const auto& p = tables().parameters.find("motor window", "motor", "any");
  const auto window = recovery::log_logistic_from(p.mean, p.sd);
  CHECK(window.median == Approx(18.0 * 30.44).epsilon(0.2));
  double before = 1.0;
  for (int month = 1; month <= 48; ++month) {
    const double now = window.survival(month * 30.44);
    CHECK(now < before);
    CHECK(before - now < 0.10);  // nothing falls off an edge from one month to the next
    before = now;
  }
  CHECK(window.survival(36 * 30.44) > 0.02);  // late recoveries stay in the curve
}

TEST_CASE("a log-logistic has the mean and spread it was made from", "[recovery]") {
  const auto window = recovery::log_logistic_from(600.0, 314.0);
  double mean = 0.0;
  double square = 0.0;
  constexpr int kSteps = 400000;
  for (int k = 0; k < kSteps; ++k) {
    const double u = (k + 0.5) / kSteps;
    const double t = window.median * std::pow(u / (1.0 - u), 1.0 / window.shape);
    mean += t / kSteps;
    square += t * t / kSteps;
  }
  CHECK(mean == Approx(600.0).epsilon(0.002));
  CHECK(std::sqrt(square - mean * mean) == Approx(314.0).epsilon(0.03));
}

TEST_CASE("the mixture of grades of every mechanism sums to one", "[recovery]") {
  std::map<std::string, double> sums;
  for (const auto& p : tables().parameters.all()) {
    if (p.quantity.starts_with("chance of ")) sums[p.applies_to + "/" + p.deficit] += p.mean;
  }
  CHECK(sums.size() >= 8);
  for (const auto& [mechanism, sum] : sums) {
    CAPTURE(mechanism);
    CHECK(sum == Approx(1.0));
  }
}

TEST_CASE("no figure stands without rows or a reason, and an assumed one says why", "[recovery]") {
  for (const auto& p : tables().parameters.all()) {
    CAPTURE(p.id);
    CHECK(p.reason.size() > 20);
    if (p.provenance != evidence::Provenance::assumed) CHECK_FALSE(p.rows.empty());
  }
}
