// The front: who beats whom, and who is never compared.
#include <algorithm>

#include "fixture.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Group;
using transfer::Synergy;
using transfer::Verdict;

namespace {

Candidate candidate(const std::string& id) {
  Candidate one;
  one.id = id;
  one.coaptation = transfer::Coaptation::end_to_end;
  one.donor_nodes = {id};
  one.target_keys = {"BIC-L"};
  one.synergy = Synergy::neutral;
  one.verdict = Verdict::feasible;
  return one;
}

transfer::PublishedResult result(double count, double n, const char* scale = "M3") {
  transfer::PublishedResult one;
  one.scale = scale;
  one.count = count;
  one.n = n;
  one.share = count / n;
  return one;
}

std::string beaten_by(const Candidate& a, const Candidate& b) {
  Group group;
  group.candidates = {a, b};
  rank(group);
  return std::ranges::find(group.candidates, b.id, &Candidate::id)->beaten_by;
}

}  // namespace

TEST_CASE("better in one thing and nowhere worse beats", "[transfer]") {
  Candidate a = candidate("a");
  const Candidate b = candidate("b");
  CHECK(beaten_by(a, b).empty());
  a.synergy = Synergy::synergist;
  CHECK(beaten_by(a, b) == "a");
  a.also_spends = {"pt_ecrb (wrist extension)"};
  CHECK(beaten_by(a, b).empty());
}

TEST_CASE("what restores less, or is another operation, beats nobody", "[transfer]") {
  Candidate a = candidate("a");
  Candidate b = candidate("b");
  a.synergy = Synergy::synergist;
  b.target_keys = {"BIC-L", "BRA"};
  CHECK(beaten_by(a, b).empty());
  b.target_keys = {"BIC-L"};
  REQUIRE(beaten_by(a, b) == "a");
  a.coaptation = transfer::Coaptation::end_to_side;
  CHECK(beaten_by(a, b).empty());
  a = candidate("a");
  a.synergy = Synergy::synergist;
  a.way = transfer::Way::tendon;
  CHECK(beaten_by(a, b).empty());
}

TEST_CASE("shares are compared on one scale only, and only beyond chance", "[transfer]") {
  Candidate a = candidate("a");
  Candidate b = candidate("b");
  a.results = {result(190, 207)};
  b.results = {result(20, 60)};
  CHECK(beaten_by(a, b) == "a");
  b.results = {result(20, 60, "M4")};
  CHECK(beaten_by(a, b).empty());
  // One of one is no better than 190 of 207.
  a.results = {result(1, 1)};
  b.results = {result(190, 207)};
  CHECK(beaten_by(a, b).empty());
  // A word of its own study is no scale.
  a.results = {result(190, 207, "other")};
  b.results = {result(20, 60, "other")};
  CHECK(beaten_by(a, b).empty());
}

TEST_CASE("an unknown distance neither beats nor is beaten", "[transfer]") {
  Candidate a = candidate("a");
  Candidate b = candidate("b");
  a.distance_mm = 30.0;
  CHECK(beaten_by(a, b).empty());
  b.distance_mm = 60.0;
  CHECK(beaten_by(a, b) == "a");
}

TEST_CASE("the front is never empty and stands before what it beats", "[transfer]") {
  for (const auto& [injuries, id] : {std::pair(kUpperTrunk, "P07"), std::pair(kHighRadial, "P20"),
                                     std::pair(kHighMedian, "P25")}) {
    const auto judgement = judged(pattern(injuries, id));
    for (const Group& group : judgement.groups) {
      CAPTURE(group.function);
      CHECK(std::ranges::any_of(group.candidates,
                                [](const Candidate& one) { return one.beaten_by.empty(); }));
      // Again on what is already in order: the same order.
      Group again = group;
      rank(again);
      CHECK(std::ranges::equal(again.candidates, group.candidates, {}, &Candidate::id,
                               &Candidate::id));
    }
  }
}
