#pragma once
// How much one limb differs from another of the same size: branch levels and lengths of branches.
#include <Eigen/Core>
#include <array>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/evidence/scale_curve.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/limb_size.hpp"

namespace endplate::limb {

class CaseLimbSpread {
 public:
  // The spread between limbs of all published distances (evidence::SpreadModel), less the part that
  // limbs of different size explain: the variation of their segments in `adults`, the adults of
  // both sexes behind those distances.
  static CaseLimbSpread from(const evidence::DataPackage& package, const Atlas& atlas,
                             const LimbSize& adults);

  // Standard deviation on the ledger limb, mm, of a distance of d mm in a segment.
  double of_distance_mm(double d_mm, Segment segment) const;
  // Of the level of a branch: by its distance from the nearest landmark from which levels on that
  // course were measured (any landmark for a course without one). Place on the ledger limb.
  double of_level_mm(std::size_t course, const Eigen::Vector3d& position_mm, Segment segment) const;

 private:
  evidence::ScaleCurve between_limbs_;
  std::array<double, 3> size_variation_{};               // coefficient of variation by segment
  std::vector<std::vector<Eigen::Vector3d>> landmarks_;  // by course, on the ledger limb
};

}  // namespace endplate::limb
