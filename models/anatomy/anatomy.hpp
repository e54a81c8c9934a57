#pragma once
// Everything that the tables say of nerves, muscles, skin areas, variants and movements, read once
// and cross-checked. Immutable.
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "models/anatomy/movement.hpp"
#include "models/anatomy/muscle.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/anatomy/skin_area.hpp"
#include "models/anatomy/variant.hpp"

namespace endplate::anatomy {

class Anatomy {
 public:
  // Beyond the checks of each table: every dominant root of a muscle and every root of a skin area
  // reaches it along the tree, and each other root does or comes by a variant's route.
  static Expected<Anatomy> from(const evidence::DataPackage& package);

  const NerveTree& tree() const { return tree_; }
  const std::vector<Muscle>& muscles() const { return muscles_; }
  const std::vector<SkinArea>& areas() const { return areas_; }
  const std::vector<Variant>& variants() const { return variants_; }
  const std::vector<Movement>& movements() const { return movements_; }

  // Exact standard names.
  std::optional<std::size_t> find_muscle(std::string_view id) const;
  std::optional<std::size_t> find_area(std::string_view name) const;
  // By name or by another name of the tables, without regard to case.
  std::optional<std::size_t> find_variant(std::string_view name) const;
  // "C6" to the node of that root.
  std::optional<NodeIndex> root_node(std::string_view root) const;

  // Whether axons run from `parent` to `child` in nearly every limb. The tree marks the few edges
  // that do not ("inconsistent second parent"); their axons come in as variants.
  bool is_constant(NodeIndex child, NodeIndex parent) const {
    return !inconstant_.contains({child, parent});
  }
  // Whether axons of `root` reach the beginning of `node` by constant edges.
  bool root_reaches(NodeIndex root, NodeIndex node) const;

 private:
  Anatomy() = default;
  void read_inconstant_edges(const evidence::Table& nerve_tree);
  std::vector<Problem> check_roots() const;

  NerveTree tree_;
  std::set<std::pair<NodeIndex, NodeIndex>> inconstant_;  // child, parent
  std::vector<Muscle> muscles_;
  std::vector<SkinArea> areas_;
  std::vector<Variant> variants_;
  std::vector<Movement> movements_;
};

}  // namespace endplate::anatomy
