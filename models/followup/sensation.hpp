#pragma once
// Sensation as a finding of the forecast.
#include <vector>

#include "models/casefile/case.hpp"
#include "models/recovery/forecast.hpp"

namespace endplate::followup {

// S3 or better, or its absence, in autonomous zones that hang wholly below the lesions, in days
// from the injury. Elsewhere neighbours creep in, and less than S3 (or "reduced") tells regrowth
// from neither overlap nor spared fibres, so it says nothing.
std::vector<recovery::Finding> sensation_findings(
    const casefile::Case& patient, casefile::Date day_zero,
    const std::vector<recovery::TargetBelow>& targets);

}  // namespace endplate::followup
