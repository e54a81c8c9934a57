#pragma once
// Runs the whole program inside the test, without a process of its own.
#include <sstream>
#include <string>
#include <vector>

#include "program.hpp"

namespace endplate::test {

struct ProgramRun {
  int status = 0;
  std::string out;
  std::string err;
};

// `arguments` without the program's name; the tables are those of the source tree.
inline ProgramRun run(std::vector<std::string> arguments) {
  arguments.insert(arguments.begin(), "endplate");
  std::vector<const char*> argv;
  for (const std::string& argument : arguments) argv.push_back(argument.c_str());
  std::ostringstream out;
  std::ostringstream err;
  const int status =
      endplate::cli::run_program(static_cast<int>(argv.size()), argv.data(), out, err);
  return {status, out.str(), err.str()};
}

// As the program's own help lists it.
inline bool has_command(const std::string& command) {
  return run({"--help"}).out.find("\n  " + command + " ") != std::string::npos;
}

}  // namespace endplate::test
