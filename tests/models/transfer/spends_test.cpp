// The superficialis of each finger is a donor by itself, in what is spent and in a combination.
#include "models/transfer/spends.hpp"

#include "fixture.hpp"
#include "models/transfer/combination_task.hpp"

using namespace transfer_tests;
using transfer::Candidate;

namespace {

void with_situation(const Arm& arm, const auto& ask) {
  const casefile::Case patient = case_of(arm);
  const auto limb = limb::CaseLimb::from(package(), all_anatomy().tree(), patient.limb);
  REQUIRE(limb);
  const auto now = transfer::Situation::of(patient, all_anatomy(), *limb, limb->sample(5, 1));
  REQUIRE(now);
  ask(*now);
}

bool names(const std::vector<std::string>& options, std::string_view words) {
  return std::ranges::any_of(
      options, [&](const std::string& one) { return one.find(words) != std::string::npos; });
}

}  // namespace

// Claw and a thumb that does not oppose: median and ulnar nerve at the wrist.
TEST_CASE("a superficialis spends the operations of its own finger only", "[transfer]") {
  Arm arm = textbook(kLowUlnar, {"LUM3", "LUM4", "PI1", "PI2", "PI3", "FDI", "DI2", "DI3", "DI4",
                                 "ADM", "FDMB", "ODM", "AdP-T", "AdP-O", "APB", "OP", "FPB-S"});
  with_situation(arm, [&](const transfer::Situation& now) {
    const auto middle = tendon_options_spent({"FDS/middle"}, "fds_middle_lasso", package(), now);
    CHECK(names(middle, "fds_4tail (claw correction) by the superficialis of the middle finger"));
    CHECK_FALSE(names(middle, "fds_lasso"));  // ring and little
    const auto ring = tendon_options_spent({"FDS/ring"}, "", package(), now);
    CHECK(names(ring, "fds_lasso"));
    CHECK_FALSE(names(ring, "fds_middle_lasso"));
    const auto whole = tendon_options_spent({"FDS"}, "", package(), now);
    CHECK(names(whole, "fds_lasso"));
    CHECK(names(whole, "fds_middle_lasso"));
    // What only asks for a strong neighbour is gone with the neighbour.
    CHECK(names(tendon_options_spent({"ECRL"}, "ecrl_4tail", package(), now), "ecrb_adductor"));
  });
}

TEST_CASE("the superficialis of a finger is used once and leaves each finger a flexor",
          "[transfer][combination]") {
  // High median and ulnar function kept: opposition lost by a low median lesion.
  const std::string low_median = injury(
      R"("nerve": "median nerve", "at": {"landmark": "distal wrist crease", "offset_mm": 30, "toward": "proximal"})");
  const Arm arm =
      textbook(low_median + ", " + kLowUlnar,
               {"LUM1", "LUM2", "LUM3", "LUM4", "PI1",   "PI2",   "PI3", "FDI", "DI2",   "DI3",
                "DI4",  "ADM",  "FDMB", "ODM",  "AdP-T", "AdP-O", "APB", "OP",  "FPB-S", "FPB-D"});
  const auto judgement = judged(arm);
  const Candidate* lasso = find(judgement, "fds_middle_lasso");
  const Candidate* opposition = find(judgement, "fds_ring_opp");
  REQUIRE(lasso != nullptr);
  REQUIRE(opposition != nullptr);
  CHECK(lasso->spends == std::vector<std::string>{"FDS/middle"});
  CHECK(opposition->spends == std::vector<std::string>{"FDS/ring"});
  with_situation(arm, [&](const transfer::Situation& now) {
    // Of all candidates these two: neither stands in the way of the other.
    std::vector<transfer::Group> groups = judgement.groups;
    for (transfer::Group& group : groups) {
      std::erase_if(group.candidates,
                    [](const Candidate& one) { return !one.id.starts_with("fds_"); });
    }
    const auto task = combination_task(now, package(), groups, transfer::Admitted::shown);
    const auto best = combine(task);
    REQUIRE(best);
    std::set<std::string> chosen;
    for (const auto& one : best->chosen) chosen.insert(one.id);
    CAPTURE(chosen);
    CHECK(chosen == std::set<std::string>{"fds_middle_lasso", "fds_ring_opp"});
    for (const transfer::BalanceAnswer& rule : best->rules) {
      if (!rule.rule.ends_with("_flexor")) continue;
      CAPTURE(rule.rule);
      CHECK_FALSE(rule.strong_left.empty());
    }
  });
}
