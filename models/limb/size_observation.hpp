#pragma once
// What a case says of the limb's size, checked and turned into an observation. Lengths in mm.
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/measure_vocabulary.hpp"

namespace endplate::limb {

// Nothing is said of the size.
bool is_ledger_limb(const casefile::Limb& limb);
// Under 18 years.
bool is_child(const casefile::Limb& limb);

// Ages below 0 and above 120 years are refused.
Expected<void> check_age(const casefile::Limb& limb);

// Stature (the first variable) and every measured length. `priors`: of the sexes in question; a
// length further than kWidest_sd spreads from all of them is refused.
inline constexpr double kWidest_sd = 5.0;
Expected<Observation> observe(const casefile::Limb& limb, const MeasureVocabulary& vocabulary,
                              const std::vector<Gaussian>& priors);

// Lengths that contradict one another, such as a sum that differs from its parts, are refused.
Expected<void> check_agreement(const casefile::Limb& limb,
                               const std::vector<const Conditioning*>& conditionings);

}  // namespace endplate::limb
