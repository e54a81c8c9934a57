#include "models/anatomy/anatomy.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace endplate::anatomy {
namespace {

bool same_words(std::string_view a, std::string_view b) {
  return std::ranges::equal(
      a, b, [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

template <class T, class Projection>
std::optional<std::size_t> index_of(const std::vector<T>& items, std::string_view name,
                                    Projection projection) {
  const auto found = std::ranges::find(items, name, projection);
  if (found == items.end()) return std::nullopt;
  return static_cast<std::size_t>(found - items.begin());
}

}  // namespace

Expected<Anatomy> Anatomy::from(const evidence::DataPackage& package) {
  Anatomy anatomy;
  auto tree = NerveTree::from(package);
  if (!tree) return std::unexpected(tree.error());
  anatomy.tree_ = std::move(*tree);
  anatomy.read_inconstant_edges(package.table("nerve_tree"));

  auto muscles = read_muscles(package, anatomy.tree_);
  if (!muscles) return std::unexpected(muscles.error());
  anatomy.muscles_ = std::move(*muscles);
  auto areas = read_skin_areas(package, anatomy.tree_);
  if (!areas) return std::unexpected(areas.error());
  anatomy.areas_ = std::move(*areas);
  auto variants = read_variants(package, anatomy.tree_, anatomy.muscles_, anatomy.areas_);
  if (!variants) return std::unexpected(variants.error());
  anatomy.variants_ = std::move(*variants);
  auto movements = read_movements(package, anatomy.muscles_);
  if (!movements) return std::unexpected(movements.error());
  anatomy.movements_ = std::move(*movements);

  if (auto problems = anatomy.check_roots(); !problems.empty()) {
    return std::unexpected(Error{Fault::internal, std::move(problems)});
  }
  return anatomy;
}

void Anatomy::read_inconstant_edges(const evidence::Table& nerve_tree) {
  for (const evidence::Row row : nerve_tree) {
    if (!row.text("notes").starts_with("inconsistent second parent")) continue;
    inconstant_.emplace(*tree_.find(row.text("child")), *tree_.find(row.text("parent")));
  }
}

bool Anatomy::root_reaches(NodeIndex root, NodeIndex node) const {
  if (root == node) return true;
  return std::ranges::any_of(tree_.node(node).parents, [&](NodeIndex parent) {
    return is_constant(node, parent) && root_reaches(root, parent);
  });
}

std::vector<Problem> Anatomy::check_roots() const {
  std::vector<Problem> problems;
  const auto complain = [&](const std::string& file, const std::string& target,
                            const std::string& root) {
    problems.push_back({file,
                        fmt::format("root {} does not reach '{}' in the nerve tree", root, target),
                        "Correct the roots, or give the route in variant_effects.csv."});
  };
  for (std::size_t i = 0; i < muscles_.size(); ++i) {
    for (const RootSupply& supply : muscles_[i].roots) {
      const auto root = root_node(supply.root);
      if (root && root_reaches(*root, muscles_[i].branch)) continue;
      const bool by_variant =
          root && !supply.dominant && std::ranges::any_of(variants_, [&](const Variant& variant) {
            return std::ranges::any_of(variant.effects, [&](const VariantEffect& effect) {
              return effect.route && std::ranges::count(effect.muscles, i) > 0 &&
                     root_reaches(*root, effect.route->from);
            });
          });
      if (!by_variant) complain("muscles.csv", muscles_[i].id, supply.root);
    }
  }
  for (const SkinArea& area : areas_) {
    for (const std::string& name : area.roots) {
      const auto root = root_node(name);
      const bool reaches = root && std::ranges::any_of(area.branches, [&](NodeIndex branch) {
                             return root_reaches(*root, branch);
                           });
      if (!reaches) complain("skin_areas.csv", area.name, name);
    }
  }
  return problems;
}

std::optional<std::size_t> Anatomy::find_muscle(std::string_view id) const {
  return index_of(muscles_, id, &Muscle::id);
}

std::optional<std::size_t> Anatomy::find_area(std::string_view name) const {
  return index_of(areas_, name, &SkinArea::name);
}

std::optional<std::size_t> Anatomy::find_variant(std::string_view name) const {
  for (std::size_t i = 0; i < variants_.size(); ++i) {
    const Variant& variant = variants_[i];
    if (same_words(variant.name, name) ||
        std::ranges::any_of(variant.also_called,
                            [&](const std::string& other) { return same_words(other, name); })) {
      return i;
    }
  }
  return std::nullopt;
}

std::optional<NodeIndex> Anatomy::root_node(std::string_view root) const {
  for (NodeIndex i = 0; i < tree_.size(); ++i) {
    const NerveNode& node = tree_.node(i);
    if (node.kind == NodeKind::root && node.roots.front() == root) return i;
  }
  return std::nullopt;
}

}  // namespace endplate::anatomy
