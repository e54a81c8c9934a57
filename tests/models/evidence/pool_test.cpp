#include "models/evidence/pool.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>
#include <string>

#include "models/evidence/data_package.hpp"

using namespace endplate::evidence;

namespace {

const std::vector<Quantity>& shipped_quantities() {
  static const auto all = [] {
    const auto package = DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    REQUIRE(package.has_value());
    return quantities(package->table("landmark_distances"));
  }();
  return all;
}

const SpreadModel& spread() {
  static const auto model = SpreadModel::estimate(shipped_quantities());
  return model;
}

const Quantity& quantity_called(const std::string& name) {
  const auto found = std::ranges::find_if(shipped_quantities(),
                                          [&](const Quantity& q) { return q.name() == name; });
  REQUIRE(found != shipped_quantities().end());
  return *found;
}

}  // namespace

TEST_CASE("every row of the distances stands in exactly one quantity", "[evidence]") {
  std::set<std::string> ids;
  std::set<std::string> names;
  for (const Quantity& quantity : shipped_quantities()) {
    CHECK(names.insert(quantity.name()).second);
    for (const Measurement& row : quantity.rows) CHECK(ids.insert(row.id).second);
  }
  CHECK(ids.size() == 700);
}

TEST_CASE("every quantity with a mean pools, and its intervals contain the mean", "[evidence]") {
  std::size_t pooled_quantities = 0;
  for (const Quantity& quantity : shipped_quantities()) {
    const auto pooled = pool(quantity, spread());
    const bool can_pool =
        quantity.measure != Measure::prevalence &&
        std::ranges::any_of(quantity.rows, [](const auto& row) { return row.left_out.empty(); });
    INFO(quantity.name());
    REQUIRE(pooled.has_value() == can_pool);
    if (!pooled) continue;
    ++pooled_quantities;
    const double mean = pooled->estimate.mean;
    CHECK(pooled->estimate.between_study_sd > 0.0);
    CHECK(pooled->estimate.between_limb_sd > 0.0);
    CHECK_FALSE(pooled->estimate.evidence.empty());
    const auto limb = pooled->limb_interval(0.9);
    CHECK(limb.low < mean);
    CHECK(mean < limb.high);
    double low = mean;
    double high = mean;
    for (const StudyEffect& s : pooled->studies) {
      low = std::min(low, s.mean_mm);
      high = std::max(high, s.mean_mm);
    }
    CHECK(mean >= low - 1e-9);
    CHECK(mean <= high + 1e-9);
  }
  CHECK(pooled_quantities > 380);
}

TEST_CASE("stand-ins never reach a pooled value", "[evidence]") {
  for (const Quantity& quantity : shipped_quantities()) {
    const auto pooled = pool(quantity, spread());
    if (!pooled) continue;
    for (const Measurement& row : quantity.rows) {
      if (row.left_out.empty()) continue;
      CHECK(std::ranges::count(pooled->estimate.evidence, row.id) == 0);
    }
  }
}

TEST_CASE("two contradicting studies are shown as contradicting", "[evidence]") {
  const auto pooled =
      pool(quantity_called("palmar cutaneous branch of ulnar nerve, origin, from pisiform, axial"),
           spread());
  REQUIRE(pooled);
  REQUIRE(pooled->studies.size() == 2);
  CHECK(pooled->reml.i_squared > 0.95);
  CHECK(pooled->estimate.between_study_sd > pooled->floor_tau_mm);
  const auto new_study = pooled->mixture.new_study_interval(0.9);
  CHECK(new_study.high - new_study.low > 100.0);
}

TEST_CASE("a study cited under two texts counts once", "[evidence]") {
  const auto pooled =
      pool(quantity_called(
               "dorsal branch of ulnar nerve, origin, from ulnar head, point not stated, axial"),
           spread());
  REQUIRE(pooled);
  CHECK(pooled->studies.size() == 1);
}

TEST_CASE("the spread model keeps near what it was measured to be", "[evidence]") {
  // Guards the tables and the estimator together: docs/evidence.md quotes these.
  CHECK(spread().rows_with_spread() > 200);
  CHECK(spread().quantities_with_studies() >= 35);
  CHECK(spread().between_limbs().at(50.0) == Approx(7.9).epsilon(0.25));
  CHECK(spread().between_studies().at(50.0) == Approx(8.4).epsilon(0.35));
  CHECK(spread().study_intraclass_correlation() > 0.0);
  CHECK(spread().study_intraclass_correlation() < 0.6);
}

// For every quantity of two or more studies, each study is left out of the whole table, the spread
// model included, and the 90 % interval of the rest is held against it.
TEST_CASE("the floor makes the interval of the others cover a study that was left out",
          "[evidence]") {
  int studies = 0;
  int covered = 0;
  int covered_without_floor = 0;
  double limbs_covered = 0.0;
  for (const Quantity& quantity : shipped_quantities()) {
    if (quantity.measure != Measure::distance_mm) continue;
    const auto effects = study_effects(quantity, spread().imputation());
    if (effects.size() < 2) continue;
    for (const StudyEffect& left_out : effects) {
      const auto model = SpreadModel::estimate(shipped_quantities(), left_out.study);
      Quantity rest = quantity;
      std::erase_if(rest.rows, [&](const auto& row) { return row.study == left_out.study; });
      const auto pooled = pool(rest, model);
      REQUIRE(pooled);
      ++studies;
      const auto interval = pooled->mixture.new_value_interval(0.9, left_out.standard_error_mm);
      covered += interval.low <= left_out.mean_mm && left_out.mean_mm <= interval.high;
      const double spread_without_floor =
          std::hypot(pooled->reml.standard_error, std::sqrt(pooled->reml.tau_squared),
                     left_out.standard_error_mm);
      covered_without_floor +=
          std::abs(left_out.mean_mm - pooled->reml.mean) < 1.645 * spread_without_floor;
      const auto limb = pooled->limb_interval(0.9);
      const auto below = [&](double x) {
        return 0.5 * std::erfc((left_out.mean_mm - x) / (left_out.sd_mm * std::sqrt(2.0)));
      };
      limbs_covered += below(limb.high) - below(limb.low);
    }
  }
  INFO(covered << " of " << studies << " means, " << covered_without_floor << " without floor, "
               << limbs_covered / studies << " of limbs");
  REQUIRE(studies >= 80);
  CHECK(covered >= 0.85 * studies);
  CHECK(covered <= 0.95 * studies);
  CHECK(limbs_covered >= 0.85 * studies);
  CHECK(limbs_covered <= 0.95 * studies);
  CHECK(covered_without_floor < 0.6 * studies);
}
