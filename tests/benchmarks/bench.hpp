#pragma once
// What every benchmark needs: a value or the end, and a clock.
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <utility>

#include "models/core/error.hpp"

namespace endplate::benchmarks {

// Ends the program where there is no value.
template <class Value>
Value need(Expected<Value> value) {
  if (value) return std::move(*value);
  for (const Problem& problem : value.error().problems) {
    std::cerr << problem.place << ": " << problem.what << '\n';
  }
  std::exit(1);
}

// Of this process on the processor, so that others on the machine count little.
inline double processor_seconds() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

}  // namespace endplate::benchmarks
