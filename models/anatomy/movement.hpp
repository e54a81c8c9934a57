#pragma once
// Movements, the muscles that make them and those that can stand in. Read from movements.csv.
#include <string>
#include <vector>

#include "models/anatomy/muscle.hpp"

namespace endplate::anatomy {

struct Movement {
  std::string name;                       // "elbow flexion"
  std::string region;                     // "elbow"
  std::vector<std::size_t> prime_movers;  // into the muscles
  std::vector<std::size_t> substitutes;   // into the muscles
  std::string how_substituted;            // in words; empty without substitutes
  std::string source;
  evidence::Provenance provenance = evidence::Provenance::assumed;
};

// Every muscle named must exist and stand once in its movement.
Expected<std::vector<Movement>> read_movements(const evidence::DataPackage& package,
                                               const std::vector<Muscle>& muscles);

}  // namespace endplate::anatomy
