#pragma once
// From what became of each root's axons to the state of one muscle or skin area.
#include <span>
#include <string>
#include <vector>

#include "models/examination/deficit.hpp"

namespace endplate::examination {

// A muscle is denervated when every root that reaches it is cut; partial when a dominant root, or
// a part of every root, is; it may be weak when the loss is in doubt, when it lost more than half
// of its roots, or when the myotome table names it for the lost root. The loss of another minor
// root leaves it intact: textbook patterns spare triceps and flexor carpi radialis in a C5-C6
// palsy.
MuscleDeficit muscle_deficit(const anatomy::Anatomy& anatomy, std::size_t muscle,
                             const Supply& supply, std::span<const TreeInjury> injuries);

AreaDeficit area_deficit(const anatomy::Anatomy& anatomy, std::size_t area, const Supply& supply,
                         std::span<const TreeInjury> injuries);

}  // namespace endplate::examination
