#include "models/limb/over_skin.hpp"

#include <algorithm>

#include "models/limb/skin_tape.hpp"

namespace endplate::limb {

void measure_over_skin(const MeasuredLimb& limb, std::vector<TapedDistance>& found) {
  std::optional<SkinTape> skin;
  for (TapedDistance& each : found) {
    if (!each.tape) {
      each.distance.over_skin_absent = each.no_tape;
      continue;
    }
    if (!skin) {
      skin.emplace(limb.frames(), limb.pose().envelope, limb.pose().joints, limb.pose().pose);
    }
    const auto length_mm = skin->between_mm(each.tape->landmark_mm, each.tape->place_mm);
    if (!length_mm) {
      each.distance.over_skin_absent = length_mm.error();
      continue;
    }
    Summary summary =
        summarise_normal(std::max(0.0, *length_mm + each.tape->correction_mm), each.tape->sd_mm);
    summary.p05 = std::max(0.0, summary.p05);
    each.distance.over_skin_mm = summary;
  }
}

}  // namespace endplate::limb
