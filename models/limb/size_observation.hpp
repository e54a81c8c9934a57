#pragma once
// What a case says of the limb's size, checked and turned into an observation. Lengths in mm.
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/measure_vocabulary.hpp"
#include "models/limb/size_prior.hpp"

namespace endplate::limb {

// Nothing is said of the size. (A nerve point found by ultrasound says hardly anything of it.)
bool is_ledger_limb(const casefile::Limb& limb);
// Under 18 years.
bool is_child(const casefile::Limb& limb);

// Ages below 0 and above 120 years are refused.
Expected<void> check_age(const casefile::Limb& limb);

struct GivenSize {
  // Stature (the first variable) and the lengths of a body whose arms are alike. Where the other
  // limb was measured as well, its length stands here and this limb differs by the factors below.
  Observation observation;
  // By measure: this limb against the other one; 1 where nothing says that they differ.
  Eigen::VectorXd against_other_side;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;  // what lies outside the published range, with its source
};

// `priors`: of the sexes in question, in their order. A length within kPublished_sd spreads of one
// of them lies in the published range; beyond it the length is believed and a warning says so. A
// length that only another unit explains (below kLeast or above kMost of the expected one) is
// refused, as is a name that the vocabulary lacks.
inline constexpr double kPublished_sd = 3.0;
inline constexpr double kLeast = 0.2;
inline constexpr double kMost = 4.0;
Expected<GivenSize> read_given_size(const casefile::Limb& limb, const MeasureVocabulary& vocabulary,
                                    const SizePrior& population,
                                    const std::vector<casefile::Sex>& sexes,
                                    const std::vector<Gaussian>& priors);

// Lengths that contradict one another, such as a sum that differs from its parts, are refused.
Expected<void> check_agreement(const casefile::Limb& limb,
                               const std::vector<const Conditioning*>& conditionings);

}  // namespace endplate::limb
