#include "models/anatomy/supply_facts.hpp"

#include <algorithm>
#include <set>

namespace endplate::anatomy {
namespace {

void walk(const Anatomy& anatomy, NodeIndex node, std::set<NodeIndex>& seen,
          std::vector<NodeIndex>& branches) {
  if (!seen.insert(node).second) return;
  branches.push_back(node);
  for (const NodeIndex child : anatomy.tree().node(node).children) {
    if (anatomy.is_constant(child, node)) walk(anatomy, child, seen, branches);
  }
}

bool runs_in(const std::optional<Route>& route, const std::set<NodeIndex>& nerves) {
  return route && (nerves.contains(route->from) || (route->into && nerves.contains(*route->into)));
}

template <class Targets>
bool changes_any(const Targets& targets, const std::vector<std::size_t>& supplied) {
  return std::ranges::any_of(targets, [&](std::size_t target) {
    return std::ranges::find(supplied, target) != supplied.end();
  });
}

}  // namespace

NerveFacts facts_of_nerve(const Anatomy& anatomy, NodeIndex nerve) {
  NerveFacts facts;
  facts.nerve = nerve;
  std::set<NodeIndex> seen;
  walk(anatomy, nerve, seen, facts.branches);
  for (const NodeIndex branch : facts.branches) {
    for (std::size_t m = 0; m < anatomy.muscles().size(); ++m) {
      if (anatomy.muscles()[m].branch == branch) facts.muscles.push_back(m);
    }
    for (std::size_t a = 0; a < anatomy.areas().size(); ++a) {
      // An area with two nerves counts for both.
      if (std::ranges::find(anatomy.areas()[a].branches, branch) !=
              anatomy.areas()[a].branches.end() &&
          std::ranges::find(facts.areas, a) == facts.areas.end()) {
        facts.areas.push_back(a);
      }
    }
  }
  for (std::size_t v = 0; v < anatomy.variants().size(); ++v) {
    const Variant& variant = anatomy.variants()[v];
    if (variant.usual) continue;
    const bool concerns = std::ranges::any_of(variant.effects, [&](const VariantEffect& effect) {
      return runs_in(effect.route, seen) || changes_any(effect.muscles, facts.muscles) ||
             changes_any(effect.areas, facts.areas);
    });
    if (concerns) facts.variants.push_back(v);
  }
  return facts;
}

std::vector<NodeIndex> usual_way(const NerveTree& tree, NodeIndex branch) {
  std::vector<NodeIndex> way{branch};
  while (!tree.node(way.back()).parents.empty()) {
    way.push_back(tree.node(way.back()).parents.front());
  }
  std::ranges::reverse(way);
  return way;
}

}  // namespace endplate::anatomy
