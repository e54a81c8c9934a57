// Sizes of limbs against published tables that the size model was not built from, and against the
// figures it was built from as they stand in anthropometry.csv.
#include <array>
#include <cmath>
#include <map>

#include "../models/limb/limb_fixture.hpp"
#include "models/limb/segment_frames.hpp"

using namespace endplate;
using namespace endplate::limb;
using casefile::Sex;

namespace {

evidence::Row row_of(const std::string& id) {
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("id") == id) return row;
  }
  FAIL("no row " + id);
  throw std::logic_error(id);
}

LimbSize child(Sex sex, double age_years) {
  casefile::Limb limb;
  limb.sex = sex;
  limb.age_years = age_years;
  return size_of(limb);
}

LimbSize of_stature(Sex sex, double stature_mm) {
  casefile::Limb limb = adult(sex);
  limb.stature_mm = stature_mm;
  return size_of(limb);
}

}  // namespace

// Gordon et al. 2014, NATICK/TR-15/007: 4082 men, 1986 women.
TEST_CASE("adults have the survey's medians, means and spreads", "[published][limb]") {
  struct Case {
    const char* measure;
    const char* man;
    const char* woman;
  };
  constexpr std::array cases{
      Case{"acromion-radiale length", "AN_008", "AN_035"},
      Case{"radiale-stylion length", "AN_010", "AN_037"},
      Case{"distal wrist crease to middle fingertip", "AN_013", "AN_040"},
      Case{"palm length", "AN_014", "AN_041"}, Case{"shoulder-elbow length", "AN_009", "AN_036"},
      Case{"forearm-hand length", "AN_011", "AN_038"},
      Case{"biacromial breadth", "AN_002", "AN_029"}, Case{"hand breadth", "AN_015", "AN_042"},
      Case{"wrist circumference", "AN_017", "AN_044"},
      Case{"forearm circumference", "AN_019", "AN_046"},
      Case{"biceps circumference", "AN_018", "AN_045"},
      // Sums of two and three segments test the derived correlations.
      Case{"acromion-stylion length", "AN_056", "AN_060"},
      Case{"upper limb length", "AN_057", "AN_061"}};
  for (const Case& c : cases) {
    for (const Sex sex : {Sex::male, Sex::female}) {
      const evidence::Row row = row_of(sex == Sex::male ? c.man : c.woman);
      const Summary summary = size_of(adult(sex)).summary(c.measure);
      INFO(c.measure << " " << row.text("id"));
      CHECK(summary.mean == Approx(row.number("mean_mm").value()).margin(0.2));
      CHECK(summary.p50 == Approx(row.number("p50_mm").value()).epsilon(0.01));
      CHECK(summary.sd == Approx(row.number("sd_mm").value()).epsilon(0.015));
      CHECK(summary.p05 == Approx(row.number("p05_mm").value()).epsilon(0.02));
      CHECK(summary.p95 == Approx(row.number("p95_mm").value()).epsilon(0.02));
    }
  }
}

// The same survey's forearm-hand length was not used to split the hand's correlation between arm
// and forearm, so its residual spread (14.4 and 15.4 mm) tests that split.
TEST_CASE("forearm plus hand spread about stature like the measured forearm-hand length",
          "[published][limb]") {
  for (const auto& [sex, expected_mm] :
       {std::pair{Sex::male, 14.4}, std::pair{Sex::female, 15.4}}) {
    const LimbSize size = of_stature(sex, sex == Sex::male ? 1756.0 : 1628.0);
    const auto& words = size.vocabulary();
    const Eigen::VectorXd both = words.at("radiale-stylion length").weights +
                                 words.at("distal wrist crease to middle fingertip").weights;
    CHECK(size.sd_mm(both) == Approx(expected_mm).epsilon(0.03));
  }
}

