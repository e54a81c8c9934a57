#include "models/anatomy/table_names.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::anatomy {

std::string cell_place(std::string_view file, const evidence::Row& row, std::string_view column) {
  return fmt::format("{}, row {}, column {}", file, row.line(), column);
}

std::optional<NodeIndex> named_node(const NerveTree& tree, std::string_view name,
                                    const std::string& place, std::vector<Problem>& problems) {
  const auto node = tree.find(name);
  if (!node) {
    problems.push_back({place, fmt::format("'{}' is not in the nerve tree", name),
                        "Use a name of nerve_tree.csv or add its row there."});
  }
  return node;
}

std::optional<NodeIndex> named_node(const NerveTree& tree, std::string_view file,
                                    const evidence::Row& row, std::string_view column,
                                    std::vector<Problem>& problems) {
  return named_node(tree, row.text(column), cell_place(file, row, column), problems);
}

bool descends_from(const NerveTree& tree, NodeIndex node, NodeIndex ancestor) {
  if (node == ancestor) return true;
  return std::ranges::any_of(tree.node(node).parents, [&](NodeIndex parent) {
    return descends_from(tree, parent, ancestor);
  });
}

}  // namespace endplate::anatomy
