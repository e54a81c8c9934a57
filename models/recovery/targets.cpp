#include "models/recovery/targets.hpp"

#include <algorithm>
#include <set>

namespace endplate::recovery {
namespace {

using anatomy::NerveMetrics;
using anatomy::NervePosition;
using anatomy::NerveTree;
using anatomy::NodeIndex;
using anatomy::NodeKind;

// Trunks, cords and mixed nerves are made of all their parents; a branch that the table gives
// several parents leaves one or the other, the first as a rule.
bool has_alternative_parents(NodeKind kind) {
  return kind == NodeKind::motor || kind == NodeKind::cutaneous || kind == NodeKind::branch;
}

void climb(const NerveTree& tree, NodeIndex node, Path below, std::vector<Path>& found) {
  below.nodes.push_back(node);
  const auto& parents = tree.node(node).parents;
  if (parents.empty()) {
    std::ranges::reverse(below.nodes);
    found.push_back(std::move(below));
    return;
  }
  for (std::size_t k = 0; k < parents.size(); ++k) {
    Path path = below;
    if (k > 0 && has_alternative_parents(tree.node(node).kind)) path.usual = false;
    climb(tree, parents[k], std::move(path), found);
  }
}

// "C5*" of a muscle's roots and "C5 root" of the tree.
bool supplies(const std::set<std::string>& roots, const std::string& root_node) {
  return std::ranges::any_of(roots,
                             [&](const std::string& root) { return root_node == root + " root"; });
}

std::vector<Path> paths_to(const NerveTree& tree, NodeIndex branch,
                           const std::vector<std::string>& root_cells) {
  std::vector<Path> all;
  climb(tree, branch, {}, all);
  std::set<std::string> roots;
  for (std::string root : root_cells) {
    std::erase(root, '*');
    roots.insert(root);
  }
  std::vector<Path> kept;
  for (const Path& path : all) {
    if (supplies(roots, tree.node(path.nodes.front()).name)) kept.push_back(path);
  }
  return kept.empty() ? all : kept;
}

// Arc length on `parent` at which `child` leaves it.
double leaves_at(const NerveTree& tree, const NerveMetrics& metrics, NodeIndex parent,
                 NodeIndex child) {
  const auto& parents = tree.node(child).parents;
  const auto k = static_cast<std::size_t>(std::ranges::find(parents, parent) - parents.begin());
  return metrics.leaves_parent_at_mm[child].at(k);
}

}  // namespace

std::vector<Target> all_targets(const NerveTree& tree, const evidence::DataPackage& package) {
  std::vector<Target> targets;
  for (const evidence::Row row : package.table("muscles")) {
    const auto branch = tree.find(row.text("branch"));
    if (!branch) continue;
    Target target;
    target.id = row.text("id");
    target.name = row.text("muscle");
    if (row.text("part") != "whole") target.name += ", " + std::string(row.text("part"));
    target.kind = TargetKind::motor;
    target.nerve = row.text("nerve");
    target.branch = *branch;
    target.paths = paths_to(tree, *branch, row.list("roots"));
    targets.push_back(std::move(target));
  }
  for (const evidence::Row row : package.table("skin_areas")) {
    if (row.text("area").starts_with("no skin")) continue;
    Target target;
    target.id = row.text("area");
    target.name = target.id;
    target.kind = TargetKind::sensory;
    target.nerve = row.text("nerve");
    target.autonomous_zone = row.text("autonomous_zone").starts_with("yes");
    bool first = true;
    for (const std::string& name : row.list("branch")) {
      const auto branch = tree.find(name);
      if (!branch) continue;
      if (first) target.branch = *branch;
      first = false;
      std::ranges::move(paths_to(tree, *branch, row.list("roots")),
                        std::back_inserter(target.paths));
    }
    if (!target.paths.empty()) targets.push_back(std::move(target));
  }
  return targets;
}

std::vector<Cut> cuts_on(const Path& path, const std::vector<NervePosition>& lesions,
                         const NerveTree& tree, const NerveMetrics& metrics) {
  // From the target upwards: what is left of the way when the path is at `departs` on a node.
  std::vector<Cut> cuts;
  double below_mm = 0.0;
  for (std::size_t i = path.nodes.size(); i-- > 0;) {
    const NodeIndex node = path.nodes[i];
    const bool last = i + 1 == path.nodes.size();
    const double departs =
        last ? metrics.length_mm[node] : leaves_at(tree, metrics, node, path.nodes[i + 1]);
    for (std::size_t k = 0; k < lesions.size(); ++k) {
      if (lesions[k].nerve == node && lesions[k].from_start_mm < departs) {
        cuts.push_back({k, below_mm + departs - lesions[k].from_start_mm});
      }
    }
    below_mm += departs;
  }
  std::ranges::stable_sort(cuts, std::greater<>(), &Cut::to_target_mm);
  return cuts;
}

std::vector<TargetBelow> targets_below(const std::vector<Target>& targets,
                                       const std::vector<NervePosition>& lesions,
                                       const NerveTree& tree, const NerveMetrics& metrics) {
  std::vector<TargetBelow> below;
  for (const Target& target : targets) {
    bool usual_cut = false;
    bool another_way = false;
    for (const Path& path : target.paths) {
      const bool cut = !cuts_on(path, lesions, tree, metrics).empty();
      usual_cut = usual_cut || (cut && path.usual);
      another_way = another_way || !cut;
    }
    if (usual_cut) below.push_back({target, another_way});
  }
  return below;
}

}  // namespace endplate::recovery
