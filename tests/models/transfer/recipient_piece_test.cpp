// A recipient of which one muscle still works is judged by what would be cut. The order in which
// branches leave: posterior interosseous by Abrams 1997, anterior interosseous by Gray
// (nerve_tree).
#include "models/transfer/recipient_piece.hpp"

#include "fixture.hpp"
#include "models/transfer/reach.hpp"

using namespace transfer_tests;
using transfer::Candidate;
using transfer::Verdict;

namespace {

anatomy::NodeIndex node(std::string_view name) {
  const auto found = all_anatomy().tree().find(name);
  REQUIRE(found);
  return *found;
}

}  // namespace

TEST_CASE("beyond the branch to a working muscle the rest of a recipient is a recipient",
          "[transfer]") {
  // Only the finger extensors proper came back.
  Arm arm = pattern(kHighRadial, "P20");
  arm.grades.insert_or_assign("ED", std::string("4"));
  const auto judgement = judged(arm);
  const Candidate* one = find(judgement, "fcr_to_pin_tian");
  CAPTURE(rejected(judgement, "fcr_to_pin_tian"));
  REQUIRE(one != nullptr);
  CHECK(one->verdict == Verdict::feasible);
  REQUIRE(one->sewn_beyond.size() == 1);
  const transfer::SewnBeyond& beyond = one->sewn_beyond.front();
  CHECK(beyond.recipient == "posterior interosseous nerve");
  CHECK(beyond.spared ==
        std::vector<std::string>{"posterior interosseous branch to extensor digitorum"});
  CHECK(beyond.working == std::vector<std::string>{"extensor digitorum"});
  CHECK(std::ranges::find(one->target_keys, "EPL") != one->target_keys.end());
  CHECK(std::ranges::find(one->target_keys, "ED") == one->target_keys.end());
}

TEST_CASE("where the working muscle hangs beyond, the one reason names it", "[transfer]") {
  // Pronator quadratus has the last branch of the anterior interosseous nerve.
  const auto lower = judged(pattern(kLowerTrunk, "P12"));
  CHECK(find(lower, "brachialis_to_ain") == nullptr);
  CHECK(rejected(lower, "brachialis_to_ain") ==
        "pronator quadratus still works and would be cut with the anterior interosseous nerve");
  // Nothing of it is lost: it is not thought of.
  const auto upper = judged(pattern(kUpperTrunk, "P07"));
  CHECK(rejected(upper, "brachialis_to_ain").find("is not lost") != std::string::npos);
}

TEST_CASE("a recipient is freed and cut beyond what is spared", "[transfer]") {
  const auto& tree = all_anatomy().tree();
  const auto model = transfer::ReachModel::from(package(), tree, {}, 50, 1);
  REQUIRE(model);
  transfer::ReachQuestion question{node("median branch to flexor carpi radialis"),
                                   node("posterior interosseous nerve")};
  const auto whole = model->reach(question);
  REQUIRE(whole);
  question.targets = {node("posterior interosseous branch to extensor pollicis longus")};
  question.spared = {node("posterior interosseous branch to extensor digitorum")};
  const auto beyond = model->reach(question);
  REQUIRE(beyond);
  CHECK(beyond->to_nearest_mm.p50 > 0.0);
  // Sparing takes away recipient that could be freed.
  transfer::ReachQuestion unspared = question;
  unspared.spared.clear();
  const auto longer = model->reach(unspared);
  REQUIRE(longer);
  CHECK(beyond->recipient_mm.p50 < longer->recipient_mm.p50);
  CHECK(beyond->slack_mm->p50 < longer->slack_mm->p50);
  question.spared = {node("anterior interosseous nerve")};
  CHECK_FALSE(model->reach(question));
}
