#pragma once
// What injuries do to axons that run a given way.
#include <optional>
#include <span>

#include "models/anatomy/lesion.hpp"
#include "models/examination/axon_path.hpp"

namespace endplate::examination {

enum class Extent {
  complete,
  partial,          // some axons are whole; which ones is unknown
  conduction_block  // axons whole, conduction stopped (neurapraxia)
};

struct TreeInjury {
  anatomy::Lesion lesion;
  Extent extent = Extent::complete;
};

// From the lightest to the heaviest.
enum class Block {
  open,
  in_doubt,  // the axons leave the injured nerve about where the injury is
  partial,
  cut
};

struct Interruption {
  Block block = Block::open;
  std::size_t injury = 0;  // the first of the heaviest; of no meaning when open
};

// The axons count as leaving before or beyond the injury when one of the two has this chance at
// least; between them it is in doubt. Assumed: a tenth is what a surgeon would still mention.
inline constexpr double kSureChance = 0.9;

// Chance that the injury lies on the path: place of injury and of branch normal and independent.
double chance_on_path(const AxonPath& path, const anatomy::Lesion& lesion);

Interruption interruption(const AxonPath& path, std::span<const TreeInjury> injuries);

// Axons of one kind that may come by several ways, each with an unknown share.
Interruption interruption(std::span<const AxonPath> paths, std::span<const TreeInjury> injuries);

}  // namespace endplate::examination
