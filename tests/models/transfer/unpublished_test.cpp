// Pairs that nobody has published: what they must never be.
#include "models/transfer/unpublished.hpp"

#include <algorithm>

#include "fixture.hpp"
#include "models/transfer/donor.hpp"
#include "models/transfer/transfers.hpp"

using namespace transfer_tests;
using transfer::DonorState;
using transfer::Synergy;
using transfer::TransferAnswer;
using transfer::TransferCandidate;
using transfer::Verdict;

namespace {

TransferAnswer answer_of(const Arm& arm, bool unpublished = true) {
  auto answer = transfer::transfers(
      case_of(arm), package(),
      {60, 1, casefile::Date{std::chrono::year(2026), std::chrono::month(6), std::chrono::day(1)},
       unpublished});
  REQUIRE(answer);
  return std::move(*answer);
}

const std::vector<Arm>& arms() {
  static const std::vector<Arm> kArms = {pattern(kUpperTrunk, "P07"), pattern(kHighRadial, "P20"),
                                         pattern(kHighMedian, "P25"), pattern(kHighUlnar, "P34"),
                                         pattern(kMusculocutaneous, "P44")};
  return kArms;
}

}  // namespace

TEST_CASE("unpublished pairs come on request only and change nothing else", "[transfer]") {
  for (const Arm& arm : arms()) {
    const TransferAnswer with = answer_of(arm);
    const TransferAnswer without = answer_of(arm, false);
    CHECK(without.unpublished.empty());
    std::set<std::string> known;
    REQUIRE(with.groups.size() == without.groups.size());
    for (std::size_t g = 0; g < with.groups.size(); ++g) {
      REQUIRE(with.groups[g].candidates.size() == without.groups[g].candidates.size());
      for (const TransferCandidate& one : with.groups[g].candidates) {
        CHECK(one.judged.published);
        known.insert(one.judged.id);
      }
    }
    for (const auto* set : {&with.combination, &with.if_shown}) {
      for (const auto& chosen : set->chosen) CHECK(known.contains(chosen.id));
    }
  }
}

TEST_CASE("an unpublished donor is one strong motor branch that can be spared", "[transfer]") {
  int pairs = 0;
  for (const Arm& arm : arms()) {
    const TransferAnswer answer = answer_of(arm);
    std::set<std::string> ids;
    for (const TransferCandidate& one : answer.unpublished) {
      CAPTURE(one.judged.id);
      ++pairs;
      CHECK(ids.insert(one.judged.id).second);
      CHECK_FALSE(one.judged.published);
      CHECK(one.judged.verdict == Verdict::marginal);
      CHECK(std::ranges::find(one.judged.reasons, "not published: geometry only") !=
            one.judged.reasons.end());
      CHECK(one.judged.results.empty());
      CHECK(one.judged.donor_state == DonorState::strong);
      REQUIRE(one.joined);
      CHECK(one.joined->reach.state == transfer::ReachState::reaches);
      const auto node = all_anatomy().tree().find(one.joined->donor);
      REQUIRE(node);
      CHECK(all_anatomy().tree().node(*node).kind == anatomy::NodeKind::motor);
      for (const std::string& muscle : one.judged.donor_muscles) {
        CHECK((arm.grades.at(muscle) == "5"));
      }
      for (const std::string& muscle : one.judged.target_keys) CHECK(arm.grades.at(muscle) == "0");
      // Another prime mover of each of its movements is strong.
      for (const anatomy::Movement& movement : all_anatomy().movements()) {
        const auto id = [](std::size_t m) { return all_anatomy().muscles()[m].id; };
        const auto spent = [&](std::size_t m) {
          return std::ranges::find(one.judged.donor_muscles, id(m)) !=
                 one.judged.donor_muscles.end();
        };
        if (std::ranges::none_of(movement.prime_movers, spent)) continue;
        CAPTURE(movement.name);
        CHECK(std::ranges::any_of(movement.prime_movers, [&](std::size_t m) {
          return !spent(m) && arm.grades.at(id(m)) == "5";
        }));
      }
      // No row of the table has that donor muscle for that branch.
      for (const evidence::Row row : package().table("transfers")) {
        const auto recipients = row.list("recipient_node");
        const auto donors = row.list("donor_node");
        const bool both =
            std::ranges::find(recipients, one.joined->recipient) != recipients.end() &&
            std::ranges::find(donors, one.joined->donor) != donors.end();
        CHECK_FALSE(both);
      }
    }
  }
  CHECK(pairs > 10);
}

TEST_CASE("a donor that was not examined is not offered unpublished", "[transfer]") {
  Arm arm;
  arm.injuries = kHighRadial;
  CHECK(answer_of(arm).unpublished.empty());
  // The other radial wrist extensor must be strong (transfer_balance.csv).
  Arm median = pattern(kHighMedian, "P25");
  median.grades.erase("ECRL");
  for (const TransferCandidate& one : answer_of(median).unpublished) {
    CHECK(one.judged.donor_muscles != std::vector<std::string>{"ECRB"});
  }
}

// Common practice: wrist flexors work with finger extensors (tenodesis), flexors against extensors.
TEST_CASE("opposed functions are told", "[transfer]") {
  const auto between = [](const std::string& a, const std::string& b) {
    return transfer::synergy_between({a}, {b}, package());
  };
  CHECK(between("elbow extension", "elbow flexion") == Synergy::antagonist);
  CHECK(between("elbow flexion", "elbow extension") == Synergy::antagonist);
  CHECK(between("wrist flexion", "finger extension at the knuckles") == Synergy::synergist);
  CHECK(between("wrist extension", "index tip flexion") == Synergy::synergist);
  CHECK(between("forearm pronation", "elbow extension") == Synergy::neutral);
  CHECK(transfer::synergy_between({"elbow flexion", "forearm supination"},
                                  {"forearm pronation", "elbow flexion"},
                                  package()) == Synergy::antagonist);
}
