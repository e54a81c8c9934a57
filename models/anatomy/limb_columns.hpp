#pragma once
// The lengths of many limbs by columns: one length in all limbs stands together, where NerveMetrics
// keeps all lengths of one limb together. For questions that are asked of every limb at once.
#include <cstddef>
#include <span>
#include <vector>

#include "models/anatomy/nerve_metrics.hpp"

namespace endplate::anatomy {

class LimbColumns {
 public:
  // So many limbs follow once more after the last, as the columns begin: whoever counts the limbs
  // round may read that many from any limb on without a break.
  static constexpr std::size_t kOverlap = 512;

  // All of one tree; at least one.
  explicit LimbColumns(std::span<const NerveMetrics> limbs);

  std::size_t limbs() const { return limbs_; }
  // Each of limbs() + kOverlap numbers, mm; NaN where a limb's is unknown. Single precision, which
  // tells hundredths of a micrometre apart.
  std::span<const float> length_mm(NodeIndex node) const { return column(node); }
  // `parent` counts in the order of NerveNode::parents.
  std::span<const float> leaves_parent_at_mm(NodeIndex node, std::size_t parent) const {
    return column(leaves_from_[node] + parent);
  }

 private:
  std::span<const float> column(std::size_t index) const {
    const std::size_t each = limbs_ + kOverlap;
    return {lengths_mm_.data() + index * each, each};
  }

  std::size_t limbs_ = 0;
  std::vector<std::size_t> leaves_from_;  // by node: its first column
  std::vector<float> lengths_mm_;
};

}  // namespace endplate::anatomy
