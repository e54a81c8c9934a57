#include "models/limb/ulnar_transposition.hpp"

#include <fmt/format.h>

#include <cmath>

#include "geometry/smooth_step.hpp"
#include "models/casefile/words.hpp"

namespace endplate::limb {
namespace {

using casefile::Layer;

constexpr double kProximal_mm = 80.0;
constexpr double kDistal_mm = 70.0;
// Within these of the epicondyle it lies wholly in its new bed; between, it crosses over (assumed).
constexpr double kWholeProximal_mm = 30.0;
constexpr double kWholeDistal_mm = 25.0;

struct Bed {
  double x_mm;
  double z_mm;
};
constexpr Bed bed_of(Layer layer) {
  return layer == Layer::subcutaneous ? Bed{14.0, -31.0} : Bed{10.0, -20.0};
}

}  // namespace

std::optional<UlnarTransposition> ulnar_transposition(
    const std::vector<casefile::Operation>& operations) {
  std::optional<UlnarTransposition> found;
  for (const casefile::Operation& operation : operations) {
    if (operation.state != casefile::OperationState::done) continue;
    for (const casefile::Procedure& procedure : operation.done) {
      if (procedure.procedure != "transposition" || procedure.nerve != "ulnar nerve") continue;
      found = UlnarTransposition{procedure.layer.value_or(Layer::subcutaneous),
                                 procedure.layer.has_value()};
    }
  }
  return found;
}

std::string in_words(const UlnarTransposition& transposition) {
  return fmt::format(
      "The ulnar nerve was transposed: from 80 mm proximal to 70 mm distal of the medial "
      "epicondyle "
      "it lies in front of it, {}{}; where exactly is assumed.",
      to_string(transposition.layer), transposition.layer_given ? "" : " (the layer is not given)");
}

Eigen::Vector3d transposed_mm(const SegmentFrames& frames, Layer layer,
                              const Eigen::Vector3d& neutral_mm) {
  SegmentPoint place = frames.from_limb(Segment::humerus, neutral_mm);
  Segment segment = Segment::humerus;
  double whole = 0.0;  // share of the way to the new bed
  if (place.fraction >= 0.0) {
    const double level_mm = place.fraction * kLedgerArm_mm;
    whole = geometry::smooth_step((kProximal_mm - level_mm) / (kProximal_mm - kWholeProximal_mm));
  } else {
    segment = Segment::forearm;
    place = frames.from_limb(segment, neutral_mm);
    const double level_mm = place.fraction * kLedgerForearm_mm;
    whole = geometry::smooth_step((kDistal_mm - level_mm) / (kDistal_mm - kWholeDistal_mm));
  }
  if (whole <= 0.0) return neutral_mm;
  const Bed bed = bed_of(layer);
  place.x_mm = std::lerp(place.x_mm, bed.x_mm, whole);
  place.z_mm = std::lerp(place.z_mm, bed.z_mm, whole);
  return frames.to_limb(segment, place);
}

}  // namespace endplate::limb
