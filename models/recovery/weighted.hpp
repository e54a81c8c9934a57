#pragma once
// Summaries of weighted samples.
#include <optional>
#include <span>

#include "models/core/summary.hpp"

namespace endplate::recovery {

// Mean, SD and percentiles of `values` by `weights` (>= 0, same size); values of weight 0 do not
// count. Percentiles interpolate between mid-points of weight, which for equal weights is type 7 of
// Hyndman and Fan (Am Stat 1996;50:361). Empty when nothing has weight.
std::optional<Summary> summarise_weighted(std::span<const double> values,
                                          std::span<const double> weights);

// Number of equally weighted samples that say as much: (sum w)^2 / sum w^2 (Kish 1965).
double effective_size(std::span<const double> weights);

}  // namespace endplate::recovery
