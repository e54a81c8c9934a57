#pragma once
// Where tapping the nerve should tingle, by date, if axons grow.
#include <string>
#include <vector>

#include "models/recovery/forecast.hpp"

namespace endplate::recovery {

struct TinelStep {
  double days = 0.0;   // from the injury
  Summary advance_mm;  // along the nerve, from the lesion
};

struct TinelSchedule {
  std::vector<TinelStep> steps;  // empty when the sign says nothing
  std::string toward;            // the skin area that the way leads to
  double length_mm = 0.0;        // the whole way, of the mean patient
  std::string says_nothing;      // why there are no steps
};

// Monthly from `first_days` until the median front has come to the farthest skin area below the
// most proximal lesion, at most twelve steps. The sign needs skin fibres: below a deep motor branch
// it says nothing.
TinelSchedule tinel_schedule(const ForecastQuestion& question, const Forecast& forecast,
                             double first_days);

}  // namespace endplate::recovery
