#include "models/limb/distance.hpp"

#include <catch2/catch.hpp>
#include <cmath>
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

namespace {

casefile::Limb with_septum_at(double offset_mm, double error_mm) {
  casefile::Limb limb;
  limb.ultrasound = {
      {"radial nerve", "pierces: lateral intermuscular septum",
       casefile::AtLandmark{"lateral epicondyle", offset_mm, casefile::Toward::proximal},
       error_mm}};
  return limb;
}

const Summary& along(const limb::DistanceAnswer& answer) {
  return *answer.distances.front().along_limb_mm;
}

}  // namespace

TEST_CASE("a distance that ultrasound read is the precision-weighted mean of both",
          "[limb][distance][ultrasound]") {
  const limb::DistanceQuery septum{"radial nerve", "lateral epicondyle", "septum"};
  const Summary before = along(ask(septum));
  // The points say a little of the limb's size too, and with it of the mean; so little error that
  // only the reading counts.
  const Summary sure = along(ask(septum, with_septum_at(130.0, 0.1)));
  CHECK(sure.mean == Approx(130.0).margin(0.1));
  CHECK(sure.sd == Approx(0.1).epsilon(0.05));
  const double error = 8.0;
  const Summary after = along(ask(septum, with_septum_at(130.0, error)));
  const double weight = before.sd * before.sd / (before.sd * before.sd + error * error);
  CHECK(after.sd == Approx(error * std::sqrt(weight)).epsilon(0.03));
  CHECK(after.mean == Approx(std::lerp(before.mean, 130.0, weight)).margin(1.0));
}

TEST_CASE("a found point moves and narrows its neighbours on the course, most the nearest",
          "[limb][distance][ultrasound]") {
  // The size is known, so that nothing else moves.
  casefile::Limb found = with_septum_at(150.0, 3.0);
  found.measured_mm = {{"arm length", 300.0}, {"forearm length", 245.0}, {"hand length", 180.0}};
  casefile::Limb unseen = found;
  unseen.ultrasound.clear();
  const auto moved = [&](const limb::DistanceQuery& query) {
    const auto before = ask(query, unseen);
    const auto after = ask(query, found);
    CHECK(along(after).sd <= along(before).sd + 1e-9);
    const double sign = before.distances.front().direction == "proximal" ? 1.0 : -1.0;
    return sign * (along(after).mean - along(before).mean);
  };
  const double itself = moved({"radial nerve", "lateral epicondyle", "septum"});
  const double other_landmark = moved({"radial nerve", "olecranon tip", "septum"});
  const double near =
      moved({"posterior antebrachial cutaneous nerve", "lateral epicondyle", "origin"});
  const double far = moved({"radial nerve", "elbow joint line", "bifurcation"});
  CHECK(itself > 20.0);
  CHECK(other_landmark > 0.7 * itself);
  CHECK(near > 0.5);
  CHECK(near < other_landmark);
  CHECK(far < near);
  CHECK(far > 0.0);
  // Another course is left alone.
  CHECK(std::abs(moved({"dorsal branch of ulnar nerve", "ulnar styloid", ""})) < 1e-6);
}

TEST_CASE("what ultrasound found is mirrored with the limb", "[limb][distance][ultrasound]") {
  const limb::DistanceQuery radial{"radial nerve", std::nullopt, ""};
  casefile::Limb left = with_septum_at(130.0, 3.0);
  left.side = Side::left;
  const auto mine = ask(radial, left).distances;
  const auto theirs = ask(radial, with_septum_at(130.0, 3.0)).distances;
  REQUIRE(mine.size() == theirs.size());
  for (std::size_t i = 0; i < mine.size(); ++i) {
    if (!mine[i].along_limb_mm) continue;
    CHECK(mine[i].along_limb_mm->mean == Approx(theirs[i].along_limb_mm->mean).margin(1e-9));
    CHECK(mine[i].along_limb_mm->sd == Approx(theirs[i].along_limb_mm->sd).margin(1e-9));
  }
}

TEST_CASE("what no table knows is refused", "[limb][distance]") {
  const auto answer = limb::distances(package(), {}, {std::nullopt, std::nullopt, "no such point"});
  REQUIRE_FALSE(answer);
  CHECK(answer.error().fault == Fault::outside_model);
}
