#pragma once
// Mean, spread and percentiles of long columns.
#include <optional>
#include <span>

#include "models/core/summary.hpp"

namespace endplate::recovery {

// The percentiles are exact, by type 7 of Hyndman and Fan (Am Stat 1996;50:361); mean and SD are
// right to about 1e-7 of the largest value. Empty when there are no values; none may
// be NaN.
std::optional<Summary> summarise_column(std::span<const float> values);

}  // namespace endplate::recovery
