#pragma once
// Lengths along the nerves of one limb: where each branch leaves its parent and how long it is.
//
// This is all that a question about lesions and growing axons needs of the limb's geometry, so
// those questions can be asked of a published limb, a sampled one or one made up for a test.
#include <boost/container/small_vector.hpp>
#include <limits>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"

namespace endplate::anatomy {

// Position along one nerve of the tree.
struct NervePosition {
  NodeIndex nerve = 0;
  double from_start_mm = 0.0;  // arc length from the nerve's own beginning, >= 0
};

// One number for each parent of a node, in the order of NerveNode::parents. Most nodes have one and
// few have three, so that thousands of sampled limbs need no memory of their own for them.
using ByParent = boost::container::small_vector<double, 3>;

struct NerveMetrics {
  static constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

  // By node of the tree: arc length from the nerve's beginning to its end (a motor branch: to its
  // entry into the muscle; a skin nerve: to the middle of its area).
  std::vector<double> length_mm;
  // By node: arc length along the parent, from the parent's own beginning, at which the node
  // leaves.
  std::vector<ByParent> leaves_parent_at_mm;
};

}  // namespace endplate::anatomy
