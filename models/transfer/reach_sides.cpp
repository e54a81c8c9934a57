#include "models/transfer/reach_sides.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace endplate::transfer {

using anatomy::NerveMetrics;
using anatomy::NodeIndex;

namespace {

// Of the stretch in which a nerve may be opened.
double nearest_share(const BranchPlaces& places, const NerveMetrics& mean, NodeIndex nerve,
                     const FreedEnd& open, const Eigen::Vector3d& pivot_mm) {
  constexpr int kSteps = 200;
  double best = 0.0;
  double best_mm = std::numeric_limits<double>::infinity();
  for (int k = 0; k <= kSteps; ++k) {
    const double share = static_cast<double>(k) / kSteps;
    const auto at =
        places.place(nerve, std::lerp(open.least_cut_mm, open.most_cut_mm, share), mean);
    if (!at) continue;
    const double away_mm = (places.position_mm(at->carrier, at->arc_mm) - pivot_mm).norm();
    if (away_mm >= best_mm) continue;
    best_mm = away_mm;
    best = share;
  }
  return best;
}

}  // namespace

SideFinder::SideFinder(const ReachQuestion& question, const TargetWays& ways,
                       const anatomy::NerveTree& tree, const BranchPlaces& places,
                       const FreedStretches& stretches, const NerveMetrics& mean)
    : question_(question), ways_(ways), tree_(tree), stretches_(stretches) {
  Sides sides = freed(mean);
  const FreedEnd* open = opened(sides);
  if (open == nullptr) return;
  const bool donor_open = open == &sides.donor;
  const NodeIndex nerve = donor_open ? question.donor : question.recipient;
  const auto other = donor_open ? places.place(question.recipient, sides.recipient.pivot_mm, mean)
                                : places.place(question.donor, sides.donor.pivot_mm, mean);
  if (!other) return;
  share_ =
      nearest_share(places, mean, nerve, *open, places.position_mm(other->carrier, other->arc_mm));
}

Sides SideFinder::in(const NerveMetrics& lengths) const {
  Sides sides = freed(lengths);
  if (FreedEnd* open = opened(sides)) {
    const double at_mm = std::lerp(open->least_cut_mm, open->most_cut_mm, share_);
    *open = {at_mm, at_mm, at_mm};
  }
  return sides;
}

Sides SideFinder::freed(const NerveMetrics& lengths) const {
  const auto above_mm = [&](NodeIndex branch, const SplitOut& split) {
    return std::max(alone_above_mm(tree_, lengths, branch), split.length_mm);
  };
  double pivot_mm = ways_.first_tether_mm(lengths);
  double least_mm = -above_mm(question_.recipient, question_.recipient_split);
  if (const auto& freed = stretches_.of(question_.recipient)) {
    const double length_mm = lengths.length_mm[question_.recipient];
    least_mm = freed->from_share * length_mm;
    pivot_mm = std::min(pivot_mm, freed->to_share * length_mm);
  }
  for (const NodeIndex branch : question_.spared) {
    const auto& parents = tree_.node(branch).parents;
    const auto way = std::ranges::find(parents, question_.recipient) - parents.begin();
    const double leaves_mm = lengths.leaves_parent_at_mm[branch][static_cast<std::size_t>(way)];
    least_mm = std::max(least_mm, std::min(leaves_mm, pivot_mm));
  }
  const bool at_end = pivot_mm >= lengths.length_mm[question_.recipient];
  const double stump_mm = at_end ? std::min(kStump_mm, pivot_mm - least_mm) : 0.0;
  const double donor_mm = lengths.length_mm[question_.donor];
  FreedEnd donor{-above_mm(question_.donor, question_.donor_split), 0.0,
                 donor_mm + question_.donor_followed.length_mm};
  if (const auto& freed = stretches_.of(question_.donor)) {
    const double held_mm = freed->from_share * donor_mm;
    donor = {held_mm, held_mm, freed->to_share * donor_mm};
  }
  if (question_.donor_held) {
    const NodeIndex parent = tree_.node(question_.donor).parents.front();
    const double held_mm = question_.donor_held->parent_share * lengths.length_mm[parent] -
                           lengths.leaves_parent_at_mm[question_.donor].front();
    donor.pivot_mm = std::min(std::max(donor.pivot_mm, held_mm), donor.most_cut_mm);
    donor.least_cut_mm = std::max(donor.least_cut_mm, donor.pivot_mm);
  }
  return {donor, {pivot_mm, least_mm, pivot_mm - stump_mm}};
}

FreedEnd* SideFinder::opened(Sides& sides) const {
  switch (question_.junction) {
    case Junction::to_donor_side:
      return &sides.donor;
    case Junction::to_recipient_side:
      return &sides.recipient;
    case Junction::end_to_end:
      break;
  }
  return nullptr;
}

}  // namespace endplate::transfer
