// Transfers from the neck, the girdle and the chest wall.
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "transfer_fixture.hpp"

namespace endplate::transfer {
namespace {

bool names(const std::vector<std::string>& all, const std::string& part) {
  return std::ranges::any_of(all, [&](const std::string& one) { return one.contains(part); });
}

}  // namespace

TEST_CASE("An intercostal nerve is turned over at the midaxillary line", "[transfer]") {
  // From there to the costochondral junction 120, 150 and 160 mm (Malungpaishrope 2007, rows
  // intercostal-3-length-malungpaishrope and so on); the sixth is taken as the fifth.
  for (const auto& [nerve, freed_mm] :
       {std::pair{"third intercostal nerve", 120.0}, std::pair{"fourth intercostal nerve", 150.0},
        std::pair{"fifth intercostal nerve", 160.0}, std::pair{"sixth intercostal nerve", 160.0}}) {
    INFO(nerve);
    const Reach reach = reach_of({node(nerve), node("musculocutaneous nerve")});
    CHECK(reach.donor_mm.p50 == Approx(freed_mm).epsilon(0.06));
    REQUIRE(reach.slack_mm.has_value());
    CHECK(std::ranges::find(reach.joints_between, "shoulder_abduction_deg") !=
          reach.joints_between.end());
    CHECK(names(reach.assumptions, "chest that are assumed"));
  }
  // The lower ones come from farther away.
  double before_mm = 0.0;
  for (const char* nerve : {"third intercostal nerve", "fourth intercostal nerve",
                            "fifth intercostal nerve", "sixth intercostal nerve"}) {
    const double gap_mm = reach_of({node(nerve), node("suprascapular nerve")}).gap_mm.p50;
    CHECK(gap_mm > before_mm);
    before_mm = gap_mm;
  }
}

TEST_CASE("The phrenic nerve is freed from above the clavicle to the diaphragm", "[transfer]") {
  const Reach reach = reach_of({node("phrenic nerve"), node("musculocutaneous nerve")});
  // 190 to 250 mm (Shi and Gu 1999, phrenic-harvest-length-shi).
  CHECK(reach.donor_mm.p50 > 190.0);
  CHECK(reach.donor_mm.p50 < 250.0);
  CHECK(reach.state == ReachState::reaches);
  CHECK(std::ranges::find(reach.sources, "phrenic-harvest-length-shi") != reach.sources.end());
}

TEST_CASE("The accessory nerve is not cut inside the skull", "[transfer]") {
  const Reach reach =
      reach_of({node("medial pectoral branch to sternocostal head of pectoralis major"),
                node("accessory nerve")});
  REQUIRE(reach.slack_mm.has_value());
  const double whole_mm = reach.recipient_mm.p95;
  CHECK(whole_mm < 130.0);
  if (reach.recipient_cut) CHECK(reach.recipient_cut->from_origin_mm.p05 >= 0.0);
}

TEST_CASE("A left arm reaches as far as a right one", "[transfer]") {
  casefile::Limb limb;
  limb.side = Side::left;
  const ReachQuestion question{node("distal part of accessory nerve"), node("suprascapular nerve")};
  const Reach left = reach_of(model_of(limb, 50), question);
  const Reach right = reach_of(model_of({}, 50), question);
  REQUIRE(left.slack_mm.has_value());
  CHECK(left.slack_mm->p50 == Approx(right.slack_mm->p50).margin(1e-6));
}

}  // namespace endplate::transfer
