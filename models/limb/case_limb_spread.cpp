#include "models/limb/case_limb_spread.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "models/evidence/quantity.hpp"
#include "models/evidence/spread_model.hpp"

namespace endplate::limb {

CaseLimbSpread CaseLimbSpread::from(const evidence::DataPackage& package, const Atlas& atlas,
                                    const LimbSize& adults) {
  CaseLimbSpread spread;
  const auto quantities = evidence::quantities(package.table("landmark_distances"));
  spread.between_limbs_ = evidence::SpreadModel::estimate(quantities).between_limbs();
  const std::array names{"acromion to lateral epicondyle",
                         "interepicondylar line to bistyloid line",
                         "distal wrist crease to middle fingertip"};
  for (std::size_t i = 0; i < names.size(); ++i) {
    spread.size_variation_[i] = adults.sd_mm(names[i]) / adults.mean_mm(names[i]);
  }
  const SegmentFrames ledger_limb;
  spread.landmarks_.resize(atlas.courses().size());
  for (const NerveMeasure& measure : atlas.measures()) {
    if (const auto place = atlas.landmarks().position_mm(measure.landmark, ledger_limb)) {
      spread.landmarks_[measure.course].push_back(*place);
    }
  }
  for (auto& landmarks : spread.landmarks_) {
    if (!landmarks.empty()) continue;
    for (const Landmark& landmark : atlas.landmarks().landmarks()) {
      landmarks.push_back(LandmarkSet::position_mm(landmark, ledger_limb));
    }
  }
  return spread;
}

double CaseLimbSpread::of_distance_mm(double d_mm, Segment segment) const {
  const double all = between_limbs_.at(d_mm);
  const double size = d_mm * size_variation_[static_cast<std::size_t>(segment)];
  return std::sqrt(std::max(0.0, all * all - size * size));
}

double CaseLimbSpread::of_level_mm(std::size_t course, const Eigen::Vector3d& position_mm,
                                   Segment segment) const {
  double nearest_mm = std::numeric_limits<double>::infinity();
  for (const Eigen::Vector3d& landmark : landmarks_[course]) {
    nearest_mm = std::min(nearest_mm, (position_mm - landmark).norm());
  }
  return of_distance_mm(nearest_mm, segment);
}

}  // namespace endplate::limb
