#include "models/anatomy/nerve_tree.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace endplate::anatomy {
namespace {

constexpr std::array<std::pair<std::string_view, NodeKind>, 8> kKinds{{
    {"root", NodeKind::root},
    {"trunk", NodeKind::trunk},
    {"division", NodeKind::division},
    {"cord", NodeKind::cord},
    {"terminal", NodeKind::terminal},
    {"branch", NodeKind::branch},
    {"motor", NodeKind::motor},
    {"cutaneous", NodeKind::cutaneous},
}};

std::optional<NodeKind> kind_from(std::string_view text) {
  for (const auto& [name, kind] : kKinds) {
    if (name == text) return kind;
  }
  return std::nullopt;
}

struct Edge {
  NodeIndex parent;
  NodeIndex child;
  double side_order;
};

}  // namespace

Expected<NerveTree> NerveTree::from(const evidence::DataPackage& package) {
  const evidence::Table& table = package.table("nerve_tree");
  NerveTree tree;
  std::vector<Problem> problems;
  const auto place = [&](const evidence::Row& row, std::string_view column) {
    return fmt::format("nerve_tree.csv, row {}, column {}", row.line(), column);
  };

  for (const evidence::Row row : table) {
    const auto kind = kind_from(row.text("kind"));
    if (!kind) {
      problems.push_back(
          {place(row, "kind"), fmt::format("unknown kind '{}'", row.text("kind")),
           "Use root, trunk, division, cord, terminal, branch, motor or cutaneous."});
      continue;
    }
    const auto [found, added] =
        tree.index_of_.emplace(std::string(row.text("child")), tree.nodes_.size());
    if (added) {
      NerveNode node;
      node.name = found->first;
      node.kind = *kind;
      node.roots = row.list("roots");
      tree.nodes_.push_back(std::move(node));
    }
  }

  std::vector<Edge> edges;
  for (const evidence::Row row : table) {
    if (row.text("parent").empty()) continue;
    const auto parent = tree.find(row.text("parent"));
    const auto child = tree.find(row.text("child"));
    if (!parent || !child) {
      problems.push_back({place(row, "parent"),
                          fmt::format("'{}' has no row of its own", row.text("parent")),
                          "Add the parent as a child or a root."});
      continue;
    }
    edges.push_back({*parent, *child, row.number("side_order").value_or(0.0)});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});

  for (const Edge& edge : edges) tree.nodes_[edge.child].parents.push_back(edge.parent);
  std::ranges::stable_sort(edges, {}, &Edge::side_order);
  for (const Edge& edge : edges) tree.nodes_[edge.parent].children.push_back(edge.child);

  // Kahn's algorithm; what is left over lies on a cycle.
  std::vector<std::size_t> waiting(tree.size());
  for (NodeIndex i = 0; i < tree.size(); ++i) {
    waiting[i] = tree.nodes_[i].parents.size();
    if (waiting[i] == 0) tree.order_.push_back(i);
  }
  for (std::size_t done = 0; done < tree.order_.size(); ++done) {
    for (const NodeIndex child : tree.nodes_[tree.order_[done]].children) {
      if (--waiting[child] == 0) tree.order_.push_back(child);
    }
  }
  if (tree.order_.size() != tree.size()) {
    const auto stuck = std::ranges::find_if(waiting, [](std::size_t n) { return n > 0; });
    const auto index = static_cast<NodeIndex>(stuck - waiting.begin());
    return std::unexpected(Error::internal(
        {"nerve_tree.csv", fmt::format("'{}' descends from itself", tree.nodes_[index].name),
         "Remove the edge that closes the circle."}));
  }
  return tree;
}

std::optional<NodeIndex> NerveTree::find(std::string_view name) const {
  const auto found = index_of_.find(name);
  if (found == index_of_.end()) return std::nullopt;
  return found->second;
}

std::vector<NodeIndex> NerveTree::descendants(NodeIndex start) const {
  std::vector<bool> below(size(), false);
  below[start] = true;
  std::vector<NodeIndex> result;
  for (const NodeIndex index : order_) {
    const auto& parents = nodes_[index].parents;
    below[index] =
        below[index] || std::ranges::any_of(parents, [&](NodeIndex p) { return below[p]; });
    if (below[index]) result.push_back(index);
  }
  return result;
}

}  // namespace endplate::anatomy
