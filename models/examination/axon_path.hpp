#pragma once
// The ways that axons of one root take to a muscle or a skin area, with the places along each
// nerve at which they leave it.
#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/anatomy/nerve_metrics.hpp"

namespace endplate::examination {

// How far the places of branches differ between limbs, one SD in mm, in the shape of
// NerveMetrics::leaves_parent_at_mm. Empty: taken as exact.
struct BranchSpread {
  std::vector<std::vector<double>> sd_mm;
};

// From sampled limbs: the spread of each place as a fraction of its nerve, on the mean limb, so
// that long and short arms alone do not count as spread. Fewer than two samples: empty.
BranchSpread branch_spread(const anatomy::NerveMetrics& mean,
                           std::span<const anatomy::NerveMetrics> samples,
                           const anatomy::NerveTree& tree);

// A place along a nerve from its beginning; infinite when it is the beginning or the end itself.
struct PlaceAlong {
  double mm = 0.0;
  double sd_mm = 0.0;
};
inline constexpr PlaceAlong kBeginning{-std::numeric_limits<double>::infinity(), 0.0};
inline constexpr PlaceAlong kEnd{std::numeric_limits<double>::infinity(), 0.0};

// The part of one nerve that the axons run in.
struct AxonStretch {
  anatomy::NodeIndex nerve = 0;
  PlaceAlong enters = kBeginning;
  PlaceAlong leaves = kEnd;
};

// From the root to the target.
using AxonPath = std::vector<AxonStretch>;

// Lengths of one limb, asked by branch. Holds references: the limb must outlive it.
class BranchPlaces {
 public:
  BranchPlaces(const anatomy::NerveTree& tree, const anatomy::NerveMetrics& metrics,
               const BranchSpread& spread)
      : tree_(tree), metrics_(metrics), spread_(spread) {}

  // Where `child` leaves `parent`, which must be one of its parents. mm is NaN if unknown.
  PlaceAlong leaves(anatomy::NodeIndex child, anatomy::NodeIndex parent) const;
  // Anywhere between the two branches of `nerve`; without one, its beginning or its end.
  PlaceAlong between(anatomy::NodeIndex nerve, std::optional<anatomy::NodeIndex> after,
                     std::optional<anatomy::NodeIndex> before) const;

 private:
  const anatomy::NerveTree& tree_;
  const anatomy::NerveMetrics& metrics_;
  const BranchSpread& spread_;
};

// Every way along constant edges from `start`, entered at `enters`, to `target`, left at `leaves`.
std::vector<AxonPath> paths_between(const anatomy::Anatomy& anatomy, const BranchPlaces& places,
                                    anatomy::NodeIndex start, PlaceAlong enters,
                                    anatomy::NodeIndex target, PlaceAlong leaves);

// Every way from `root` along a variant's route to a target whose last branch is `target`.
std::vector<AxonPath> paths_by_route(const anatomy::Anatomy& anatomy, const BranchPlaces& places,
                                     anatomy::NodeIndex root, const anatomy::Route& route,
                                     anatomy::NodeIndex target);

}  // namespace endplate::examination
