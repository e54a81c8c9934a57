#include "models/examination/supply.hpp"

#include <algorithm>
#include <array>
#include <iterator>

namespace endplate::examination {
namespace {

using anatomy::Anatomy;
using anatomy::Effect;
using anatomy::NodeIndex;
using anatomy::RootSupply;
using anatomy::VariantEffect;

// A muscle or an area, for what follows the same thing.
struct Target {
  std::vector<RootSupply> roots;
  std::vector<NodeIndex> branches;  // its own last branches; `split` says what they mean
  bool split = false;               // each branch serves a part of its own (skin)
};

// The parts of a motor branch that the tree draws one by one, else the branch itself.
std::vector<NodeIndex> motor_ends(const Anatomy& anatomy, NodeIndex branch) {
  std::vector<NodeIndex> ends;
  for (const NodeIndex child : anatomy.tree().node(branch).children) {
    if (anatomy.tree().node(child).kind == anatomy::NodeKind::motor) ends.push_back(child);
  }
  return ends.empty() ? std::vector{branch} : ends;
}

void add_strand(std::vector<Strand>& strands, const RootSupply& root, std::vector<AxonPath> paths) {
  if (!paths.empty()) strands.push_back({root, std::move(paths)});
}

std::vector<AxonPath> root_paths(const Anatomy& anatomy, const BranchPlaces& places,
                                 const std::string& root, NodeIndex branch) {
  const auto node = anatomy.root_node(root);
  if (!node) return {};
  return paths_between(anatomy, places, *node, kBeginning, branch, kEnd);
}

std::vector<Strand> standard_strands(const Anatomy& anatomy, const BranchPlaces& places,
                                     const Target& target) {
  std::vector<Strand> strands;
  for (const RootSupply& root : target.roots) {
    std::vector<AxonPath> together;
    for (const NodeIndex branch : target.branches) {
      auto paths = root_paths(anatomy, places, root.root, branch);
      if (target.split) {
        add_strand(strands, root, std::move(paths));
      } else {
        std::ranges::move(paths, std::back_inserter(together));
      }
    }
    add_strand(strands, root, std::move(together));
  }
  return strands;
}

std::vector<Strand> route_strands(const Anatomy& anatomy, const BranchPlaces& places,
                                  const Target& target, NodeIndex branch,
                                  const anatomy::Route& route) {
  std::vector<Strand> strands;
  for (const RootSupply& root : target.roots) {
    add_strand(strands, root,
               paths_by_route(anatomy, places, *anatomy.root_node(root.root), route, branch));
  }
  if (!strands.empty()) return strands;
  // None of the target's usual roots runs in that nerve, so it brings its own.
  for (const std::string& name : anatomy.tree().node(route.from).roots) {
    add_strand(strands, {name, false, false},
               paths_by_route(anatomy, places, *anatomy.root_node(name), route, branch));
  }
  return strands;
}

constexpr std::array kRootOrder = {"C3", "C4", "C5", "C6", "C7", "C8", "T1", "T2"};

// The usual root `name` may come in part by its neighbour, `step` places lower in the neck.
std::vector<AxonPath> shifted_paths(const Anatomy& anatomy, const BranchPlaces& places,
                                    const std::string& name, int step, NodeIndex branch) {
  const auto found = std::ranges::find(kRootOrder, name);
  if (found == kRootOrder.end()) return {};
  const auto index = (found - kRootOrder.begin()) + step;
  if (index < 0 || index >= std::ssize(kRootOrder)) return {};
  const std::string neighbour = kRootOrder[static_cast<std::size_t>(index)];
  auto paths = root_paths(anatomy, places, neighbour, branch);
  if (!paths.empty()) return paths;
  // The neighbour has no way of its own in the usual tree: it joins where the usual root ends.
  paths = root_paths(anatomy, places, name, branch);
  for (AxonPath& path : paths) path.front() = {*anatomy.root_node(neighbour), kBeginning, kEnd};
  return paths;
}

class Builder {
 public:
  Builder(const Anatomy& anatomy, const BranchPlaces& places, Target target, NodeIndex branch)
      : anatomy_(anatomy), places_(places), target_(std::move(target)), branch_(branch) {}

  Supply build(const std::vector<const VariantEffect*>& given,
               const std::vector<const VariantEffect*>& usual) {
    const bool settled = std::ranges::any_of(given, [](const VariantEffect* effect) {
      return effect->effect == Effect::instead || effect->effect == Effect::standard_only;
    });
    for (const VariantEffect* effect : given) apply(*effect);
    if (supply_.alternatives.empty()) {
      supply_.alternatives.push_back(standard_strands(anatomy_, places_, target_));
    }
    if (!settled) {
      for (const VariantEffect* effect : usual) apply(*effect);
    }
    return std::move(supply_);
  }

 private:
  void apply(const VariantEffect& effect) {
    supply_.effects.push_back(effect.id);
    switch (effect.effect) {
      case Effect::instead:
        supply_.alternatives.push_back(
            route_strands(anatomy_, places_, target_, branch_, *effect.route));
        return;
      case Effect::as_well:
        std::ranges::move(route_strands(anatomy_, places_, target_, branch_, *effect.route),
                          std::back_inserter(supply_.additions));
        return;
      case Effect::standard_only:
        return;
      case Effect::absent:
        supply_.absent = true;
        return;
      case Effect::roots_one_higher:
      case Effect::roots_one_lower:
        shift(effect.effect == Effect::roots_one_higher ? -1 : 1);
        return;
    }
  }

  void shift(int step) {
    for (const RootSupply& root : target_.roots) {
      for (const NodeIndex branch : target_.branches) {
        add_strand(supply_.additions, root,
                   shifted_paths(anatomy_, places_, root.root, step, branch));
      }
    }
  }

  const Anatomy& anatomy_;
  const BranchPlaces& places_;
  Target target_;
  NodeIndex branch_;
  Supply supply_;
};

// Effects of given and of usual variants on one target.
template <class Concerns>
Supply build(Builder builder, const Anatomy& anatomy, Variants given, const Concerns& concerns) {
  std::vector<const VariantEffect*> from_given;
  std::vector<const VariantEffect*> from_usual;
  for (std::size_t v = 0; v < anatomy.variants().size(); ++v) {
    const bool is_given = std::ranges::count(given, v) > 0;
    if (!is_given && !anatomy.variants()[v].usual) continue;
    for (const VariantEffect& effect : anatomy.variants()[v].effects) {
      if (effect.all_targets || concerns(effect))
        (is_given ? from_given : from_usual).push_back(&effect);
    }
  }
  return builder.build(from_given, from_usual);
}

}  // namespace

Supply supply_of_muscle(const Anatomy& anatomy, const BranchPlaces& places, std::size_t muscle,
                        Variants given) {
  const anatomy::Muscle& row = anatomy.muscles()[muscle];
  Target target{row.roots, motor_ends(anatomy, row.branch), false};
  return build(
      Builder(anatomy, places, std::move(target), row.branch), anatomy, given,
      [&](const VariantEffect& effect) { return std::ranges::count(effect.muscles, muscle) > 0; });
}

Supply supply_of_area(const Anatomy& anatomy, const BranchPlaces& places, std::size_t area,
                      Variants given) {
  const anatomy::SkinArea& row = anatomy.areas()[area];
  Target target{{}, row.branches, true};
  for (const std::string& root : row.roots) target.roots.push_back({root, false, false});
  return build(
      Builder(anatomy, places, std::move(target), row.branches.front()), anatomy, given,
      [&](const VariantEffect& effect) { return std::ranges::count(effect.areas, area) > 0; });
}

}  // namespace endplate::examination
