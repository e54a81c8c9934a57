#pragma once
#include <iosfwd>

#include "models/core/error.hpp"

namespace endplate::cli {

// One line a problem: "error: PLACE: WHAT. MEND".
void print_error(const Error& error, std::ostream& err);

int exit_status(Fault fault);

}  // namespace endplate::cli
