#include "models/transfer/recipient_pivots.hpp"

#include <algorithm>

namespace endplate::transfer {

using anatomy::NerveMetrics;

RecipientPivots::RecipientPivots(const anatomy::NerveTree& tree, anatomy::NodeIndex recipient,
                                 const TargetWays& ways, const NerveMetrics& mean,
                                 const std::optional<FreedStretch>& freed)
    : recipient_(recipient), ways_(ways) {
  const double length_mm = mean.length_mm[recipient];
  if (freed && freed->to_share * length_mm < ways.first_tether_mm(mean)) {
    held_share_ = freed->to_share;
    pivots_.push_back({0, false, false});
    return;
  }
  const double farthest_mm = ways.first_tether_mm(mean) + kFollowed_mm;
  for (std::size_t t = 0; t < ways.size(); ++t) {
    const bool motor = tree.node(ways.target(t)).kind == anatomy::NodeKind::motor;
    const bool followed = motor && ways.end_mm(t, mean) <= farthest_mm;
    const bool capped = !followed && ways.leaves_mm(t, mean) > farthest_mm;
    // All that lies beyond is held at one place.
    if (capped && std::ranges::any_of(pivots_, &Pivot::capped)) continue;
    pivots_.push_back({t, followed, capped});
  }
}

RecipientPivots::Held RecipientPivots::in(std::size_t pivot, const NerveMetrics& lengths) const {
  if (held_share_) {
    const double held_mm = *held_share_ * lengths.length_mm[recipient_];
    return {recipient_, held_mm, held_mm};
  }
  const auto& [target, followed, capped] = pivots_[pivot];
  if (followed) {
    const anatomy::NodeIndex end = ways_.target(target);
    return {end, lengths.length_mm[end], ways_.end_mm(target, lengths)};
  }
  const double leaves_mm = ways_.leaves_mm(target, lengths);
  const double way_mm =
      capped ? std::min(ways_.first_tether_mm(lengths) + kFollowed_mm, leaves_mm) : leaves_mm;
  return {recipient_, way_mm, way_mm};
}

}  // namespace endplate::transfer
