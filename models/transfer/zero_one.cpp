#include "models/transfer/zero_one.hpp"

#include <glpk.h>

#include <algorithm>
#include <cstddef>
#include <limits>
#include <memory>
#include <string>

namespace endplate::transfer {
namespace {

// Objectives that follow each other are solved at once, as the digits of one number, as long as
// that number stays below this. Far below 10^7, where the solver's relative tolerance on objectives
// (10^-7) would no longer tell two whole numbers apart.
constexpr long kMostWeight = 1L << 12;

// GLPK keeps its memory by thread. No other part of the program uses it, so a call may free all.
struct Environment {
  Environment() { glp_term_out(GLP_OFF); }
  Environment(const Environment&) = delete;
  Environment& operator=(const Environment&) = delete;
  ~Environment() { glp_free_env(); }
};

Error failure(std::string what) {
  return Error::internal({"0/1 programme", std::move(what),
                          "Report it with the case file: the program of the combination is wrong"});
}

// One term a variable, by variable, without zeros: GLPK stops the program on repeated ones.
Sum merged(Sum sum) {
  std::ranges::sort(sum, {}, &Term::variable);
  Sum one_each;
  for (const Term& term : sum) {
    if (!one_each.empty() && one_each.back().variable == term.variable) {
      one_each.back().factor += term.factor;
    } else {
      one_each.push_back(term);
    }
  }
  std::erase_if(one_each, [](const Term& term) { return term.factor == 0; });
  return one_each;
}

long value_of(const Sum& sum, const std::vector<bool>& chosen) {
  long value = 0;
  for (const Term& term : sum) {
    if (chosen[static_cast<std::size_t>(term.variable)]) value += term.factor;
  }
  return value;
}

// How many values a sum can take at most.
long span_of(const Sum& sum) {
  long span = 1;
  for (const Term& term : sum) span += std::abs(static_cast<long>(term.factor));
  return span;
}

class Solver {
 public:
  explicit Solver(const ZeroOneProgram& program)
      : problem_(glp_create_prob(), glp_delete_prob), variables_(program.variables) {
    glp_set_obj_dir(problem_.get(), GLP_MAX);
    glp_add_cols(problem_.get(), variables_);
    for (int k = 1; k <= variables_; ++k) glp_set_col_kind(problem_.get(), k, GLP_BV);
    for (const AtMost& row : program.rows) {
      add_row(merged(row.sum), GLP_UP, row.limit);
      rows_.push_back({merged(row.sum), row.limit});
    }
  }

  // Nothing where no choice keeps the rows. `known` keeps them, if it is given: it is the answer
  // where even the relaxed programme reaches no higher whole number.
  Expected<std::optional<std::vector<bool>>> solve(const std::vector<bool>* known, long reached) {
    glp_smcp simplex;
    glp_init_smcp(&simplex);
    simplex.msg_lev = GLP_MSG_OFF;
    simplex.meth = GLP_DUALP;
    if (const int status = glp_simplex(problem_.get(), &simplex); status != 0) {
      return std::unexpected(failure("the simplex method gave up: " + std::to_string(status)));
    }
    const int relaxed = glp_get_status(problem_.get());
    if (relaxed == GLP_NOFEAS) return std::nullopt;
    if (relaxed != GLP_OPT) {
      return std::unexpected(
          failure("no optimum without whole numbers: " + std::to_string(relaxed)));
    }
    if (known != nullptr &&
        glp_get_obj_val(problem_.get()) < static_cast<double>(reached) + 0.999) {
      return *known;
    }
    glp_iocp search;
    glp_init_iocp(&search);
    search.msg_lev = GLP_MSG_OFF;
    if (const int status = glp_intopt(problem_.get(), &search); status != 0) {
      return std::unexpected(failure("branch and cut gave up: " + std::to_string(status)));
    }
    const int whole = glp_mip_status(problem_.get());
    if (whole == GLP_NOFEAS) return std::nullopt;
    if (whole != GLP_OPT) {
      return std::unexpected(failure("no optimum in whole numbers: " + std::to_string(whole)));
    }
    std::vector<bool> chosen;
    for (int k = 1; k <= variables_; ++k) {
      chosen.push_back(glp_mip_col_val(problem_.get(), k) > 0.5);
    }
    for (const AtMost& row : rows_) {
      if (value_of(row.sum, chosen) > row.limit) {
        return std::unexpected(failure("the solver's answer breaks a row"));
      }
    }
    return chosen;
  }

