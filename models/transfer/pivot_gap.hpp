#pragma once
// How far apart two places of nerves come in the postures of the postoperative range.
//
// The straight line between them, through whatever lies there: bones, vessels and tunnels that
// would lengthen the way are not seen.
#include <Eigen/Core>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/transfer/branch_place.hpp"
#include "models/transfer/postoperative_range.hpp"

namespace endplate::transfer {

// Two places in one limb: where they lie on the mean one.
struct PlacePair {
  CarriedPlace donor;
  CarriedPlace recipient;
};

struct WorstGap {
  std::vector<double> gap_mm;               // on the mean limb, of each pair
  std::vector<double> at_rest_mm;           // likewise, in the anatomical position
  std::vector<std::string> joints_between;  // those that change the first pair's gap
  limb::Pose worst;                         // of the first pair
};

class PivotGap {
 public:
  // `frames`: of the mean right limb.
  static Expected<PivotGap> from(const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const limb::SegmentFrames& frames);

  // The widest gap of each pair. All pairs are of one donor on one recipient, the first those of
  // the mean limb: its postures with the widest gaps are those that the others are tried in.
  WorstGap worst(const BranchPlaces& places, std::span<const PlacePair> pairs) const;

 private:
  struct Parts;
  std::shared_ptr<const Parts> parts_;
};

}  // namespace endplate::transfer
