// The supercharged transfer is for a nerve from which axons may still come: severe compression
// (Xie 2021, doi 10.3171/2021.2.JNS203508, randomised), a lesion in continuity or a repaired one
// (Baltzer 2016, PMID 27879594), a transection repaired in the same operation (Koriem 2020).
#include "fixture.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Rejection;
using transfer::Verdict;

namespace {

const std::string kRepair =
    R"(, "operations": [{"state": "planned", "done": [{"procedure": "repair", "nerve": "ulnar nerve"}]}])";
const std::string kAboveElbow =
    R"("nerve": "ulnar nerve", "at": {"landmark": "medial epicondyle", "offset_mm": 20, "toward": "proximal"})";

// The hand's muscles as a compression at the elbow leaves them: weak, not gone.
Arm compressed(const std::string& more = R"(, "complete": false)") {
  Arm arm = pattern("{" + kAboveElbow + R"(, "mechanism": "compression")" + more + "}", "P34");
  for (auto& [muscle, grade] : arm.grades) {
    if (grade == "0") grade = "2";
  }
  for (const char* strong : {"FCU", "FDP-L", "FDP-R"}) {
    arm.grades.insert_or_assign(strong, std::string("5"));
  }
  return arm;
}

}  // namespace

TEST_CASE("a hand that recovers in part is supercharged, and nothing of its nerve is cut",
          "[transfer]") {
  Arm arm = compressed();
  // A muscle that works does not stand in the way of a nerve that is not cut.
  arm.grades.insert_or_assign("ADM", std::string("4"));
  const auto judgement = judged(arm);
  const Candidate* one = find(judgement, "ain_sets_ulnar");
  CAPTURE(rejected(judgement, "ain_sets_ulnar"));
  REQUIRE(one != nullptr);
  CHECK(one->verdict == Verdict::feasible);
  CHECK(std::ranges::find(one->target_keys, "FDI") != one->target_keys.end());
  CHECK(std::ranges::find(one->target_keys, "ADM") == one->target_keys.end());
  CHECK(one->sewn_beyond.empty());
  const auto& sources = one->sources;
  CHECK(std::ranges::find(sources, "ain_sets_ulnar:compression") != sources.end());
  // The end-to-end one would cut what works; the one with a repair needs a divided nerve.
  CHECK(find(judgement, "ain_to_deep_ulnar") == nullptr);
  CHECK(rejected(judgement, "ain_to_deep_ulnar").find("at or above the elbow") !=
        std::string::npos);
  CHECK(find(judgement, "ain_sets_with_repair") == nullptr);
}

TEST_CASE("a divided nerve is supercharged beside its repair only", "[transfer]") {
  const std::string cut =
      "{" + kAboveElbow +
      R"(, "mechanism": "open sharp", "complete": true, "grade": "neurotmesis"})";
  Arm arm = pattern(cut, "P34");
  for (const char* id : {"ain_sets_ulnar", "ain_sets_with_repair"}) {
    CAPTURE(id);
    const auto without = judged(arm);
    REQUIRE(find(without, id) != nullptr);
    CHECK(find(without, id)->verdict == Verdict::not_judged);
    Arm repaired = arm;
    repaired.more = kRepair;
    const auto with = judged(repaired);
    REQUIRE(find(with, id) != nullptr);
    CHECK(find(with, id)->verdict == Verdict::feasible);
  }
}

TEST_CASE("a muscle that moves below a complete lesion shows that axons come", "[transfer]") {
  Arm arm = pattern(kHighUlnar, "P34");
  REQUIRE(find(judged(arm), "ain_sets_ulnar") != nullptr);
  CHECK(find(judged(arm), "ain_sets_ulnar")->verdict == Verdict::not_judged);
  arm.grades.insert_or_assign("ADM", std::string("3"));
  CHECK(find(judged(arm), "ain_sets_ulnar")->verdict == Verdict::feasible);
}

TEST_CASE("nothing is supercharged that recovers by itself, that lies low, or by a donor not shown",
          "[transfer]") {
  CHECK(find(judged(compressed(R"(, "grade": "neurapraxia")")), "ain_sets_ulnar") == nullptr);
  Arm low = pattern(kLowUlnar, "P37");
  low.more = kRepair;
  CHECK(rejected(judged(low), "ain_sets_ulnar").find("above the branch") != std::string::npos);
  Arm unexamined = compressed();
  unexamined.units.clear();
  const auto judgement = judged(unexamined);
  REQUIRE(find(judgement, "ain_sets_ulnar") != nullptr);
  CHECK(find(judgement, "ain_sets_ulnar")->verdict == Verdict::not_judged);
  Arm weak = compressed();
  weak.units.insert_or_assign("PQ", std::string("reduced"));
  CHECK(find(judged(weak), "ain_sets_ulnar") == nullptr);
}
