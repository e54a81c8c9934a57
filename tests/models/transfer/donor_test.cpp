// Donors: a named distal part, never a trunk, and all that dies where it is cut.
#include "models/transfer/donor.hpp"

#include <algorithm>

#include "fixture.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Coaptation;

namespace {

void with_situation(const Arm& arm, const auto& check) {
  const casefile::Case patient = case_of(arm);
  const auto limb = limb::CaseLimb::from(package(), all_anatomy().tree(), patient.limb);
  REQUIRE(limb);
  const auto now = transfer::Situation::of(patient, all_anatomy(), *limb, limb->sample(50, 1));
  REQUIRE(now);
  check(*now);
}

anatomy::NodeIndex node(std::string_view name) {
  return *all_anatomy().tree().find(name);
}

}  // namespace

TEST_CASE("a trunk is never cut, and no donor of the ledger is one", "[transfer]") {
  with_situation(pattern(kUpperTrunk, "P07"), [](const transfer::Situation& now) {
    for (const char* trunk :
         {"accessory nerve", "ulnar nerve", "median nerve", "radial nerve",
          "musculocutaneous nerve", "axillary nerve", "lower trunk", "C7 root"}) {
      CAPTURE(trunk);
      if (const auto found = all_anatomy().tree().find(trunk)) CHECK(is_trunk(*found, now));
    }
    CHECK_FALSE(is_trunk(node("distal part of accessory nerve"), now));
    CHECK_FALSE(is_trunk(node("thoracodorsal nerve"), now));
    for (const Candidate& one : transfer::nerve_candidates(now, package(), {})) {
      CAPTURE(one.id);
      CHECK(one.rejection != transfer::Rejection::trunk);
      if (one.coaptation == Coaptation::end_to_side) continue;
      for (const std::string& name : one.donor_nodes) CHECK_FALSE(is_trunk(node(name), now));
    }
  });
}

TEST_CASE("what dies with the cut is all below the node", "[transfer]") {
  with_situation(pattern(kUpperTrunk, "P07"), [](const transfer::Situation& now) {
    const transfer::Cut ulnar = cut_at(node("ulnar nerve"), now);
    CHECK(std::ranges::find(ulnar.muscles, "flexor carpi ulnaris") != ulnar.muscles.end());
    CHECK(std::ranges::find(ulnar.areas, "little ulnar pulp") != ulnar.areas.end());
    const transfer::Cut accessory = cut_at(node("distal part of accessory nerve"), now);
    CHECK(accessory.muscles.size() == 2);
    CHECK(std::ranges::none_of(accessory.muscles, [](const std::string& muscle) {
      return muscle.find("descending") != std::string::npos;
    }));
    // A part of a branch leaves the muscle the other part.
    const transfer::Cut pronator = cut_at(node("median branch to pronator teres (distal)"), now);
    CHECK(pronator.muscles.empty());
    CHECK(pronator.in_part.size() == 1);
    const transfer::Cut web = cut_at(node("common palmar digital nerve of ulnar nerve"), now);
    CHECK_FALSE(web.areas.empty());
    CHECK(web.muscles.empty());
  });
}

TEST_CASE("an end-to-side donor is not cut, a supercharging one is", "[transfer]") {
  with_situation(pattern(kHighUlnar, "P34"), [](const transfer::Situation& now) {
    std::map<Coaptation, int> kinds;
    for (const Candidate& one : transfer::nerve_candidates(now, package(), {})) {
      CAPTURE(one.id);
      ++kinds[one.coaptation];
      CHECK((one.coaptation == Coaptation::end_to_side) == one.cuts.empty());
      if (one.coaptation == Coaptation::supercharged) {
        REQUIRE(one.cuts.size() == 1);
        CHECK(one.cuts.front().muscles.size() == 1);
      }
    }
    CHECK(kinds[Coaptation::end_to_side] == 2);
    CHECK(kinds[Coaptation::supercharged] == 2);
    CHECK(kinds[Coaptation::end_to_end] == 68);
  });
}

TEST_CASE("a transfer names the tendon options that it spends", "[transfer]") {
  const auto judgement = judged(pattern(kHighRadial, "P20"));
  const Candidate* pronator = find(judgement, "pt_distal_to_ecrb");
  REQUIRE(pronator != nullptr);
  CHECK(std::ranges::any_of(pronator->also_spends, [](const std::string& option) {
    return option.starts_with("pt_ecrb");
  }));
  // End-to-side to the skin of the median nerve spends nothing.
  CHECK(find(judgement, "sens_srn_ets_median")->also_spends.empty());
}
