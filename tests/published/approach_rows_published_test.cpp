// The published distances of approaches.csv (each row names its study) beside the limb. The shipped
// table holds what `endplate-calibrate --approaches` computed, each row by a fit without its study;
// here the part of the full fit is computed anew and the shares of docs/incision-rows.md are
// counted.
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "../models/limb/limb_fixture.hpp"
#include "models/calibration/approach_prediction.hpp"
#include "models/limb/fit_summary.hpp"

namespace endplate::calibration {
namespace {

const std::vector<incision::ApproachMeasure>& measures() {
  static const auto atlas = limb::Atlas::fitted(limb::own_tables());
  static const auto read = incision::approach_measures(limb::own_tables(), atlas.value());
  REQUIRE(read.has_value());
  return *read;
}

}  // namespace

TEST_CASE("the shipped distances at incisions are those of the shipped fit", "[incision]") {
  const auto& package = limb::own_tables();
  const auto shipped = shipped_predictions(package, measures());
  // Another processor's arithmetic moves the last digits.
  constexpr double kNoise_mm = 0.05;
  const auto fresh = predict_with_shipped_fit(package, measures());
  REQUIRE(fresh.has_value());
  for (std::size_t i = 0; i < measures().size(); ++i) {
    INFO(measures()[i].published.row);
    REQUIRE(shipped[i].full.has_value() == (*fresh)[i].full.has_value());
    if (!shipped[i].full) continue;
    CHECK(shipped[i].full->mean_mm == Approx((*fresh)[i].full->mean_mm).margin(kNoise_mm));
    CHECK(shipped[i].full->low_mm == Approx((*fresh)[i].full->low_mm).margin(kNoise_mm));
    CHECK(shipped[i].full->high_mm == Approx((*fresh)[i].full->high_mm).margin(kNoise_mm));
    // A study that never entered the fit has no other prediction.
    if (!measures()[i].fit_study.empty()) continue;
    CHECK(shipped[i].without->mean_mm == shipped[i].full->mean_mm);
  }
}

TEST_CASE("every missed distance at an incision is explained, and nothing else", "[incision]") {
  const auto shipped = shipped_predictions(limb::own_tables(), measures());
  std::set<std::string> explained;
  for (const evidence::Row row : limb::own_tables().table("approach_misses")) {
    explained.emplace(row.text("row"));
  }
  for (std::size_t i = 0; i < measures().size(); ++i) {
    INFO(measures()[i].published.row);
    const bool missed = !within_printed(measures()[i], shipped[i].without).value_or(true) ||
                        !mean_covered(measures()[i], shipped[i].without).value_or(true);
    CHECK(explained.contains(measures()[i].published.row) == missed);
  }
}

// Goals: 80 % within and 85 % covered, over at least 60 rows. The second is reached. The first is
// not: docs/incision-rows.md explains every miss; what is reached is held here.
TEST_CASE("the limb meets the published distances at incisions as often as the page says",
          "[incision]") {
  const auto shipped = shipped_predictions(limb::own_tables(), measures());
  const ApproachShares shares = approach_shares(measures(), shipped, false);
  CHECK(shares.scored >= 60);
  CHECK(100 * shares.within >= 55 * shares.scored);
  CHECK(100 * shares.covered >= 85 * shares.with_mean);
  // Studies that never entered a fit, alone.
  std::vector<incision::ApproachMeasure> outside;
  std::vector<ApproachPrediction> of_outside;
  for (std::size_t i = 0; i < measures().size(); ++i) {
    if (!measures()[i].fit_study.empty()) continue;
    outside.push_back(measures()[i]);
    of_outside.push_back(shipped[i]);
  }
  const ApproachShares fresh = approach_shares(outside, of_outside, false);
  CHECK(fresh.predicted >= 60);
  CHECK(100 * fresh.covered >= 85 * fresh.with_mean);
}

// Why 80 % within is not to be had: the page's argument, from the spread between the studies of the
// landmark distances.
TEST_CASE("not even the mean of all studies would lie within four in five printed spreads",
          "[incision]") {
  const auto shipped = shipped_predictions(limb::own_tables(), measures());
  const ApproachShares shares = approach_shares(measures(), shipped, false);
  const auto summary = limb::FitSummary::from(limb::own_tables());
  const double expected = expected_within(measures(), shipped, summary.between_studies);
  CHECK(expected < 0.8 * static_cast<double>(shares.scored));
  // A spread between studies of nothing would let all of them be met.
  CHECK(expected_within(measures(), shipped, {1e-9, 0.0, 0.0}) >
        0.9 * static_cast<double>(shares.scored));
}

}  // namespace endplate::calibration
