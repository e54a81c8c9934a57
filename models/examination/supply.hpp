#pragma once
// All the ways that the axons of one muscle or one skin area come, in a limb with given variants.
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "models/examination/axon_path.hpp"

namespace endplate::examination {

// Axons of one root on their way to one end branch of the target.
struct Strand {
  anatomy::RootSupply root;
  std::vector<AxonPath> paths;
};

struct Supply {
  // The usual way first. Several: a limb has one of them and it is not known which.
  std::vector<std::vector<Strand>> alternatives;
  // Further strands that bring some axons as well; their share is unknown.
  std::vector<Strand> additions;
  std::vector<std::string> effects;  // rows of variant_effects.csv that count here
  bool absent = false;               // there is no such muscle, or the area has no nerve to test
};

// Indices into Anatomy::variants(); a variant that is neither given nor usual does not count.
using Variants = std::span<const std::size_t>;

Supply supply_of_muscle(const anatomy::Anatomy& anatomy, const BranchPlaces& places,
                        std::size_t muscle, Variants given);
Supply supply_of_area(const anatomy::Anatomy& anatomy, const BranchPlaces& places, std::size_t area,
                      Variants given);

}  // namespace endplate::examination