  void aim_at(const std::vector<long>& weights) {
    for (int k = 1; k <= variables_; ++k) {
      const long weight = weights[static_cast<std::size_t>(k - 1)];
      glp_set_obj_coef(problem_.get(), k, static_cast<double>(weight));
    }
  }

  // From now on `sum` has this value.
  void fix(const Sum& sum, long value) {
    if (sum.size() == 1) {
      const Term& only = sum.front();
      glp_set_col_bnds(problem_.get(), only.variable + 1, GLP_FX, value == 0 ? 0.0 : 1.0, 0.0);
    } else if (!sum.empty()) {
      add_row(sum, GLP_FX, value);
    }
  }

 private:
  void add_row(const Sum& sum, int kind, long bound) {
    std::vector<int> columns{0};
    std::vector<double> factors{0.0};
    for (const Term& term : sum) {
      columns.push_back(term.variable + 1);
      factors.push_back(term.factor);
    }
    const int row = glp_add_rows(problem_.get(), 1);
    const auto limit = static_cast<double>(bound);
    glp_set_row_bnds(problem_.get(), row, kind, limit, limit);
    glp_set_mat_row(problem_.get(), row, static_cast<int>(sum.size()), columns.data(),
                    factors.data());
  }

  std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> problem_;
  int variables_;
  std::vector<AtMost> rows_;
};

bool names_variables(const Sum& sum, int variables) {
  return std::ranges::all_of(
      sum, [&](const Term& term) { return term.variable >= 0 && term.variable < variables; });
}

}  // namespace

Expected<std::optional<std::vector<bool>>> maximise_in_order(const ZeroOneProgram& program) {
  const bool named =
      std::ranges::all_of(
          program.rows,
          [&](const AtMost& row) { return names_variables(row.sum, program.variables); }) &&
      std::ranges::all_of(program.objectives,
                          [&](const Sum& sum) { return names_variables(sum, program.variables); });
  if (!named) return std::unexpected(failure("a term names no variable"));
  if (program.variables == 0) {
    const bool kept =
        std::ranges::all_of(program.rows, [](const AtMost& row) { return row.limit >= 0; });
    return kept ? std::optional(std::vector<bool>{}) : std::nullopt;
  }

  std::vector<Sum> objectives;
  for (const Sum& sum : program.objectives) objectives.push_back(merged(sum));

  const Environment environment;
  Solver solver(program);
  auto best = solver.solve(nullptr, 0);
  std::size_t first = 0;
  while (best && *best && first < objectives.size()) {
    // The last objective of the group counts ones, the one before it counts spans of the last.
    std::size_t end = first;
    long range = 1;
    while (end < objectives.size() &&
           (end == first || range * span_of(objectives[end]) <= kMostWeight)) {
      range *= span_of(objectives[end]);
      ++end;
    }
    std::vector<long> weights(static_cast<std::size_t>(program.variables), 0);
    long unit = 1;
    for (std::size_t k = end; k-- > first;) {
      for (const Term& term : objectives[k]) {
        weights[static_cast<std::size_t>(term.variable)] += unit * term.factor;
      }
      unit *= span_of(objectives[k]);
    }
    solver.aim_at(weights);
    long reached = 0;
    for (std::size_t k = 0; k < weights.size(); ++k) reached += (**best)[k] ? weights[k] : 0;
    const auto known = **best;
    best = solver.solve(&known, reached);
    if (best && !*best) return std::unexpected(failure("a found optimum became impossible"));
    if (!best) return best;
    for (; first < end; ++first) {
      solver.fix(objectives[first], value_of(objectives[first], **best));
    }
  }
  return best;
}

}  // namespace endplate::transfer
