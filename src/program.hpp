#pragma once
#include <iosfwd>

namespace endplate::cli {

// The whole program: parses the arguments, runs one command and returns the exit status
// (0 answered, 1 fault of the program, 2 wrong input, 3 outside what the model can answer).
// On any status but 0 nothing is written to `out`.
int run_program(int argc, const char* const* argv, std::ostream& out, std::ostream& err);

}  // namespace endplate::cli
