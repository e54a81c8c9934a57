#pragma once
// What a case's limb is made of; for case_limb*.cpp only.
#include <string>
#include <vector>

#include "models/limb/atlas.hpp"
#include "models/limb/case_limb.hpp"
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
  NerveRouteLayout layout;
  std::vector<std::string> assumptions;
};

}  // namespace endplate::limb
