#pragma once
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/size_prior.hpp"

namespace endplate::limb {

// What was not given of the size and what was taken instead, in words, one item a sentence.
std::vector<std::string> size_assumptions(const casefile::Limb& limb, const SizePrior& prior,
                                          double chance_female,
                                          const std::vector<const Conditioning*>& conditionings);

}  // namespace endplate::limb
