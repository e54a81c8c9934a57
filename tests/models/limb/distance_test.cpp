#include "models/limb/distance.hpp"

#include <catch2/catch.hpp>
#include <set>

#include "models/limb/fit_summary.hpp"

using namespace endplate;

namespace {

const evidence::DataPackage& package() {
  static const auto read = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(read);
  return *read;
}

limb::DistanceAnswer ask(const limb::DistanceQuery& query, const casefile::Limb& given = {}) {
  auto answer = limb::distances(package(), given, query);
  REQUIRE(answer);
  return *answer;
}

}  // namespace

TEST_CASE("at least 200 nerve points have an interval and sources", "[limb][distance]") {
  std::set<std::pair<std::string, std::string>> points;
  for (const limb::Distance& d : ask({}).distances) {
    CAPTURE(d.nerve, d.point, d.landmark);
    CHECK_FALSE(d.sources.empty());
    if (d.provenance == evidence::Provenance::assumed) CHECK_FALSE(d.assumed.empty());
    CHECK(d.mean_low_mm < d.mean_high_mm);
    int kinds = 0;
    for (const auto* summary :
         {&d.along_nerve_mm, &d.straight_mm, &d.along_limb_mm, &d.across_limb_mm}) {
      if (!summary->has_value()) continue;
      ++kinds;
      CHECK((*summary)->p05 < (*summary)->mean);
      CHECK((*summary)->mean < (*summary)->p95);
      // One limb is less certain than the mean of many.
      CHECK((*summary)->p95 - (*summary)->p05 > d.mean_high_mm - d.mean_low_mm);
    }
    CHECK(kinds >= 1);
    points.emplace(d.nerve, d.point);
  }
  CHECK(points.size() >= 200);
}

TEST_CASE(
    "four in five tested quantities are reproduced within one SD between limbs, 95 % within two",
    "[limb][distance]") {
  int tested = 0;
  int one = 0;
  int two = 0;
  const evidence::Table& fitted = package().table("fitted_measures");
  CHECK(fitted.size() >= 200);
  for (const evidence::Row row : fitted) {
    if (row.text("support") != "tested") continue;
    const double off = std::abs(*row.number("model_mm") - *row.number("pooled_mm"));
    ++tested;
    one += off <= *row.number("limb_sd_mm") ? 1 : 0;
    two += off <= 2.0 * *row.number("limb_sd_mm") ? 1 : 0;
  }
  CAPTURE(tested, one, two);
  CHECK(one >= 0.80 * tested);
  CHECK(two >= 0.95 * tested);
}

TEST_CASE("an answer lies between the model and the studies, nearer to the more precise",
          "[limb][distance]") {
  const limb::FitSummary fit = limb::FitSummary::from(package());
  const auto answer = ask({"radial nerve", "elbow joint line", "bifurcation"});
  REQUIRE(answer.distances.size() == 1);
  const limb::FittedMeasure& fitted = fit.measures.at("rad.bif~elbow-joint-line");
  const double given = -answer.distances.front().along_limb_mm->mean;  // printed as proximal
  CHECK(answer.distances.front().direction == "proximal");
  CHECK(given >= std::min(fitted.model_mm, fitted.pooled_mm) - 1e-6);
  CHECK(given <= std::max(fitted.model_mm, fitted.pooled_mm) + 1e-6);
}

TEST_CASE("a point that no study measured from a landmark is the model's and says so",
          "[limb][distance]") {
  const auto answer = ask({"deep branch of radial nerve", "radial styloid", "arcade of Frohse"});
  REQUIRE(answer.distances.size() == 1);
  const limb::Distance& d = answer.distances.front();
  CHECK(d.basis == limb::Basis::model);
  CHECK(d.provenance == evidence::Provenance::assumed);
  CHECK_FALSE(d.assumed.empty());
  CHECK_FALSE(d.sources.empty());
  CHECK(d.direction == "proximal");
}

TEST_CASE("a taller patient's nerves branch farther from the epicondyle", "[limb][distance]") {
  casefile::Limb small;
  small.sex = casefile::Sex::female;
  small.age_years = 30;
  small.stature_mm = 1500;
  casefile::Limb tall = small;
  tall.sex = casefile::Sex::male;
  tall.stature_mm = 1950;
  const limb::DistanceQuery septum{"radial nerve", "lateral epicondyle", "septum"};
  const double near = ask(septum, small).distances.front().along_limb_mm->mean;
  const double far = ask(septum, tall).distances.front().along_limb_mm->mean;
  CHECK(far > 1.15 * near);
}

TEST_CASE("the left limb has the same distances as the right", "[limb][distance]") {
  casefile::Limb left;
  left.side = Side::left;
  const auto mine = ask({}, left).distances;
  const auto theirs = ask({}).distances;
  REQUIRE(mine.size() == theirs.size());
  for (std::size_t i = 0; i < mine.size(); ++i) {
    if (mine[i].along_limb_mm) {
      CHECK(mine[i].along_limb_mm->mean == Approx(theirs[i].along_limb_mm->mean).margin(1e-9));
    }
  }
}

TEST_CASE("what no table knows is refused", "[limb][distance]") {
  const auto answer = limb::distances(package(), {}, {std::nullopt, std::nullopt, "no such point"});
  REQUIRE_FALSE(answer);
  CHECK(answer.error().fault == Fault::outside_model);
}
