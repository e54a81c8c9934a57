#pragma once
// How the tables write the bone with which a place moves.
#include <optional>
#include <string_view>

#include "models/limb/posed_space.hpp"

namespace endplate::limb {

// Nothing for "soft": a place that moves with the flesh.
std::optional<Bone> bone_from(std::string_view text);

}  // namespace endplate::limb
