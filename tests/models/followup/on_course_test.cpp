// What is called, and when nothing may be called.
#include "models/followup/on_course.hpp"

#include "tests/models/recovery/fixture.hpp"

using namespace recovery_tests;
using namespace endplate::followup;
using endplate::recovery::Course;
using endplate::recovery::Progress;

namespace {

const FollowupParameters& limits() {
  static const FollowupParameters kLimits = [] {
    auto read = FollowupParameters::from(tables().package);
    REQUIRE(read);
    return std::move(*read);
  }();
  return kLimits;
}

Basis enough() {
  Basis basis;
  basis.anything_seen = true;
  basis.last_days = 90.0;
  basis.visits = 3;
  basis.span_days = 60.0;
  return basis;
}

Progress called(const ProgressChances& chances, const Basis& basis) {
  return call(chances, basis, limits()).progress;
}

}  // namespace

TEST_CASE("a state that is more likely than not is called", "[followup]") {
  CHECK(called({0.6, 0.2, 0.1, 0.1}, enough()) == Progress::ahead);
  CHECK(called({0.1, 0.6, 0.2, 0.1}, enough()) == Progress::on_course);
  CHECK(called({0.0, 0.2, 0.7, 0.1}, enough()) == Progress::late);
  CHECK(called({0.0, 0.1, 0.1, 0.8}, enough()) == Progress::no_advance);
  CHECK(called({0.2, 0.3, 0.2, 0.3}, enough()) == Progress::cannot_tell_yet);
}

TEST_CASE("no advance is called on telling evidence although growth is the likelier",
          "[followup]") {
  Basis basis = enough();
  basis.chance_no_growth_before = 0.05;
  // Odds of 1 to 19 before; 5 times these are 5 to 19, a chance of 0.208.
  CHECK(called({0.0, 0.0, 0.8, 0.2}, basis) == Progress::late);
  const Call still = call({0.0, 0.0, 0.78, 0.22}, basis, limits());
  CHECK(still.progress == Progress::no_advance);
  CHECK_FALSE(still.why.empty());
  basis.chance_no_growth_before = 0.0;  // what cannot be is not made likely by any factor
  CHECK(called({0.0, 0.0, 1.0, 0.0}, basis) == Progress::late);
}

TEST_CASE("nothing is called before six weeks, with one point, or from findings that do not fit",
          "[followup]") {
  const ProgressChances sure{0.0, 0.0, 0.0, 1.0};
  Basis basis = enough();
  basis.last_days = 41.0;
  CHECK(called(sure, basis) == Progress::cannot_tell_yet);
  basis = enough();
  basis.visits = 1;
  CHECK(called(sure, basis) == Progress::cannot_tell_yet);
  basis.telling_finding = true;  // a muscle that is due and silent speaks without a tap
  CHECK(called(sure, basis) == Progress::no_advance);
  basis = enough();
  basis.span_days = 7.0;
  CHECK(called(sure, basis) == Progress::cannot_tell_yet);
  basis = enough();
  basis.misfit = true;
  CHECK(called(sure, basis) == Progress::cannot_tell_yet);
}

TEST_CASE("a nerve without skin fibres and nothing seen is not informative", "[followup]") {
  Basis basis;
  basis.tappable = false;
  CHECK(called({0.1, 0.6, 0.2, 0.1}, basis) == Progress::not_informative);
  basis.tappable = true;
  CHECK(called({0.1, 0.6, 0.2, 0.1}, basis) == Progress::cannot_tell_yet);
}

TEST_CASE("the states part at 1 and 2 mm a day, and a block has no front", "[followup]") {
  const auto growing = [](double rate) {
    return Growth{Course::State::growth, 10.0, rate, 400.0, 0.0};
  };
  const std::vector<Growth> patients{growing(0.9),
                                     growing(1.5),
                                     growing(2.1),
                                     {Course::State::none, 0.0, 0.0, 400.0, 0.0},
                                     {Course::State::block, 0.0, 0.0, 400.0, 0.0},
                                     {Course::State::not_below, 0.0, 0.0, 0.0, 0.0}};
  const std::vector<double> weights{1.0, 2.0, 3.0, 1.0, 1.0, 50.0};
  const ProgressChances chances = progress_chances(patients, weights, limits());
  CHECK(chances.late == Approx(0.125));
  CHECK(chances.on_course == Approx(0.375));
  CHECK(chances.ahead == Approx(0.375));
  CHECK(chances.no_advance == Approx(0.125));
}
