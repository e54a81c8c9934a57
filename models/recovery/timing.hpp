#pragma once
// When an operation is worth what: the chance of a useful result against the date of a repair.
#include <optional>
#include <string>
#include <vector>

#include "models/recovery/forecast.hpp"

namespace endplate::recovery {

struct ChanceByDate {
  double days = 0.0;  // of the operation, from the injury
  double chance = 0.0;
};

struct OperationTiming {
  std::string procedure;  // "direct repair" or "graft"
  std::string scale;      // "M3", or "S3" where no muscle lies below
  std::string of;         // whose chance it is, in words
  std::vector<ChanceByDate> chance_by_date;
  // Latest day with at least nine tenths of the first day's chance; absent when that is already
  // unlikely.
  std::optional<double> best_before_days;
  // First day with less than one chance in five; absent when the curve stays above.
  std::optional<double> unlikely_after_days;
};

// The curve from `first_days` (not before the injury) in steps of 30 days over three years, of the
// mean over the muscles below the lesions that axons can reach (over the areas, where there is no
// muscle), every lesion repaired on the same day. Lesions torn from the cord stay as they are.
// Empty when nothing lies below or no lesion can be repaired. The nine tenths and the one in five
// are the project's own marks on the curve, assumed, not limits of biology.
std::optional<OperationTiming> operation_timing(const ForecastQuestion& asked, double first_days,
                                                bool graft);

}  // namespace endplate::recovery
