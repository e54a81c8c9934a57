#include "output/errors.hpp"

#include <fmt/format.h>

#include <ostream>

namespace endplate::cli {

void print_error(const Error& error, std::ostream& err) {
  for (const Problem& problem : error.problems) {
    err << fmt::format("error: {}: {}. {}\n", problem.place, problem.what, problem.mend);
  }
}

int exit_status(Fault fault) {
  switch (fault) {
    case Fault::input:
      return 2;
    case Fault::outside_model:
      return 3;
    case Fault::internal:
      return 1;
  }
  return 1;
}

}  // namespace endplate::cli