// Subgroups of the survey by self-reported race: stature alone predicts the mean of each within
// 1.3 residual spreads. The forearms of one subgroup are the furthest off (12 mm long).
TEST_CASE("stature predicts the subgroups' means within the residual spread", "[published][limb]") {
  const std::map<std::string, std::string> modelled{
      {"upper arm length (acromion-radiale)", "acromion-radiale length"},
      {"forearm length (radiale-stylion)", "radiale-stylion length"},
      {"hand length", "distal wrist crease to middle fingertip"}};
  std::map<std::string, double> stature_mm;
  int compared = 0;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("population").find("self-reported") == std::string_view::npos) continue;
    const std::string group = std::string(row.text("population")) + std::string(row.text("sex"));
    if (row.text("measure") == "stature") stature_mm[group] = row.number("mean_mm").value();
    const auto found = modelled.find(std::string(row.text("measure")));
    if (found == modelled.end()) continue;
    const Sex sex = row.text("sex") == "male" ? Sex::male : Sex::female;
    const LimbSize size = of_stature(sex, stature_mm.at(group));
    const double off_mm = size.mean_mm(found->second) - row.number("mean_mm").value();
    INFO(group << " " << found->second << " off by " << off_mm);
    CHECK(std::abs(off_mm) < 1.3 * size.sd_mm(found->second));
    ++compared;
  }
  CHECK(compared == 24);
}

// Drillis and Contini 1966, as printed in Winter's Biomechanics (recalled; rows AN_166 to AN_168):
// 0.186, 0.146 and 0.108 of stature. Their shoulder stands at 0.818 of stature (AN_171), which is
// the height of the acromion in the army survey (0.820, AN_004), so the arm is compared from there.
TEST_CASE("segments are near the classical fractions of stature", "[published][limb]") {
  for (const Sex sex : {Sex::male, Sex::female}) {
    const double stature_mm = sex == Sex::male ? 1756.0 : 1628.0;
    const LimbSize size = of_stature(sex, stature_mm);
    const auto check = [&](const char* measure, const char* id, double tolerance) {
      INFO(measure);
      CHECK(size.mean_mm(measure) / stature_mm ==
            Approx(row_of(id).number("ratio_to_stature").value()).epsilon(tolerance));
    };
    check("acromion to lateral epicondyle", "AN_166", 0.03);
    check("interepicondylar line to bistyloid line", "AN_167", 0.10);
    check("distal wrist crease to middle fingertip", "AN_168", 0.04);
  }
}

// Snyder et al. 1977, individual records: elbow-hand length by age, mean and spread (read).
TEST_CASE("children have the published elbow-hand lengths", "[published][limb]") {
  int compared = 0;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("measure") != "elbow-hand length" || row.text("sex") == "both") continue;
    const double age_years = std::stod(std::string(row.text("age_group"))) + 0.5;
    if (age_years >= 18.0) continue;
    const Sex sex = row.text("sex") == "male" ? Sex::male : Sex::female;
    const LimbSize size = child(sex, age_years);
    INFO(row.text("id"));
    CHECK(size.mean_mm("forearm-hand length") == Approx(row.number("mean_mm").value()));
    CHECK(size.sd_mm("forearm-hand length") == Approx(row.number("sd_mm").value()).epsilon(0.02));
    ++compared;
  }
  CHECK(compared == 32);
}

// Snyder et al. 1977 print for all ages: elbow-hand length = -24.3 + 0.2862 stature (boys, residual
// SD 11.1), -9.8 + 0.2712 stature (girls, 12.1). The model's step from stature, made of adult
// correlations, was not fitted to it.
TEST_CASE("a child's stature moves the forearm and hand as the published regression",
          "[published][limb]") {
  for (const Sex sex : {Sex::male, Sex::female}) {
    for (const double age_years : {4.0, 7.0, 10.0, 13.0}) {
      casefile::Limb limb;
      limb.sex = sex;
      limb.age_years = age_years;
      for (const double taller : {-0.06, 0.0, 0.06}) {
        limb.stature_mm = size_of(limb).moments().mean[0] * (1.0 + taller);
        const double printed_mm =
            sex == Sex::male ? -24.3 + 0.2862 * *limb.stature_mm : -9.8 + 0.2712 * *limb.stature_mm;
        INFO(age_years << " y, " << *limb.stature_mm);
        const LimbSize size = size_of(limb);
        CHECK(std::abs(size.mean_mm("forearm-hand length") - printed_mm) <
              (sex == Sex::male ? 11.1 : 12.1));
        limb.stature_mm.reset();
      }
    }
  }
}

