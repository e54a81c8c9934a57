#include "models/anatomy/limb_columns.hpp"

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>

namespace endplate::anatomy {

LimbColumns::LimbColumns(std::span<const NerveMetrics> limbs) : limbs_(limbs.size()) {
  const std::size_t nodes = limbs.front().length_mm.size();
  std::size_t columns = nodes;
  for (const ByParent& by_parent : limbs.front().leaves_parent_at_mm) {
    leaves_from_.push_back(columns);
    columns += by_parent.size();
  }
  const std::size_t each = limbs_ + kOverlap;
  lengths_mm_.resize(columns * each);
  // A few limbs at a time, so that they and the ends of all columns stay in the cache.
  constexpr std::size_t kTogether = 16;
  tbb::parallel_for(tbb::blocked_range<std::size_t>(0, limbs_, kTogether), [&](const auto& range) {
    const auto fill = [&](std::size_t column, const auto& length_of) {
      float* const into = lengths_mm_.data() + column * each;
      for (std::size_t l = range.begin(); l < range.end(); ++l) {
        into[l] = static_cast<float>(length_of(limbs[l]));
      }
    };
    for (std::size_t node = 0; node < nodes; ++node) {
      fill(node, [&](const NerveMetrics& limb) { return limb.length_mm[node]; });
      const std::size_t parents = limbs.front().leaves_parent_at_mm[node].size();
      for (std::size_t k = 0; k < parents; ++k) {
        fill(leaves_from_[node] + k,
             [&](const NerveMetrics& limb) { return limb.leaves_parent_at_mm[node][k]; });
      }
    }
  });
  for (std::size_t column = 0; column < columns; ++column) {
    float* const values = lengths_mm_.data() + column * each;
    for (std::size_t l = limbs_; l < each; ++l) values[l] = values[l - limbs_];
  }
}

}  // namespace endplate::anatomy
