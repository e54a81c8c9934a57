#pragma once
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/limb/gaussian.hpp"
#include "models/limb/size_prior.hpp"

namespace endplate::limb {

// What was not given of the size and what was taken instead, in words, one item a sentence.
std::vector<std::string> size_assumptions(const casefile::Limb& limb, double chance_female);

// Where the limb lies outside what was published: its age, and lengths that hardly occur together.
std::vector<std::string> size_warnings(const casefile::Limb& limb, const SizePrior& prior,
                                       const std::vector<const Conditioning*>& conditionings);

}  // namespace endplate::limb
