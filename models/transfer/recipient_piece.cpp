#include "models/transfer/recipient_piece.hpp"

#include <algorithm>

namespace endplate::transfer {
namespace {

using anatomy::NodeIndex;

bool works_below(NodeIndex node, const Situation& now) {
  return std::ranges::any_of(now.muscles_below(node),
                             [&](std::size_t muscle) { return now.muscle_kept(muscle); });
}

bool ends_at(NodeIndex node, const Situation& now) {
  return std::ranges::any_of(now.anatomy().muscles(),
                             [&](const anatomy::Muscle& muscle) { return muscle.branch == node; });
}

}  // namespace

std::optional<SewnBeyond> sewn_beyond(NodeIndex recipient, const Situation& now) {
  const anatomy::NerveTree& tree = now.anatomy().tree();
  // A muscle on the very branch shares its stump with what works.
  if (ends_at(recipient, now)) return std::nullopt;
  SewnBeyond sewn{tree.node(recipient).name, {}, {}, {}};
  std::optional<NodeIndex> last;
  double last_mm = 0.0;
  std::vector<std::pair<NodeIndex, double>> children;
  for (const NodeIndex child : tree.node(recipient).children) {
    if (tree.node(child).parents.front() != recipient) continue;
    const double leaves_mm = now.lengths().leaves_parent_at_mm[child].front();
    children.emplace_back(child, leaves_mm);
    if (!works_below(child, now)) continue;
    sewn.spared.push_back(tree.node(child).name);
    if (last && leaves_mm <= last_mm) continue;
    last = child;
    last_mm = leaves_mm;
  }
  if (!last) return std::nullopt;
  for (const std::size_t muscle : now.muscles_below(recipient)) {
    if (now.muscle_kept(muscle)) sewn.working.push_back(now.muscle_name(muscle));
  }
  for (const auto& [child, leaves_mm] : children) {
    if (leaves_mm <= last_mm) continue;
    for (const std::size_t muscle : now.muscles_below(child)) {
      if (!now.muscle_lost(muscle)) continue;
      const std::string& branch = tree.node(now.anatomy().muscles()[muscle].branch).name;
      if (std::ranges::find(sewn.targets, branch) == sewn.targets.end()) {
        sewn.targets.push_back(branch);
      }
    }
  }
  if (!sewn.targets.empty()) return sewn;
  if (tree.node(*last).kind == anatomy::NodeKind::motor) return std::nullopt;
  return sewn_beyond(*last, now);
}

}  // namespace endplate::transfer
