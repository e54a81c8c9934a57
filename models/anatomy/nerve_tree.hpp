#pragma once
// The nerves from the roots to their last branches, as a directed graph without cycles.
//
// A node is a root, trunk, division, cord, nerve or branch under its standard English name. A node
// may have several parents (the median nerve has two roots); it carries all its axons only while
// every parent is whole. Read from nerve_tree.csv, one edge a row.
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::anatomy {

using NodeIndex = std::size_t;

enum class NodeKind { root, trunk, division, cord, terminal, branch, motor, cutaneous };

struct NerveNode {
  std::string name;
  NodeKind kind = NodeKind::branch;
  std::vector<std::string> roots;
  std::vector<NodeIndex> parents;   // in the order of the table; the first is the usual one
  std::vector<NodeIndex> children;  // in the order in which they leave, as far as it is known
};

class NerveTree {
 public:
  static Expected<NerveTree> from(const evidence::DataPackage& package);

  std::size_t size() const { return nodes_.size(); }
  const NerveNode& node(NodeIndex index) const { return nodes_.at(index); }
  const std::vector<NerveNode>& nodes() const { return nodes_; }
  // Exact standard name.
  std::optional<NodeIndex> find(std::string_view name) const;
  // Parents before children.
  const std::vector<NodeIndex>& topological_order() const { return order_; }
  // `start` and everything that hangs on it.
  std::vector<NodeIndex> descendants(NodeIndex start) const;

 private:
  std::vector<NerveNode> nodes_;
  std::vector<NodeIndex> order_;
  std::map<std::string, NodeIndex, std::less<>> index_of_;
};

}  // namespace endplate::anatomy
