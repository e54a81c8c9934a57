// The 0/1 programme: known optima, no choice at all, and what a caller can get wrong.
#include "models/transfer/zero_one.hpp"

#include <catch2/catch.hpp>

using namespace endplate::transfer;

TEST_CASE("a known knapsack gets its optimum", "[transfer][zero_one]") {
  // Values 10, 13, 18, 31, 7, 15 and weights 2, 3, 4, 5, 1, 4 within 10: 31 + 18 + 7, tried by
  // hand.
  ZeroOneProgram program;
  program.variables = 6;
  program.rows = {{{{0, 2}, {1, 3}, {2, 4}, {3, 5}, {4, 1}, {5, 4}}, 10}};
  program.objectives = {{{0, 10}, {1, 13}, {2, 18}, {3, 31}, {4, 7}, {5, 15}}};
  const auto best = maximise_in_order(program);
  REQUIRE(best);
  CHECK(*best == std::vector<bool>{false, false, true, true, true, false});
}

TEST_CASE("the last unit is not given away", "[transfer][zero_one]") {
  ZeroOneProgram program;
  program.variables = 1;
  program.objectives = {{{0, 1}}};
  CHECK(maximise_in_order(program) == std::vector<bool>{true});
}

TEST_CASE("an earlier objective is never given up for a later one", "[transfer][zero_one]") {
  // One of three; the first objective has two best, the second tells them apart.
  ZeroOneProgram program;
  program.variables = 3;
  program.rows = {{{{0, 1}, {1, 1}, {2, 1}}, 1}};
  program.objectives = {{{0, 2}, {1, 2}, {2, 1}}, {{0, 1}, {1, 3}, {2, 1000}}};
  CHECK(maximise_in_order(program) == std::vector<bool>{false, true, false});
}

TEST_CASE("terms that name one variable twice are added", "[transfer][zero_one]") {
  ZeroOneProgram program;
  program.variables = 1;
  program.objectives = {{{0, 1}, {0, -2}}, {{0, 1}, {0, -1}}};
  CHECK(maximise_in_order(program) == std::vector<bool>{false});
}

TEST_CASE("a programme that no choice fulfils has no answer", "[transfer][zero_one]") {
  ZeroOneProgram relaxed;  // not even between the whole numbers
  relaxed.variables = 2;
  relaxed.rows = {{{{0, 1}, {1, 1}}, -1}};
  const auto none = maximise_in_order(relaxed);
  REQUIRE(none);
  CHECK_FALSE(none->has_value());

  ZeroOneProgram whole;  // 2x = 1
  whole.variables = 1;
  whole.rows = {{{{0, 2}}, 1}, {{{0, -2}}, -1}};
  const auto neither = maximise_in_order(whole);
  REQUIRE(neither);
  CHECK_FALSE(neither->has_value());

  ZeroOneProgram empty;
  REQUIRE(maximise_in_order(empty));
  CHECK(maximise_in_order(empty)->has_value());
  empty.rows = {{{}, -1}};
  CHECK_FALSE(maximise_in_order(empty)->has_value());
}

TEST_CASE("a term that names no variable is an error", "[transfer][zero_one]") {
  ZeroOneProgram program;
  program.variables = 1;
  program.objectives = {{{1, 1}}};
  const auto answer = maximise_in_order(program);
  REQUIRE_FALSE(answer);
  CHECK(answer.error().fault == endplate::Fault::internal);
}