// Fryar et al. 2025, Vital Health Stat 3(50), table 17 (read): upper arm length, acromion to
// olecranon, of another survey half a century later. Compared as a share of the adult of its
// survey.
TEST_CASE("children's arms are the published share of an adult's", "[published][limb]") {
  std::map<std::string, double> adult_mm;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("measure") == "upper arm length (survey)" &&
        row.text("age_group").starts_with("adult")) {
      adult_mm[std::string(row.text("sex"))] = row.number("mean_mm").value();
    }
  }
  int compared = 0;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("measure") != "upper arm length (survey)" ||
        row.text("age_group").starts_with("adult")) {
      continue;
    }
    const double age_years = std::stod(std::string(row.text("age_group"))) + 1.0;
    if (age_years >= 18.0) continue;
    const Sex sex = row.text("sex") == "male" ? Sex::male : Sex::female;
    const double share = child(sex, age_years).mean_mm("shoulder-elbow length") /
                         size_of(adult(sex)).mean_mm("shoulder-elbow length");
    const double published =
        row.number("mean_mm").value() / adult_mm.at(std::string(row.text("sex")));
    INFO(row.text("id") << " " << share << " " << published);
    CHECK(share == Approx(published).epsilon(0.08));
    ++compared;
  }
  CHECK(compared == 16);
}

// Growth curves of the World Health Organization (2006; de Onis et al. 2007; AN_477 to AN_514,
// read): the model takes their spread and the length at birth, not their means. Body length at
// 0 to 18 months is taken lying, here and there.
TEST_CASE("children are as tall as the growth curves of the World Health Organization",
          "[published][limb]") {
  int compared = 0;
  double farthest = 0.0;
  for (const evidence::Row row : own_tables().table("limb_growth_spread")) {
    const double age_years = row.number("age_years").value();
    if (age_years == 0.0) continue;
    const Sex sex = row.text("sex") == "male" ? Sex::male : Sex::female;
    const LimbSize size = child(sex, age_years);
    const double off = size.moments().mean[0] / row.number("mean_mm").value() - 1.0;
    INFO(row.text("id") << " " << off);
    CHECK(std::abs(off) < (age_years < 0.1 ? 0.05 : 0.035));
    farthest = std::max(farthest, std::abs(off));
    ++compared;
  }
  CHECK(compared == 36);
  INFO(farthest);
  CHECK(farthest > 0.01);  // other children than the model's
}

// Maresh 1970 (recalled; AN_234 to AN_255): length of the shaft of the humerus without its ends,
// so the growth of the two is compared, not their size.
TEST_CASE("a child's arm grows as the shaft of the humerus", "[published][limb]") {
  std::map<std::pair<std::string, double>, double> shaft_mm;
  for (const evidence::Row row : own_tables().table("anthropometry")) {
    if (row.text("measure") != "humerus diaphyseal length") continue;
    shaft_mm[{std::string(row.text("sex")), std::stod(std::string(row.text("age_group")))}] =
        row.number("mean_mm").value();
  }
  REQUIRE(shaft_mm.size() == 22);
  for (const Sex sex : {Sex::male, Sex::female}) {
    const std::string word = sex == Sex::male ? "male" : "female";
    for (const auto& [from, to] : {std::pair{0.5, 2.0}, std::pair{2.0, 5.0}, std::pair{4.0, 8.0}}) {
      const double shaft = shaft_mm.at({word, to}) - shaft_mm.at({word, from});
      const double arm = child(sex, to).mean_mm("shoulder-elbow length") -
                         child(sex, from).mean_mm("shoulder-elbow length");
      INFO(word << " " << from << " to " << to << " years: shaft " << shaft << ", arm " << arm);
      CHECK(arm == Approx(shaft).epsilon(0.20));
    }
  }
}

