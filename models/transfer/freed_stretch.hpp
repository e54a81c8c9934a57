#pragma once
// The stretch of a nerve that an operation frees and cuts, from freed_stretches.csv: an intercostal
// nerve is freed from the chest wall and turned over at the midaxillary line, the phrenic nerve
// above the clavicle.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::transfer {

struct FreedStretch {
  double from_share = 0.0;  // of the nerve's length: where it stays held
  double to_share = 1.0;    // as far along as it is cut
  std::vector<std::string> rows;
  bool assumed = false;
  std::string reason;
};

class FreedStretches {
 public:
  FreedStretches(const evidence::DataPackage& package, const anatomy::NerveTree& tree);

  // Nothing where all of the nerve may be freed, and more of its parent.
  const std::optional<FreedStretch>& of(anatomy::NodeIndex nerve) const {
    return stretches_[nerve];
  }

 private:
  std::vector<std::optional<FreedStretch>> stretches_;  // by node
};

}  // namespace endplate::transfer
