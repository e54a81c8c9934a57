#include "models/examination/axon_path.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace endplate::examination {

using anatomy::Anatomy;
using anatomy::NodeIndex;

BranchSpread branch_spread(const anatomy::NerveMetrics& mean,
                           std::span<const anatomy::NerveMetrics> samples,
                           const anatomy::NerveTree& tree) {
  BranchSpread spread;
  if (samples.size() < 2) return spread;
  spread.sd_mm.resize(tree.size());
  const auto n = static_cast<double>(samples.size());
  for (NodeIndex child = 0; child < tree.size(); ++child) {
    const auto& parents = tree.node(child).parents;
    for (std::size_t p = 0; p < parents.size(); ++p) {
      double sum = 0.0;
      double squares = 0.0;
      for (const auto& limb : samples) {
        const double fraction = limb.leaves_parent_at_mm[child][p] / limb.length_mm[parents[p]];
        sum += fraction;
        squares += fraction * fraction;
      }
      const double variance = std::max(0.0, (squares - sum * sum / n) / (n - 1.0));
      const double sd = std::sqrt(variance) * mean.length_mm[parents[p]];
      spread.sd_mm[child].push_back(std::isfinite(sd) ? sd : 0.0);
    }
  }
  return spread;
}

PlaceAlong BranchPlaces::leaves(NodeIndex child, NodeIndex parent) const {
  const auto& parents = tree_.node(child).parents;
  const auto which = static_cast<std::size_t>(std::ranges::find(parents, parent) - parents.begin());
  const double mm = metrics_.leaves_parent_at_mm.at(child).at(which);
  const double sd = spread_.sd_mm.empty() ? 0.0 : spread_.sd_mm.at(child).at(which);
  return {mm, sd};
}

PlaceAlong BranchPlaces::between(NodeIndex nerve, std::optional<NodeIndex> after,
                                 std::optional<NodeIndex> before) const {
  const PlaceAlong low = after ? leaves(*after, nerve) : PlaceAlong{0.0, 0.0};
  const PlaceAlong high =
      before ? leaves(*before, nerve) : PlaceAlong{metrics_.length_mm.at(nerve), 0.0};
  // SD of a place that may lie anywhere between the two alike.
  return {std::midpoint(low.mm, high.mm), std::abs(high.mm - low.mm) / std::sqrt(12.0)};
}

std::vector<AxonPath> paths_between(const Anatomy& anatomy, const BranchPlaces& places,
                                    NodeIndex start, PlaceAlong enters, NodeIndex target,
                                    PlaceAlong leaves) {
  if (start == target) return {{{target, enters, leaves}}};
  std::vector<AxonPath> result;
  for (const NodeIndex parent : anatomy.tree().node(target).parents) {
    if (!anatomy.is_constant(target, parent)) continue;
    for (AxonPath& path :
         paths_between(anatomy, places, start, enters, parent, places.leaves(target, parent))) {
      path.push_back({target, kBeginning, leaves});
      result.push_back(std::move(path));
    }
  }
  return result;
}

std::vector<AxonPath> paths_by_route(const Anatomy& anatomy, const BranchPlaces& places,
                                     NodeIndex root, const anatomy::Route& route,
                                     NodeIndex target) {
  const auto is_branch_of = [&](NodeIndex branch, NodeIndex nerve) {
    return std::ranges::count(anatomy.tree().node(branch).parents, nerve) > 0;
  };
  PlaceAlong leaves = kEnd;
  if (route.leaves_after || route.leaves_before) {
    leaves = places.between(route.from, route.leaves_after, route.leaves_before);
  } else if (route.through) {
    leaves = places.leaves(*route.through, route.from);
  } else if (is_branch_of(target, route.from)) {
    leaves = places.leaves(target, route.from);
  }

  std::vector<AxonPath> tails;
  if (route.into) {
    const bool placed = route.enters_after || route.enters_before;
    const PlaceAlong enters =
        placed ? places.between(*route.into, route.enters_after, route.enters_before) : kBeginning;
    tails = paths_between(anatomy, places, *route.into, enters, target, kEnd);
  } else if (is_branch_of(target, route.from)) {
    tails = {{{target, kBeginning, kEnd}}};
  } else {
    tails = {{}};  // a twig of its own, straight into the target
  }

  std::vector<AxonPath> result;
  for (const AxonPath& head :
       paths_between(anatomy, places, root, kBeginning, route.from, leaves)) {
    for (const AxonPath& tail : tails) {
      AxonPath path = head;
      if (route.through) path.push_back({*route.through, kBeginning, kEnd});
      path.insert(path.end(), tail.begin(), tail.end());
      result.push_back(std::move(path));
    }
  }
  return result;
}

}  // namespace endplate::examination
