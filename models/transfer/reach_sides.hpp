#pragma once
// The two ends of a transfer in one limb; for reach.cpp only.
#include "models/anatomy/nerve_metrics.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/transfer/branch_place.hpp"
#include "models/transfer/branch_way.hpp"
#include "models/transfer/freed_stretch.hpp"
#include "models/transfer/reach.hpp"
#include "models/transfer/reach_search.hpp"

namespace endplate::transfer {

struct Sides {
  FreedEnd donor;
  FreedEnd recipient;
};

class SideFinder {
 public:
  // `mean`: the mean limb, on which an opened nerve is opened where it comes nearest to the other's
  // pivot; in another limb at the same share of the stretch in which it may be opened.
  SideFinder(const ReachQuestion& question, const TargetWays& ways, const anatomy::NerveTree& tree,
             const BranchPlaces& places, const FreedStretches& stretches,
             const anatomy::NerveMetrics& mean);

  Sides in(const anatomy::NerveMetrics& lengths) const;

 private:
  Sides freed(const anatomy::NerveMetrics& lengths) const;
  // The side that is opened instead of freed; null where both are freed.
  FreedEnd* opened(Sides& sides) const;

  const ReachQuestion& question_;
  const TargetWays& ways_;
  const anatomy::NerveTree& tree_;
  const FreedStretches& stretches_;
  double share_ = 0.0;
};

}  // namespace endplate::transfer
