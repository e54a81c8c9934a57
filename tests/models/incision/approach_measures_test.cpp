// How rows of approaches.csv are taken, on made limbs and on the shipped tables.
#include "models/incision/approach_measures.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "../limb/limb_fixture.hpp"

namespace endplate::incision {
namespace {

const limb::Atlas& atlas() {
  static const auto fitted = limb::Atlas::fitted(limb::own_tables());
  REQUIRE(fitted.has_value());
  return *fitted;
}

const std::vector<ApproachMeasure>& measures() {
  static const auto read = approach_measures(limb::own_tables(), atlas());
  REQUIRE(read.has_value());
  return *read;
}

const ApproachMeasure& measure(std::string_view row) {
  return *std::ranges::find_if(measures(),
                               [&](const ApproachMeasure& m) { return m.published.row == row; });
}

double taken(const ApproachMeasure& m) {
  const auto joints = limb::LimbJoints::from(limb::own_tables()).value();
  const auto envelope = limb::BodyEnvelope::from(limb::own_tables()).value();
  return taken_mm(m, atlas(), joints, envelope).value();
}

}  // namespace

TEST_CASE("a printed spread or range judges a computed distance", "[incision]") {
  Published row;
  CHECK_FALSE(row.holds(10.0).has_value());
  row.mean_mm = 12.0;
  CHECK_FALSE(row.holds(10.0).has_value());
  row.min_mm = 9.0;
  row.max_mm = 30.0;
  CHECK(row.holds(29.0) == true);
  CHECK(row.holds(8.0) == false);
  row.sd_mm = 2.0;  // outranks the range
  CHECK(row.holds(14.0) == true);
  CHECK(row.holds(14.1) == false);
}

TEST_CASE("no row of the ledger is lost", "[incision]") {
  std::set<std::string> known;
  for (const ApproachMeasure& m : measures()) CHECK(known.insert(m.published.row).second);
  for (const evidence::Row row : limb::own_tables().table("approach_measures_left_out")) {
    CHECK(known.insert(std::string(row.text("row"))).second);
  }
  CHECK(known.size() == limb::own_tables().table("approaches").size());
  CHECK(measures().size() >= 60);
}

// A study counts as the same by its key, its identifier or its page; the studies of the fit are
// those of course_measure_rows.csv.
TEST_CASE("a row whose study is in the fit says under which name", "[incision]") {
  const auto plain = [](std::string_view id) {
    std::string text;
    for (const char c : id) text += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    for (const std::string_view prefix : {"pmid ", "pmc", "doi:"}) {
      if (text.starts_with(prefix)) text.erase(0, prefix.size());
    }
    return text;
  };
  std::set<std::string, std::less<>> in_fit;
  for (const evidence::Row row : limb::own_tables().table("course_measure_rows")) {
    in_fit.emplace(row.text("row"));
  }
  for (const evidence::Row row : limb::own_tables().table("approaches")) {
    const auto m = std::ranges::find_if(measures(), [&](const ApproachMeasure& each) {
      return each.published.row == row.text("id");
    });
    if (m == measures().end()) continue;
    INFO(row.text("id"));
    for (const evidence::Row other : limb::own_tables().table("landmark_distances")) {
      if (!in_fit.contains(other.text("id"))) continue;
      const bool same = row.text("study") == other.text("study") ||
                        (!row.text("url").empty() && row.text("url") == other.text("url")) ||
                        (!row.text("doi_or_pmid").empty() &&
                         plain(row.text("doi_or_pmid")) == plain(other.text("doi_or_pmid")));
      if (same) CHECK(m->fit_study == other.text("study"));
    }
    // Tracks are taken by the full fit alone.
    if (m->track) CHECK(m->fit_study.empty());
  }
}

TEST_CASE("a measure of the fit is taken as the fit takes it", "[incision]") {
  for (const evidence::Row row : limb::own_tables().table("fitted_measures")) {
    if (row.text("measure") != "mcn.pc~coracoid-process-tip") continue;
    CHECK(taken(measure("AP_013")) == Approx(*row.number("model_mm")).margin(0.02));
    // Along the arm alone, so it grows and shrinks with it.
    CHECK(taken(measure("AP_017")) < taken(measure("AP_013")));
  }
}

TEST_CASE("an offset moves the place from which it is measured", "[incision]") {
  // Three marks on the rim of the radial head: the one in front of the nerve's side lies nearer.
  ApproachMeasure m = measure("AP_208");
  m.from_landmark_mm = Eigen::Vector3d(3.0, 4.0, 0.0);
  const double moved = taken(m);
  m.from_landmark_mm.setZero();
  CHECK(std::abs(moved - taken(m)) <= 5.0 + 1e-6);  // the triangle's inequality
  CHECK(moved != Approx(taken(m)).margin(0.1));
}

// Tracks start at the skin: the nerve of the portal's own rows lies within the limb's breadth.
TEST_CASE("tracks are sampled over limbs and the same for the same seed", "[incision]") {
  const auto tree = anatomy::NerveTree::from(limb::own_tables()).value();
  const std::vector<ApproachMeasure> some{measure("AP_058"), measure("AP_013")};
  const auto one = track_samples_mm(limb::own_tables(), tree, some, 40, 3);
  const auto two = track_samples_mm(limb::own_tables(), tree, some, 40, 3);
  REQUIRE(one.has_value());
  REQUIRE(two.has_value());
  CHECK(*one == *two);
  CHECK(one->at(0).size() == 40);
  CHECK(one->at(1).empty());
  for (const double mm : one->at(0)) CHECK((mm >= 0.0 && mm < 80.0));
}

}  // namespace endplate::incision
