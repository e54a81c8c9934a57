#pragma once
#include <string>

#include "command.hpp"
#include "models/limb/distance.hpp"

namespace endplate::cli {

Json distance_json(const CommonOptions& common, Side side, const limb::DistanceAnswer& answer);
std::string distance_text(Side side, const limb::DistanceAnswer& answer);

}  // namespace endplate::cli
