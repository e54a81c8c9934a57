#include "models/transfer/donor.hpp"

#include <algorithm>
#include <map>

namespace endplate::transfer {
namespace {

using anatomy::NodeIndex;
using evidence::Row;

// Of several donors that must all work the worst counts, of those that may stand in the best.
JudgedDonor joined(const std::vector<JudgedDonor>& parts, bool any) {
  constexpr auto rank = [](const JudgedDonor& judged) {
    switch (judged.state) {
      case DonorState::dead:
        return 0;
      case DonorState::weak:
        return 1;
      case DonorState::not_judged:
        return 2;
      case DonorState::strong:
        break;
    }
    return 3;
  };
  if (parts.empty()) return {};
  return any ? *std::ranges::max_element(parts, {}, rank)
             : *std::ranges::min_element(parts, {}, rank);
}

// "radial branch to supinator" of "radial branch to supinator (medial)"
std::string_view stem(std::string_view name) {
  return name.substr(0, name.find(" ("));
}

// Another branch of the same parent to the same muscle: that one is left.
bool has_sibling(NodeIndex node, const anatomy::NerveTree& tree) {
  const std::string& name = tree.node(node).name;
  if (tree.node(node).parents.empty()) return false;
  const auto& siblings = tree.node(tree.node(node).parents.front()).children;
  return std::ranges::any_of(siblings, [&](NodeIndex sibling) {
    const std::string& other = tree.node(sibling).name;
    return sibling != node && stem(other) == stem(name) && stem(other) != other;
  });
}

// A muscle may stand in for the donor's own, as the shrug does for the lower trapezius; but where
// every muscle of the donor itself is known to be weak or dead, so is the donor.
JudgedDonor not_better_than_own(JudgedDonor judged, const Row& row, const Row& rule,
                                const Situation& now) {
  if (judged.state != DonorState::strong || rule.text("judged_by") != "grade") return judged;
  const anatomy::NerveTree& tree = now.anatomy().tree();
  const bool each = !rule.text("together").empty();
  std::map<std::string, std::vector<JudgedDonor>> own;  // by nerve, where one of each is cut
  for (const NodeIndex node : nodes(row, "donor_node", tree)) {
    const auto& parents = tree.node(node).parents;
    const std::string nerve = each && !parents.empty() ? tree.node(parents.front()).name : "";
    for (const std::size_t muscle : now.muscles_below(node)) {
      JudgedDonor part;
      part.state = now.donor(muscle, part.why);
      own[nerve].push_back(std::move(part));
    }
  }
  for (const auto& [nerve, parts] : own) {
    const JudgedDonor best = joined(parts, true);
    if (best.state == DonorState::dead || best.state == DonorState::weak) return best;
  }
  return judged;
}

}  // namespace

std::vector<NodeIndex> nodes(const Row& row, const char* column, const anatomy::NerveTree& tree) {
  std::vector<NodeIndex> found;
  for (const std::string& name : row.list(column)) {
    if (const auto node = tree.find(name)) found.push_back(*node);
  }
  return found;
}

std::optional<Row> donor_rule(const evidence::DataPackage& package, std::string_view transfer) {
  for (const Row row : package.table("plan_donors")) {
    if (row.text("transfer") == transfer) return row;
  }
  return std::nullopt;
}

JudgedDonor judge_donor(const Row& row, const std::optional<Row>& rule, bool skin,
                        const Situation& now) {
  std::vector<JudgedDonor> parts;
  if (rule) {
    if (rule->text("judged_by") == "none") {
      return {DonorState::not_judged, std::string(rule->text("ask"))};
    }
    for (const std::string& id : rule->list("muscles")) {
      const std::size_t muscle = *now.anatomy().find_muscle(id);
      JudgedDonor part;
      part.state = rule->text("judged_by") == "emg" ? now.donor_by_emg(muscle, part.why)
                                                    : now.donor(muscle, part.why);
      parts.push_back(std::move(part));
    }
    return not_better_than_own(joined(parts, rule->text("rule") == "any"), row, *rule, now);
  }
  for (const NodeIndex node : nodes(row, "donor_node", now.anatomy().tree())) {
    for (const std::size_t target : skin ? now.areas_below(node) : now.muscles_below(node)) {
      JudgedDonor part;
      part.state = skin ? now.donor_area(target, part.why) : now.donor(target, part.why);
      parts.push_back(std::move(part));
    }
  }
  if (parts.empty()) return {DonorState::not_judged, "nothing in the case file judges the donor"};
  return joined(parts, false);
}

std::set<std::string> donor_muscles(const Row& row, const std::optional<Row>& rule,
                                    const Situation& now) {
  std::set<std::string> keys;
  if (rule) {
    for (std::string& id : rule->list("muscles")) keys.insert(std::move(id));
    return keys;
  }
  for (const NodeIndex node : nodes(row, "donor_node", now.anatomy().tree())) {
    for (const std::size_t m : now.muscles_below(node)) keys.insert(now.anatomy().muscles()[m].id);
  }
  return keys;
}

Cut cut_at(NodeIndex node, const Situation& now) {
  const anatomy::NerveTree& tree = now.anatomy().tree();
  Cut cut;
  cut.node = tree.node(node).name;
  if (const auto& parents = tree.node(node).parents; !parents.empty()) {
    cut.nerve = tree.node(parents.front()).name;
  }
  const bool sibling = has_sibling(node, tree);
  for (const std::size_t m : now.muscles_below(node)) {
    (sibling ? cut.in_part : cut.muscles).push_back(now.muscle_name(m));
  }
  for (const std::size_t a : now.areas_below(node))
    cut.areas.push_back(now.anatomy().areas()[a].name);
  if (!cut.muscles.empty() || !cut.in_part.empty() || tree.node(node).parents.empty()) return cut;
  // A part of a muscle's branch: the muscle keeps the other parts.
  const NodeIndex parent = tree.node(node).parents.front();
  for (std::size_t m = 0; m < now.anatomy().muscles().size(); ++m) {
    const NodeIndex branch = now.anatomy().muscles()[m].branch;
    const bool beside = stem(tree.node(branch).name) == stem(cut.node) && branch != node &&
                        !tree.node(branch).parents.empty() &&
                        tree.node(branch).parents.front() == parent;
    if (branch == parent || beside) cut.in_part.push_back(now.muscle_name(m));
  }
  return cut;
}

bool is_trunk(NodeIndex node, const Situation& now) {
  const anatomy::NerveNode& row = now.anatomy().tree().node(node);
  using enum anatomy::NodeKind;
  // The root of the other limb is an operation of its own, published for the complete lesion.
  if (row.name.starts_with("contralateral")) return false;
  if (row.kind == root || row.kind == trunk || row.kind == division || row.kind == cord)
    return true;
  if (row.kind != terminal) return false;
  const std::size_t muscles = now.muscles_below(node).size();
  return muscles > 1 || (muscles == 1 && !now.areas_below(node).empty());
}

}  // namespace endplate::transfer
