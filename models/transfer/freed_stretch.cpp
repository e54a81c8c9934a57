#include "models/transfer/freed_stretch.hpp"

#include <utility>

namespace endplate::transfer {

FreedStretches::FreedStretches(const evidence::DataPackage& package, const anatomy::NerveTree& tree)
    : stretches_(tree.size()) {
  for (const evidence::Row row : package.table("freed_stretches")) {
    const auto nerve = tree.find(row.text("nerve"));
    if (!nerve) continue;  // its foreign key was checked when the table was read
    FreedStretch stretch{row.number("from_share").value(),
                         row.number("to_share").value(),
                         {},
                         row.text("provenance") == "assumed",
                         std::string(row.text("reason"))};
    for (auto& id : row.list("rows")) stretch.rows.emplace_back(id);
    stretches_[*nerve] = std::move(stretch);
  }
}

}  // namespace endplate::transfer
