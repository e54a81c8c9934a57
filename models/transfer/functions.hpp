#pragma once
// The functions of plan_functions.csv: what a transfer is for.
#include <optional>
#include <string>

#include "models/evidence/data_package.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

// The row of plan_functions.csv for a function, if it is a function at all.
std::optional<evidence::Row> function_row(const evidence::DataPackage& package,
                                          std::string_view function);

// Whether every muscle of a function that a tendon or muscle transfer restores is lost.
bool is_lost(const evidence::Row& function, const Situation& now);

// Whether the case names one of its movements.
bool is_priority(const evidence::Row& function, const Situation& now);

// "fcr_edc (finger extension)", where this case lacks that function; else nothing.
std::optional<std::string> tendon_option_words(const evidence::DataPackage& package,
                                               const evidence::Row& tendon, const Situation& now);

}  // namespace endplate::transfer
