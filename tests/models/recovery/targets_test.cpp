#include "fixture.hpp"

using namespace recovery_tests;

TEST_CASE("a branch that leaves above the lesion is no target, one below is", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)});
  CHECK(asked.has("BR"));
  CHECK(asked.has("EI"));
  CHECK(asked.has("first dorsal web space"));
  CHECK_FALSE(asked.has("TRI-LH"));
  CHECK_FALSE(asked.has("FCU"));
}

TEST_CASE("the way to a target runs from the lesion along every nerve between", "[recovery]") {
  const Asked asked(radial_limb(), {lesion_on("radial nerve", 180.0)});
  const auto& target = asked.question.targets[asked.index("EI")].target;
  const auto cuts = recovery::cuts_on(target.paths.front(), {{node("radial nerve"), 180.0}},
                                      tables().tree, asked.limbs[0]);
  REQUIRE(cuts.size() == 1);
  // 180 to 330 on the radial nerve, 70 on its deep branch, 80 on the posterior interosseous
  // nerve, 50 on the branch.
  CHECK(cuts[0].to_target_mm == Approx(150.0 + 70.0 + 80.0 + 50.0));
}

TEST_CASE("no wrist-joint branch stands among the skin areas", "[recovery]") {
  for (const auto& target : tables().targets)
    CHECK(target.name.find("no skin") == std::string::npos);
}

TEST_CASE("after one root of two a muscle is partial, after both it is whole below", "[recovery]") {
  const MadeUpLimb limb;
  const Asked one(limb, {lesion_on("C5 root", 10.0)});
  const Asked both(limb, {lesion_on("C5 root", 10.0), lesion_on("C6 root", 10.0)});
  CHECK(one.question.targets[one.index("BIC-L")].partial);
  CHECK_FALSE(both.question.targets[both.index("BIC-L")].partial);
  CHECK_FALSE(both.has("FDI"));
}

TEST_CASE("an occasional second origin makes a muscle partial, never a target of its own",
          "[recovery]") {
  // Extensor carpi radialis brevis: from the superficial branch in 25 % (muscles.csv, nerve_tree).
  const MadeUpLimb limb = radial_limb();
  const Asked deep(limb, {lesion_on("deep branch of radial nerve", 2.0)});
  const Asked superficial(limb, {lesion_on("superficial branch of radial nerve", 2.0)});
  CHECK(deep.question.targets[deep.index("ECRB")].partial);
  CHECK_FALSE(superficial.has("ECRB"));
  CHECK(superficial.has("first dorsal web space"));
}
