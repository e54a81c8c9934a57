#include "models/transfer/splits.hpp"

#include <algorithm>

namespace endplate::transfer {

namespace {

SplitOut split(const evidence::DataPackage& package, std::string_view node, std::string_view as) {
  for (const evidence::Row row : package.table("transfer_splits")) {
    if (row.text("node") != node || row.text("as") != as) continue;
    return {row.number("length_mm").value_or(0.0), std::string(row.text("row"))};
  }
  return {};
}

}  // namespace

SplitOut recipient_split(const evidence::DataPackage& package, std::string_view recipient) {
  return split(package, recipient, "recipient");
}

SplitOut donor_split(const evidence::DataPackage& package, std::string_view donor) {
  return split(package, donor, "donor");
}

SplitOut donor_followed(const evidence::DataPackage& package, std::string_view donor) {
  for (const evidence::Row row : package.table("transfer_followed")) {
    if (row.text("donor_node") != donor) continue;
    return {row.number("length_mm").value_or(0.0), std::string(row.text("row"))};
  }
  return {};
}

SplitOut below_injuries(SplitOut split, anatomy::NodeIndex recipient,
                        const anatomy::NerveTree& tree, const anatomy::NerveMetrics& metrics,
                        const std::vector<examination::TreeInjury>& injuries) {
  const auto& parents = tree.node(recipient).parents;
  for (std::size_t k = 0; k < parents.size(); ++k) {
    const double leaves_mm = metrics.leaves_parent_at_mm[recipient][k];
    for (const examination::TreeInjury& injury : injuries) {
      const anatomy::NervePosition& at = injury.lesion.at;
      if (at.nerve != parents[k] || at.from_start_mm > leaves_mm) continue;
      split.length_mm = std::min(split.length_mm, leaves_mm - at.from_start_mm);
    }
  }
  return split;
}

}  // namespace endplate::transfer
