#include "models/evidence/share_quantity.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

using namespace endplate::evidence;

namespace {

const std::vector<ShareQuantity>& shares() {
  static const auto all = [] {
    const auto package = DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
    REQUIRE(package.has_value());
    return share_quantities(*package);
  }();
  return all;
}

const ShareQuantity& share_called(const std::string& table, const std::string& name) {
  const auto found = std::ranges::find_if(
      shares(), [&](const auto& q) { return q.table == table && q.name == name; });
  REQUIRE(found != shares().end());
  return *found;
}

}  // namespace

TEST_CASE("one share has one scale", "[evidence]") {
  for (const ShareQuantity& quantity : shares()) {
    CHECK(quantity.scale.has_value() == (quantity.table == "outcomes"));
  }
}

TEST_CASE("the counts of dissections pool, the figure of a review stands aside", "[evidence]") {
  const auto& dissected = share_called("variants", "Martin-Gruber by dissection");
  const auto pooled = pool(dissected, 0.5, 0.9);
  REQUIRE(pooled);
  CHECK(pooled->studies.size() == 3);
  CHECK(pooled->pooled.share > 17.0 / 72 - 0.06);
  CHECK(pooled->pooled.share < 19.0 / 40);

  const auto& reviewed = share_called("variants", "Martin-Gruber anastomosis");
  CHECK_FALSE(pool(reviewed, 0.5, 0.9));
  CHECK_THAT(reviewed.rows.front().left_out, Catch::Contains("review"));
}

TEST_CASE("an outcome is pooled by its printed count, not by the model's figure", "[evidence]") {
  // 190 of 207 stand beside a random-effects estimate of 95.6 %.
  const auto found = std::ranges::find_if(shares(), [](const ShareQuantity& q) {
    return q.rows.front().id == "p_m3_single_fasc_sneiders19";
  });
  REQUIRE(found != shares().end());
  CHECK(found->scale == OutcomeScale::m3);
  const auto pooled = pool(*found, 0.5, 0.9);
  REQUIRE(pooled);
  CHECK(pooled->pooled.share == Approx(190.0 / 207.0));
}

TEST_CASE("a row whose number belongs to the whole series is not pooled", "[evidence]") {
  for (const ShareQuantity& quantity : shares()) {
    for (const ShareRow& row : quantity.rows) {
      if (row.id != "rec_ulnar_high_roganovic04") continue;
      CHECK_THAT(row.left_out, Catch::Contains("whole series"));
    }
  }
}

TEST_CASE("the spread between studies of shares is estimated from those with two studies",
          "[evidence]") {
  const double tau = share_floor_tau(shares());
  CHECK(tau > 0.3);
  CHECK(tau < 2.5);
}

// The binomial error of the left-out study is allowed for by the normal approximation at the ends
// of the interval.
TEST_CASE("the floor lets the interval of the others cover most shares left out", "[evidence]") {
  int left_out = 0;
  int covered = 0;
  int covered_without_floor = 0;
  for (const ShareQuantity& quantity : shares()) {
    const auto whole = pool(quantity, 1.0, 0.9);
    if (!whole || whole->counts.size() < 2) continue;
    for (std::size_t i = 0; i < whole->counts.size(); ++i) {
      const auto of_study = [&](const ShareRow& row) { return row.study == whole->studies[i]; };
      auto others = shares();
      for (ShareQuantity& other : others) std::erase_if(other.rows, of_study);
      ShareQuantity rest = quantity;
      std::erase_if(rest.rows, of_study);
      const Count count = whole->counts[i];
      const auto covers = [&](double floor_tau) {
        const Interval found = pool(rest, floor_tau, 0.9)->pooled.new_study_interval;
        const auto error = [&](double p) { return 1.645 * std::sqrt(p * (1.0 - p) / count.n); };
        const double share = count.events / count.n;
        return share >= found.low - error(found.low) && share <= found.high + error(found.high);
      };
      ++left_out;
      covered += covers(share_floor_tau(others));
      covered_without_floor += covers(0.0);
    }
  }
  INFO(covered << " of " << left_out << ", " << covered_without_floor << " without floor");
  REQUIRE(left_out >= 30);
  CHECK(covered >= 0.78 * left_out);
  CHECK(covered_without_floor < covered - 4);
}
