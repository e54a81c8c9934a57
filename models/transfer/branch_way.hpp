#pragma once
// Lengths from a branch to what hangs on it.
#include <cstddef>
#include <vector>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"

namespace endplate::transfer {

// The last branches that hang on a nerve by their usual parents; the nerve itself where none does.
std::vector<anatomy::NodeIndex> ends_below(const anatomy::NerveTree& tree,
                                           anatomy::NodeIndex nerve);

// How far above its origin a nerve is all that its parents still hold, mm: up to the last other
// branch that leaves them. Over that stretch it is cut and freed like itself; beyond, it would have
// to be split out. By usual parents; 0 where another branch leaves at its origin or distal to it.
double alone_above_mm(const anatomy::NerveTree& tree, const anatomy::NerveMetrics& lengths,
                      anatomy::NodeIndex nerve);

// The ways from a nerve to some targets below it, found once for all limbs.
class TargetWays {
 public:
  // At least one target, each the nerve itself or a descendant of it.
  TargetWays(const anatomy::NerveTree& tree, anatomy::NodeIndex nerve,
             const std::vector<anatomy::NodeIndex>& targets);

  // From the nerve's origin, mm: where the first branch to a target leaves it and so holds it; its
  // own length where it is the only target.
  double first_tether_mm(const anatomy::NerveMetrics& lengths) const;

  std::size_t size() const { return targets_.size(); }
  anatomy::NodeIndex target(std::size_t t) const { return targets_[t]; }
  // From the nerve's origin: where a target's branch leaves it, and the target's end.
  double leaves_mm(std::size_t t, const anatomy::NerveMetrics& lengths) const;
  double end_mm(std::size_t t, const anatomy::NerveMetrics& lengths) const;

  struct NearAndFar {
    double nearest_mm = 0.0;
    double farthest_mm = 0.0;
  };
  // From the nerve's origin to the ends of the targets.
  NearAndFar ends_mm(const anatomy::NerveMetrics& lengths) const;

 private:
  struct Step {
    anatomy::NodeIndex node = 0;
    std::size_t parent = 0;  // of its parents, the one on the way
  };
  anatomy::NodeIndex nerve_;
  std::vector<anatomy::NodeIndex> targets_;
  std::vector<std::vector<Step>> ways_;  // by target, from it up to below the nerve
};

}  // namespace endplate::transfer
