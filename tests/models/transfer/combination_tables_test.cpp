// The tables of the combination: what they name exists, and what is asked for comes in order.
#include "models/transfer/combination_tables.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

using namespace endplate;
using namespace endplate::transfer;

namespace {

const evidence::DataPackage& package() {
  static const evidence::DataPackage kPackage =
      evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets").value();
  return kPackage;
}

// "2 shoulder abduction x1"
std::vector<std::string> words(const std::vector<Demand>& demands) {
  std::vector<std::string> all;
  for (const Demand& demand : demands) {
    all.push_back(std::to_string(demand.tier) + " " + demand.target + " x" +
                  std::to_string(demand.transfers));
  }
  return all;
}

}  // namespace

TEST_CASE("every target of the priorities is a movement or the sensation of the hand",
          "[transfer][combination]") {
  std::set<std::string, std::less<>> known{"sensation of the hand"};
  for (const evidence::Row row : package().table("movements")) known.emplace(row.text("movement"));
  std::set<std::string> seen;
  for (const evidence::Row row : package().table("transfer_priorities")) {
    CAPTURE(row.text("id"));
    CHECK(known.contains(row.text("target")));
    CHECK_FALSE(row.text("reason").empty());
    // One target, one count, one place in a pattern.
    CHECK(seen.insert(std::string(row.text("pattern")) + std::string(row.text("target")) +
                      std::string(row.text("transfers")))
              .second);
  }
}

TEST_CASE("upper and complete palsies ask for elbow flexion, then the shoulder; lower for the hand",
          "[transfer][combination]") {
  for (const PalsyPattern pattern : {PalsyPattern::upper, PalsyPattern::complete}) {
    const auto demands = demands_of(
        package(), pattern, {},
        {"shoulder abduction", "wrist extension", "elbow flexion", "shoulder external rotation"});
    REQUIRE(demands.size() >= 4);
    CHECK(words(demands)[0] == "1 elbow flexion x1");
    const std::set shoulder{words(demands)[1], words(demands)[2]};
    CHECK(shoulder ==
          std::set<std::string>{"2 shoulder abduction x1", "2 shoulder external rotation x1"});
  }
  const auto lower = demands_of(package(), PalsyPattern::lower, {},
                                {"finger abduction", "thumb adduction", "thumb tip flexion"});
  CHECK(words(lower) == std::vector<std::string>{"1 thumb tip flexion x1", "2 thumb adduction x1",
                                                 "3 finger abduction x1"});
}

TEST_CASE("wishes come first, what is not lost is not asked for", "[transfer][combination]") {
  const auto demands = demands_of(package(), PalsyPattern::upper,
                                  {"forearm pronation", "elbow flexion", "wrist extension"},
                                  {"elbow flexion", "shoulder abduction", "forearm pronation"});
  CHECK(words(demands) == std::vector<std::string>{"1 forearm pronation x1", "2 elbow flexion x1",
                                                   "3 shoulder abduction x1",
                                                   "4 shoulder abduction x2",
                                                   "5 elbow flexion x2"});
  CHECK(demands[0].row.empty());
  CHECK(demands[2].row == "upper_2_shoulder_abduction_1");
  CHECK(demands_of(package(), PalsyPattern::other, {}, {"wrist extension"}).size() == 1);
  CHECK(demands_of(package(), PalsyPattern::lower, {"wrist extension"}, {}).empty());
}

TEST_CASE("the forbidden pairs are those of both tables, each once", "[transfer][combination]") {
  const auto pairs = forbidden_pairs(package());
  std::set<std::set<std::string>> seen;
  for (const ForbiddenPair& pair : pairs) {
    CAPTURE(pair.id);
    CHECK(pair.a != pair.b);
    CHECK(seen.insert({pair.a, pair.b}).second);
    CHECK_FALSE(pair.reason.empty());
  }
  CHECK(seen.contains({"icn_to_triceps", "phrenic_to_mcn"}));
  CHECK(seen.contains({"ecrl_4tail", "ecrb_adductor"}));
}

TEST_CASE("every balance rule keeps fewer donors than it names", "[transfer][combination]") {
  const auto rules = balance_rules(package());
  CHECK(rules.size() >= 6);
  for (const BalanceRule& rule : rules) {
    CAPTURE(rule.id);
    CHECK(rule.keep < static_cast<int>(rule.donors.size()));
    CHECK_FALSE(rule.reason.empty());
  }
}
