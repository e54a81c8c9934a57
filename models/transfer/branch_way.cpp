#include "models/transfer/branch_way.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

namespace endplate::transfer {

using anatomy::NodeIndex;

std::vector<NodeIndex> ends_below(const anatomy::NerveTree& tree, NodeIndex nerve) {
  std::vector<NodeIndex> ends;
  std::vector<NodeIndex> open{nerve};
  while (!open.empty()) {
    const NodeIndex node = open.back();
    open.pop_back();
    bool last = true;
    for (const NodeIndex child : tree.node(node).children) {
      if (tree.node(child).parents.front() != node) continue;
      open.push_back(child);
      last = false;
    }
    if (last) ends.push_back(node);
  }
  std::ranges::sort(ends);
  return ends;
}

double alone_above_mm(const anatomy::NerveTree& tree, const anatomy::NerveMetrics& lengths,
                      NodeIndex nerve) {
  double above_mm = 0.0;
  while (!tree.node(nerve).parents.empty()) {
    const NodeIndex parent = tree.node(nerve).parents.front();
    const double leaves_mm = lengths.leaves_parent_at_mm[nerve].front();
    std::optional<double> last_mm;
    for (const NodeIndex other : tree.node(parent).children) {
      if (other == nerve || tree.node(other).parents.front() != parent) continue;
      last_mm = std::max(last_mm.value_or(0.0), lengths.leaves_parent_at_mm[other].front());
    }
    if (last_mm) return above_mm + std::max(0.0, leaves_mm - *last_mm);
    above_mm += leaves_mm;
    nerve = parent;
  }
  return above_mm;
}

TargetWays::TargetWays(const anatomy::NerveTree& tree, NodeIndex nerve,
                       const std::vector<NodeIndex>& targets)
    : nerve_(nerve), targets_(targets) {
  const auto below = tree.descendants(nerve);
  for (const NodeIndex target : targets) {
    std::vector<Step> way;
    for (NodeIndex node = target; node != nerve;) {
      // By the usual parent where it hangs on the nerve, else by the first that does.
      const auto& parents = tree.node(node).parents;
      const auto found = std::ranges::find_if(parents, [&](NodeIndex parent) {
        return std::ranges::find(below, parent) != below.end();
      });
      way.push_back({node, static_cast<std::size_t>(found - parents.begin())});
      node = *found;
    }
    ways_.push_back(std::move(way));
  }
}

double TargetWays::leaves_mm(std::size_t t, const anatomy::NerveMetrics& lengths) const {
  if (ways_[t].empty()) return lengths.length_mm[nerve_];
  const Step& leaves = ways_[t].back();
  return lengths.leaves_parent_at_mm[leaves.node][leaves.parent];
}

double TargetWays::end_mm(std::size_t t, const anatomy::NerveMetrics& lengths) const {
  double end_mm = lengths.length_mm[targets_[t]];
  for (const Step& step : ways_[t]) end_mm += lengths.leaves_parent_at_mm[step.node][step.parent];
  return end_mm;
}

double TargetWays::first_tether_mm(const anatomy::NerveMetrics& lengths) const {
  double first_mm = lengths.length_mm[nerve_];
  for (std::size_t t = 0; t < size(); ++t) first_mm = std::min(first_mm, leaves_mm(t, lengths));
  return first_mm;
}

TargetWays::NearAndFar TargetWays::ends_mm(const anatomy::NerveMetrics& lengths) const {
  NearAndFar ends{std::numeric_limits<double>::infinity(), 0.0};
  for (std::size_t t = 0; t < size(); ++t) {
    ends.nearest_mm = std::min(ends.nearest_mm, end_mm(t, lengths));
    ends.farthest_mm = std::max(ends.farthest_mm, end_mm(t, lengths));
  }
  return ends;
}

}  // namespace endplate::transfer
