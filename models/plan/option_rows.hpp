#pragma once
// From the rows of plan_options.csv and plan_closed.csv to options without figures: names, entry
// conditions, and what the decision makes of each.
#include "models/evidence/data_package.hpp"
#include "models/plan/answer.hpp"

namespace endplate::plan {

struct OptionRow {
  std::string id;
  double order = 0.0;
  Option option;         // kind, name, entry condition, words; its state under the decision
  bool decided = false;  // the decision says what becomes of it
  std::optional<double> first_days_low, first_days_high;  // after an operation without regrowth
};

// Those for `mechanism` (of decision_rules.csv), in the order of the table. A mechanism that is not
// run as adult trauma has rows of its own; `adult` asks for the others.
std::vector<OptionRow> option_rows(const evidence::DataPackage& package,
                                   const recovery::Decision& decision, bool adult,
                                   std::string_view mechanism);

}  // namespace endplate::plan
