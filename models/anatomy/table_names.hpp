#pragma once
// Names in the anatomy tables, looked up in the nerve tree with the cell as the place of a problem.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/error.hpp"
#include "models/evidence/table.hpp"

namespace endplate::anatomy {

// "FILE, row LINE, column NAME"
std::string cell_place(std::string_view file, const evidence::Row& row, std::string_view column);

// The node that `name` means; without one, a problem is added and nothing returned.
std::optional<NodeIndex> named_node(const NerveTree& tree, std::string_view name,
                                    const std::string& place, std::vector<Problem>& problems);

// Of the whole cell.
std::optional<NodeIndex> named_node(const NerveTree& tree, std::string_view file,
                                    const evidence::Row& row, std::string_view column,
                                    std::vector<Problem>& problems);

// A node descends from itself.
bool descends_from(const NerveTree& tree, NodeIndex node, NodeIndex ancestor);

}  // namespace endplate::anatomy
