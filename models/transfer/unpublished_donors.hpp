#pragma once
// Motor branches that a case can spare, for unpublished.cpp only.
#include <set>
#include <string>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

struct SpareBranch {
  anatomy::NodeIndex node = 0;
  std::vector<std::size_t> muscles;
  std::vector<std::string> why;  // how each was shown to be strong
};

// As unpublished.hpp says, in the order of the tree.
std::vector<SpareBranch> spare_branches(const Situation& now, const evidence::DataPackage& package);

}  // namespace endplate::transfer
