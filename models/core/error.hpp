#pragma once
// Errors are values. Every problem says where it is, what is wrong and how to mend it.
#include <expected>
#include <string>
#include <utility>
#include <vector>

namespace endplate {

enum class Fault {
  input,          // the input or the arguments are wrong (exit status 2)
  outside_model,  // the input is valid but the model cannot answer it (exit status 3)
  internal        // a fault of the program or of its data files (exit status 1)
};

struct Problem {
  std::string place;  // a JSON Pointer, "FILE row R column C" or an option name
  std::string what;
  std::string mend;
  bool operator==(const Problem&) const = default;
};

// At least one problem, all of them of one fault.
struct Error {
  Fault fault = Fault::input;
  std::vector<Problem> problems;

  static Error input(Problem p) { return {Fault::input, {std::move(p)}}; }
  static Error outside_model(Problem p) { return {Fault::outside_model, {std::move(p)}}; }
  static Error internal(Problem p) { return {Fault::internal, {std::move(p)}}; }
};

template <class T>
using Expected = std::expected<T, Error>;

}  // namespace endplate
