#include "models/limb/level_spread.hpp"

#include <cmath>

namespace endplate::limb {
namespace {

// The fit leaves a point that no published row places where it was, and gives it this uncertainty.
// Such a point says nothing of limbs, so only their spread counts for it.
constexpr double kUnplaced_mm = 79.9;

}  // namespace

double level_correlation(double one_mm, double other_mm) {
  return std::exp(-std::abs(one_mm - other_mm) / kMovesTogether_mm);
}

double length_scale_of(const SegmentScale& scale, Segment segment) {
  return segment == Segment::humerus   ? scale.arm
         : segment == Segment::forearm ? scale.forearm
                                       : scale.hand;
}

LevelSpread::LevelSpread(const evidence::DataPackage& package, const CaseLimbSpread& limbs,
                         const SegmentFrames& frames)
    : limbs_(limbs), frames_(frames) {
  if (!package.tables().contains("fitted_points")) return;
  for (const evidence::Row row : package.table("fitted_points")) {
    const double sd = row.number("knot_sd_mm").value_or(0.0);
    if (sd < kUnplaced_mm) fit_sd_mm_.emplace(row.text("point"), sd);
  }
}

double LevelSpread::sd_mm(std::size_t course, const Eigen::Vector3d& position_mm, Segment segment,
                          std::string_view point) const {
  // The published spread is that of adults, so it is looked up on the ledger limb and scaled.
  static const SegmentFrames ledger_limb;
  const SegmentPoint place = frames_.from_limb(segment, position_mm);
  const double between_limbs =
      length_scale_of(frames_.scale(), segment) *
      limbs_.of_level_mm(course, ledger_limb.to_limb(segment, place), segment);
  const auto fit = fit_sd_mm_.find(point);
  return fit == fit_sd_mm_.end() ? between_limbs : std::hypot(between_limbs, fit->second);
}

}  // namespace endplate::limb
