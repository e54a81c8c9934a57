#include "models/incision/approach_rules.hpp"

#include <catch2/catch.hpp>
#include <set>

#include "../limb/limb_fixture.hpp"

namespace endplate::incision {
namespace {

ApproachRule rule(RuleCheck check, std::optional<double> low, std::optional<double> high) {
  ApproachRule made;
  made.check = check;
  made.low_mm = low;
  made.high_mm = high;
  return made;
}

}  // namespace

TEST_CASE("chances of a distance are the normal's or those of the sampled limbs", "[incision]") {
  // One standard deviation to either side holds 68.27 % of a normal distribution.
  const auto normal = LimbDistance::normal(50.0, 10.0);
  CHECK(normal.chance(40.0, 60.0) == Approx(0.6827).margin(1e-4));
  CHECK(normal.chance(std::nullopt, 50.0) == Approx(0.5));
  CHECK(normal.low_mm == Approx(50.0 - 16.449).margin(1e-3));
  const auto sampled = LimbDistance::of_samples({1.0, 2.0, 3.0, 10.0});
  CHECK(sampled.chance(2.0, 3.0) == 0.5);
  CHECK(sampled.mean_mm == 4.0);
}

TEST_CASE("a rule is confirmed by its own criterion", "[incision]") {
  const auto limb = LimbDistance::normal(50.0, 10.0);
  CHECK(judge(rule(RuleCheck::beyond, 30.0, {}), limb, nullptr).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::beyond, 40.0, {}), limb, nullptr).confirmed);
  CHECK(judge(rule(RuleCheck::before, {}, 70.0), limb, nullptr).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::before, {}, 60.0), limb, nullptr).confirmed);
  CHECK(judge(rule(RuleCheck::band, 40.0, 60.0), limb, nullptr).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::band, 60.0, 80.0), limb, nullptr).confirmed);
  CHECK(judge(rule(RuleCheck::place, 60.0, 60.0), limb, nullptr).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::place, 70.0, 70.0), limb, nullptr).confirmed);
  CHECK(judge(rule(RuleCheck::possible, {}, 35.0), limb, nullptr).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::possible, {}, 30.0), limb, nullptr).confirmed);
  const auto bent = LimbDistance::normal(42.0, 10.0);
  CHECK(judge(rule(RuleCheck::change, {}, -5.0), bent, &limb).confirmed);
  CHECK_FALSE(judge(rule(RuleCheck::change, 0.0, {}), bent, &limb).confirmed);
}

TEST_CASE("every safe-zone rule of the ledger is judged or says why not", "[incision]") {
  const auto rules = approach_rules(limb::own_tables());
  REQUIRE(rules.has_value());
  std::set<std::string> listed;
  for (const ApproachRule& each : *rules) CHECK(listed.insert(each.row).second);
  for (const evidence::Row row : limb::own_tables().table("approaches")) {
    INFO(row.text("id"));
    CHECK(listed.contains(std::string(row.text("id"))) == !row.text("safe_rule").empty());
  }
}

}  // namespace endplate::incision
