#pragma once
#include <string>

#include "command.hpp"
#include "models/limb/distance.hpp"

namespace endplate::cli {

Json distance_json(const CommonOptions& common, const casefile::Limb& limb,
                   const limb::DistanceAnswer& answer);
std::string distance_text(const casefile::Limb& limb, const limb::DistanceAnswer& answer);

}  // namespace endplate::cli
