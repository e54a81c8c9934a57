#pragma once
// What a case's limb is made of; for case_limb*.cpp only.
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "models/limb/atlas.hpp"
#include "models/limb/case_limb.hpp"
#include "models/limb/found_points.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/nerve_route.hpp"
#include "models/limb/nerve_route_layout.hpp"

namespace endplate::limb {

struct CaseLimb::Parts {
  const anatomy::NerveTree* tree;
  Atlas atlas;
  LimbSize size;
  SegmentFrames frames;  // of the mean limb
  std::vector<NerveRoute> routes;
  NerveRouteLayout layout;    // its levels are the mean ones, with all that is known
  std::vector<Level> levels;  // as limbs of this size have them, before any point was found
  LevelSpread spread;
  FoundPoints found;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;

  // The landmark of that name on a nerve off the courses, or null.
  const PassedLandmark* passed(anatomy::NodeIndex nerve, std::string_view landmark) const {
    const auto& all = routes[nerve].passes;
    const auto there = std::ranges::find(all, landmark, &PassedLandmark::landmark);
    return there == all.end() ? nullptr : &*there;
  }
};

}  // namespace endplate::limb
