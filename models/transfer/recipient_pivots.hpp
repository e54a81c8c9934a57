#pragma once
// Where a freed recipient stays held: at every target for itself.
//
// A recipient with several branches is cut before the first of them, but its branches can be freed
// too, down to the muscles. Each target's freed way must then span its own gap, and the one with
// the least left over decides. Branches are followed no further than kFollowed_mm beyond the first
// division, and skin nerves not at all (assumed: nobody would free a forearm for it); what is
// farther is held where the recipient lies there. A recipient that an operation frees no further
// than to some landmark (freed_stretches.csv: the suprascapular nerve in its notch) is held there.
#include <optional>
#include <vector>

#include "models/transfer/branch_place.hpp"
#include "models/transfer/branch_way.hpp"
#include "models/transfer/freed_stretch.hpp"

namespace endplate::transfer {

inline constexpr double kFollowed_mm = 30.0;

class RecipientPivots {
 public:
  // Which targets are followed is decided on the mean limb. All must outlive it.
  RecipientPivots(const anatomy::NerveTree& tree, anatomy::NodeIndex recipient,
                  const TargetWays& ways, const anatomy::NerveMetrics& mean,
                  const std::optional<FreedStretch>& freed);

  std::size_t size() const { return pivots_.size(); }
  struct Held {
    anatomy::NodeIndex branch = 0;
    double from_origin_mm = 0.0;  // of that branch
    double way_mm = 0.0;          // from the recipient's origin
  };
  Held in(std::size_t pivot, const anatomy::NerveMetrics& lengths) const;

 private:
  struct Pivot {
    std::size_t target = 0;
    bool followed = false;  // to the target's end; else on the recipient
    bool capped = false;    // at kFollowed_mm beyond the first division
  };
  std::optional<double> held_share_;
  anatomy::NodeIndex recipient_;
  const TargetWays& ways_;
  std::vector<Pivot> pivots_;
};

}  // namespace endplate::transfer