// Pritchett 1988 (read; AN_214 to AN_225): radiographs of 244 children from 7 years to maturity,
// 15 years in girls and 17 in boys.
TEST_CASE("arm and forearm grow from seven years to maturity as on radiographs",
          "[published][limb]") {
  const auto per_year = [](Sex sex, const char* measure) {
    const double mature_years = sex == Sex::male ? 17.0 : 15.0;
    return (child(sex, mature_years).mean_mm(measure) - child(sex, 7.0).mean_mm(measure)) /
           (mature_years - 7.0);
  };
  const auto published = [](const char* id) { return row_of(id).number("mean_mm").value(); };
  CHECK(per_year(Sex::female, "shoulder-elbow length") ==
        Approx(published("AN_222")).epsilon(0.12));
  CHECK(per_year(Sex::male, "shoulder-elbow length") == Approx(published("AN_223")).epsilon(0.12));
  CHECK(per_year(Sex::female, "radiale-stylion length") ==
        Approx(published("AN_225")).epsilon(0.12));
  const auto share = [](Sex sex, double age_years) {
    const LimbSize size = child(sex, age_years);
    return size.mean_mm("radiale-stylion length") / size.moments().mean[0];
  };
  const auto ratio = [](const char* id) { return row_of(id).number("ratio_to_stature").value(); };
  // Printed to two digits.
  CHECK(share(Sex::female, 7.0) == Approx(ratio("AN_218")).margin(0.013));
  CHECK(share(Sex::female, 15.0) == Approx(ratio("AN_219")).margin(0.010));
  CHECK(share(Sex::male, 7.0) == Approx(ratio("AN_220")).margin(0.010));
  CHECK(share(Sex::male, 17.0) == Approx(ratio("AN_221")).margin(0.010));
}

// Other adults than the army's (read): civilians of the USA (AN_177 to AN_180, medians) and Turkish
// volunteers of both sexes (AN_211, 186.6 mm, SD 13.2, n 100).
TEST_CASE("other adults have the arms and hands that the model expects", "[published][limb]") {
  struct Case {
    const char* measure;
    const char* id;
    Sex sex;
  };
  constexpr std::array cases{Case{"shoulder-elbow length", "AN_177", Sex::male},
                             Case{"shoulder-elbow length", "AN_178", Sex::female},
                             Case{"forearm-hand length", "AN_179", Sex::male},
                             Case{"forearm-hand length", "AN_180", Sex::female}};
  for (const Case& c : cases) {
    INFO(c.id);
    CHECK(size_of(adult(c.sex)).summary(c.measure).p50 ==
          Approx(row_of(c.id).number("p50_mm").value()).epsilon(0.03));
  }
  casefile::Limb either;
  either.age_years = 30.0;
  const Summary hand = size_of(either).summary("distal wrist crease to middle fingertip");
  CHECK(hand.mean == Approx(row_of("AN_211").number("mean_mm").value()).epsilon(0.01));
  CHECK(hand.sd == Approx(row_of("AN_211").number("sd_mm").value()).epsilon(0.15));
}

// Segment factors of the ledger limb against the survey's medians.
TEST_CASE("men and women are scaled against the ledger limb as their medians say",
          "[published][limb]") {
  const SegmentScale man = size_of(adult(Sex::male)).mean_scale();
  CHECK(man.arm == Approx(1.07).margin(0.006));
  CHECK(man.forearm == Approx(1.14).margin(0.006));
  CHECK(man.hand == Approx(1.07).margin(0.006));
  CHECK(man.breadth > 1.03);
  const SegmentScale woman = size_of(adult(Sex::female)).mean_scale();
  CHECK(woman.arm == Approx(0.99).margin(0.006));
  CHECK(woman.forearm == Approx(1.02).margin(0.006));
  CHECK(woman.hand == Approx(1.01).margin(0.006));
  CHECK(woman.breadth < 0.97);
}

// A screening chart of the trade (ulna length for stature, recalled): a man under 65 of 1760 mm has
// an ulna of 270 mm, a woman of 1630 mm one of 245 mm.
TEST_CASE("the ulna is near the chart used to estimate stature at the bedside",
          "[published][limb]") {
  CHECK(of_stature(Sex::male, 1760.0).mean_mm("olecranon to ulnar styloid") ==
        Approx(270.0).epsilon(0.05));
  CHECK(of_stature(Sex::female, 1630.0).mean_mm("olecranon to ulnar styloid") ==
        Approx(245.0).epsilon(0.05));
}
