#pragma once
// How near a cut comes to each nerve, over sampled limbs.
#include <cstdint>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/core/summary.hpp"
#include "models/incision/cut.hpp"
#include "models/limb/sampled_line.hpp"

namespace endplate::incision {

inline constexpr double kWithin_mm[] = {2.0, 5.0, 10.0, 20.0};

struct ChanceWithin {
  double mm = 0.0;
  double chance = 0.0;  // 0 to 1
};

struct NerveNearby {
  anatomy::NodeIndex nerve = 0;
  bool of_skin = false;  // it serves skin alone
  Summary nearest_mm;
  // On the mean limb: where along the cut it comes nearest, how deep under the skin the nerve lies
  // there, and the place itself.
  double at_along_mm = 0.0;
  Summary depth_mm;
  Eigen::Vector3d nearest_place_mm = Eigen::Vector3d::Zero();
  std::vector<ChanceWithin> chance_within;
  // By station of the cut: the chance that this nerve lies within the chosen distance.
  std::vector<double> along_chance;
};

// A stretch of the cut from which every modelled nerve is farther than the chosen distance.
struct ClearStretch {
  double from_mm = 0.0;
  double to_mm = 0.0;
  double chance = 0.0;  // that this holds for the whole stretch
};

struct Nearby {
  std::vector<NerveNearby> nerves;  // the nearest first
  std::vector<ClearStretch> clear;
  std::vector<double> along_chance;  // by station: any nerve within the chosen distance
};

struct NearbyOptions {
  double farther_than_mm = 10.0;
  double clear_chance = 0.95;     // of each place of a clear stretch
  double shown_within_mm = 50.0;  // nerves whose mean is farther are left out
};

// Whether a line of the mean limb comes near enough to be shown.
bool comes_near(const Cut& cut, const std::vector<Eigen::Vector3d>& mean_mm,
                const NearbyOptions& options);

// `lines`: of the theatre's limb in its pose. `size_ratios`: by sampled limb the lengths of arm,
// forearm and hand against the mean limb; a mark measured from a landmark stands elsewhere on a
// longer limb. One for each sample.
Nearby nearby(const Theatre& theatre, const anatomy::NerveTree& tree, const Cut& cut,
              const std::vector<limb::SampledLine>& lines,
              const std::vector<Eigen::Vector3d>& size_ratios, const NearbyOptions& options);

}  // namespace endplate::incision
