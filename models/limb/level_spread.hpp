#pragma once
// A level of a nerve course and how far it differs between limbs of one size.
#include <Eigen/Core>
#include <cstddef>
#include <map>
#include <string>
#include <string_view>

#include "models/evidence/data_package.hpp"
#include "models/limb/case_limb_spread.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// Along a nerve, how far apart two levels are when what moves one hardly moves the other; assumed.
inline constexpr double kMovesTogether_mm = 100.0;
// Correlation of two levels of one course between limbs of one size.
double level_correlation(double one_mm, double other_mm);

double length_scale_of(const SegmentScale& scale, Segment segment);

class LevelSpread {
 public:
  // `frames` are those of the limb.
  LevelSpread(const evidence::DataPackage& package, const CaseLimbSpread& limbs,
              const SegmentFrames& frames);

  // Standard deviation of the level of `point` (an id of the fitted points, or any other word),
  // which lies at that place of its course: the spread between limbs of that size and the
  // uncertainty of the fit.
  double sd_mm(std::size_t course, const Eigen::Vector3d& position_mm, Segment segment,
               std::string_view point) const;

  const CaseLimbSpread& limbs() const { return limbs_; }

 private:
  CaseLimbSpread limbs_;
  SegmentFrames frames_;
  std::map<std::string, double, std::less<>> fit_sd_mm_;
};

}  // namespace endplate::limb
