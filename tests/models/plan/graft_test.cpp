// Cables, lengths and donors of a graft.
#include <algorithm>

#include "fixture.hpp"
#include "models/plan/graft.hpp"

using namespace plan_tests;

namespace {

const std::string kGap = R"(, "operations": [{"date": "2026-09-10", "state": "planned",
    "gap_after_resection_mm": 60, "done": [{"procedure": "graft", "nerve": "radial nerve"}]}])";

const plan::GraftNeed& need(const plan::PlanAnswer& answer) {
  const auto* graft = option(answer, "cable graft");
  REQUIRE(graft != nullptr);
  REQUIRE(graft->grafts.size() == 1);
  return graft->grafts.front();
}

const plan::GraftDonor* donor(const plan::GraftNeed& need, std::string_view nerve) {
  const auto found = std::ranges::find(need.donors, nerve, &plan::GraftDonor::nerve);
  return found == need.donors.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("the number of cables is the nerve's cross-section over the donor's", "[plan]") {
  // 5.09 to 7.31 mm2 over 2.4 mm2, a spare of 0.15 not filled: 2.12 and 3.05, so 2 and 3.
  const auto ulnar = plan::cables_of(package(), "ulnar nerve", "sural nerve");
  REQUIRE(ulnar);
  CHECK(ulnar->low == 2);
  CHECK(ulnar->high == 3);
  // 6.31 to 9.34: 2.63 and 3.89.
  const auto median = plan::cables_of(package(), "median nerve", "sural nerve");
  CHECK(median->low == 3);
  CHECK(median->high == 4);
  // By dissection on both sides: 10.2 over 5.1.
  const auto axillary = plan::cables_of(package(), "axillary nerve", "sural nerve");
  CHECK(axillary->low == 2);
  CHECK(axillary->high == 2);
  // No area of one method for both.
  CHECK_FALSE(plan::cables_of(package(), "axillary nerve", "median nerve"));
}

TEST_CASE("the graft that a gap needs is cables times gap with an allowance", "[plan]") {
  const auto answer = planned(radial(kGap), date(2026, 9, 1));
  const plan::GraftNeed& graft = need(answer);
  CHECK(graft.cables_low == 3);
  REQUIRE(graft.needed_low_mm);
  CHECK(*graft.needed_low_mm == Approx(3 * 60 * 1.1));
  CHECK(*graft.needed_high_mm == Approx(graft.cables_high * 60 * 1.2));
  REQUIRE(donor(graft, "sural nerve") != nullptr);
  CHECK(donor(graft, "sural nerve")->covers == "one leg");
  CHECK(graft.gap_words.find("joint position in which it was measured is not given") !=
        std::string::npos);
  const bool beyond = std::ranges::any_of(graft.notes, [](const std::string& note) {
    return note.find("this gap is beyond it") != std::string::npos;
  });
  CHECK(beyond);  // 60 mm against the 50 mm of Zhu 2023
}

TEST_CASE("the joint position of the case is named beside its gap", "[plan]") {
  std::string text = radial(kGap);
  text.replace(text.find(R"("age_years": 34)"), 15,
               R"("age_years": 34, "pose": {"elbow_flexion_deg": 90})");
  const auto answer = planned(text, date(2026, 9, 1));
  CHECK(need(answer).gap_words.find("elbow flexion 90 degrees") != std::string::npos);
}

TEST_CASE("a long gap takes both legs, and a donor that is not available is not offered",
          "[plan]") {
  std::string text = radial(kGap);
  text.replace(text.find("60,"), 3, "120,");
  const auto both = planned(text, date(2026, 9, 1));
  CHECK(donor(need(both), "sural nerve")->covers.find("both") != std::string::npos);

  const auto without =
      planned(radial(kGap + R"(, "unavailable": ["sural nerve"])"), date(2026, 9, 1));
  CHECK(donor(need(without), "sural nerve") == nullptr);
  CHECK(std::ranges::count(need(without).unavailable, "sural nerve") == 1);
}

TEST_CASE("a skin nerve that the injury has numbed costs no further feeling", "[plan]") {
  const auto answer = planned(radial(kGap), date(2026, 9, 1));
  const auto* superficial = donor(need(answer), "superficial radial nerve");
  REQUIRE(superficial != nullptr);
  CHECK(superficial->cost.find("numb from this injury already") != std::string::npos);
  const auto* medial = donor(need(answer), "medial antebrachial cutaneous nerve");
  REQUIRE(medial != nullptr);
  CHECK(medial->cost.find("Numb medial forearm") != std::string::npos);
}

TEST_CASE("without a gap it says so and reckons for each centimetre", "[plan]") {
  const auto answer = planned(radial(), date(2026, 9, 20));
  CHECK(need(answer).gap_words.find("not known") != std::string::npos);
  CHECK_FALSE(need(answer).needed_low_mm);
  CHECK(need(answer).needed_for_10_mm == Approx(need(answer).cables_high * 12.0));
}
