#include "models/limb/case_limb.hpp"

namespace endplate::limb {

// Provisional lengths, so that the commands can be built before the fitted limb lands.
Expected<CaseLimb> CaseLimb::from(const evidence::DataPackage&, const anatomy::NerveTree& tree,
                                  const casefile::Limb&) {
  CaseLimb limb;
  limb.tree_ = &tree;
  limb.metrics_.length_mm.resize(tree.size());
  limb.metrics_.leaves_parent_at_mm.resize(tree.size());
  for (anatomy::NodeIndex i = 0; i < tree.size(); ++i) {
    using enum anatomy::NodeKind;
    const auto& node = tree.node(i);
    const double length = node.kind == terminal ? 400.0 : node.kind == cutaneous ? 120.0 : 40.0;
    limb.metrics_.length_mm[i] = length;
  }
  for (anatomy::NodeIndex i = 0; i < tree.size(); ++i) {
    const auto& children = tree.node(i).children;
    for (std::size_t k = 0; k < children.size(); ++k) {
      const auto& parents = tree.node(children[k]).parents;
      auto& leaves = limb.metrics_.leaves_parent_at_mm[children[k]];
      leaves.resize(parents.size());
      for (std::size_t p = 0; p < parents.size(); ++p) {
        if (parents[p] == i) {
          leaves[p] = limb.metrics_.length_mm[i] * static_cast<double>(k + 1) /
                      static_cast<double>(children.size());
        }
      }
    }
  }
  return limb;
}

std::vector<anatomy::NerveMetrics> CaseLimb::sample(int count, std::uint64_t) const {
  return std::vector<anatomy::NerveMetrics>(static_cast<std::size_t>(count), metrics_);
}

Expected<anatomy::Lesion> CaseLimb::place(const std::string& nerve, const casefile::Place&) const {
  const auto index = tree_->find(nerve);
  if (!index) {
    return std::unexpected(
        Error::input({"/injuries", "unknown nerve " + nerve, "Use a standard term."}));
  }
  return anatomy::Lesion{{*index, metrics_.length_mm[*index] / 3.0}, 5.0, false, "provisional"};
}

std::vector<std::string> CaseLimb::sources(anatomy::NodeIndex) const {
  return {};
}

}  // namespace endplate::limb
