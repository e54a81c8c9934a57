#pragma once
// Exact optimum of a small 0/1 programme with objectives in order of importance (GLPK, branch and
// cut). The only place that knows the solver.
#include <optional>
#include <vector>

#include "models/core/error.hpp"

namespace endplate::transfer {

struct Term {
  int variable = 0;  // 0 .. variables - 1
  int factor = 0;
  bool operator==(const Term&) const = default;
};

// A sum over the variables; one variable may stand in several terms.
using Sum = std::vector<Term>;

struct AtMost {
  Sum sum;
  int limit = 0;
};

struct ZeroOneProgram {
  int variables = 0;  // each is 0 or 1
  std::vector<AtMost> rows;
  std::vector<Sum> objectives;  // each is made as large as those before it allow
};

// The best choice. It is the only one if the objectives tell any two choices apart; else one of the
// best. Nothing where no choice keeps all rows. Error: `internal` where a term names no variable,
// the solver gives up, or its answer breaks a row when counted again in whole numbers. Safe to call
// from several threads at once: each call has the solver's state of its own thread.
Expected<std::optional<std::vector<bool>>> maximise_in_order(const ZeroOneProgram& program);

}  // namespace endplate::transfer
