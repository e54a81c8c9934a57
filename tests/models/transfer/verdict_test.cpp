// One finding more or less, and what becomes of the verdict.
#include "models/transfer/verdict.hpp"

#include <algorithm>

#include "fixture.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Verdict;

TEST_CASE("the examined grade outranks the roots, both ways", "[transfer]") {
  // C5 to C7 torn takes triceps by the tables; examined at M4 it is a donor for the axillary nerve.
  Arm arm = pattern(roots({"C5", "C6", "C7"}), "P10");
  CHECK(find(judged(arm), "tri_long_to_ax_ant") == nullptr);
  for (const char* head : {"TRI-LH", "TRI-MH", "TRI-LAT"})
    arm.grades.insert_or_assign(head, std::string("4"));
  const auto kept = judged(arm);
  REQUIRE(find(kept, "tri_long_to_ax_ant") != nullptr);
  CHECK(find(kept, "tri_long_to_ax_ant")->verdict == Verdict::feasible);
  // The upper trunk spares flexor carpi ulnaris by the tables; examined at M3 it is none.
  Arm weak = pattern(kUpperTrunk, "P07");
  weak.grades.insert_or_assign("FCU", std::string("3"));
  CHECK(rejected(judged(weak), "uln_fascicle_to_biceps").find("M3") != std::string::npos);
}

TEST_CASE("a shrug does not hide a dead lower trapezius", "[transfer]") {
  Arm arm = pattern(kUpperTrunk, "P07");
  arm.grades.insert_or_assign("TRAP-M", std::string("0"));
  arm.grades.insert_or_assign("TRAP-L", std::string("0"));
  const auto judgement = judged(arm);
  CHECK(find(judgement, "san_to_ssn_anterior") == nullptr);
  CHECK(rejected(judgement, "san_to_ssn_anterior").find("M0") != std::string::npos);
}

TEST_CASE("brachialis is not given where biceps does not flex the elbow", "[transfer]") {
  Arm arm = pattern(kLowerTrunk, "P12", "PQ");
  REQUIRE(find(judged(arm), "brachialis_to_ain") != nullptr);
  arm.grades.erase("BIC-S");
  arm.grades.erase("BIC-L");
  CHECK(find(judged(arm), "brachialis_to_ain")->verdict == Verdict::not_judged);
  arm.grades.insert_or_assign("BIC-S", std::string("1"));
  arm.grades.insert_or_assign("BIC-L", std::string("1"));
  CHECK(find(judged(arm), "brachialis_to_ain") == nullptr);
  // A weak biceps is a relative bar to giving supinator.
  Arm lower = pattern(roots({"C7", "C8", "T1"}), "P12", kMiddleTrunkToo);
  lower.grades.insert_or_assign("BIC-S", std::string("3"));
  lower.grades.insert_or_assign("BIC-L", std::string("3"));
  CHECK(find(judged(lower), "sup_to_pin")->verdict == Verdict::marginal);
}

TEST_CASE("a donor that fibrillates on EMG is marginal at best", "[transfer]") {
  Arm arm = pattern(kUpperTrunk, "P07");
  arm.units.insert_or_assign("FCU", std::string("reduced"));
  CHECK(find(judged(arm), "uln_fascicle_to_biceps")->verdict == Verdict::marginal);
}

TEST_CASE("delay is said in words and never a filter", "[transfer]") {
  Arm arm = pattern(kUpperTrunk, "P07");
  const auto early = judged(arm);
  arm.days = 700.0;
  const auto late = judged(arm);
  for (const transfer::Group& group : early.groups) {
    for (const Candidate& one : group.candidates) {
      CAPTURE(one.id);
      const Candidate* then = find(late, one.id);
      REQUIRE(then != nullptr);
      if (one.verdict == Verdict::feasible && one.way == transfer::Way::nerve) {
        CHECK(then->verdict == Verdict::marginal);
      }
    }
  }
  const auto& timing = find(late, "c7_pectoral_to_ssn")->timing;
  CHECK(std::ranges::any_of(
      timing, [](const auto& words) { return words.find("later than any") != std::string::npos; }));
}
