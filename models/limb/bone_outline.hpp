#pragma once
// Cross-sections of a bone as ellipses along its segment, for directions round the bone.
#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/cubic_spline.hpp"
#include "models/evidence/table.hpp"

namespace endplate::limb {

// On the ledger limb: x anterior, z lateral, mm.
struct OutlineSection {
  double fraction = 0.0;  // level of the segment
  double centre_x_mm = 0.0;
  double centre_z_mm = 0.0;
  double half_depth_mm = 0.0;  // along x, > 0
  double half_width_mm = 0.0;  // along z, > 0
};

// A direction round the bone: 1 on its surface, more outside.
template <class Scalar>
struct OutlinePosition {
  Scalar anterior;
  Scalar lateral;
};

class BoneOutline {
 public:
  BoneOutline() = default;
  // Sections in ascending order of fraction, at least two.
  explicit BoneOutline(std::vector<OutlineSection> sections) : sections_(std::move(sections)) {}
  static BoneOutline from(const evidence::Table& table);

  // Between sections linearly, beyond the ends as at the end.
  template <class Scalar>
  OutlinePosition<Scalar> position(const Scalar& fraction, const Scalar& x_mm,
                                   const Scalar& z_mm) const {
    using geometry::value_of;
    const double f =
        std::clamp(value_of(fraction), sections_.front().fraction, sections_.back().fraction);
    const auto above = std::ranges::upper_bound(sections_, f, {}, &OutlineSection::fraction);
    const auto i = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(above - sections_.begin(), 1, std::ssize(sections_) - 1));
    const OutlineSection& low = sections_[i - 1];
    const OutlineSection& high = sections_[i];
    const Scalar inside = value_of(fraction) == f ? fraction : Scalar(f);
    const Scalar t = (inside - Scalar(low.fraction)) / Scalar(high.fraction - low.fraction);
    const auto mix = [&](double a, double b) { return Scalar(a) + Scalar(b - a) * t; };
    return {(x_mm - mix(low.centre_x_mm, high.centre_x_mm)) /
                mix(low.half_depth_mm, high.half_depth_mm),
            (z_mm - mix(low.centre_z_mm, high.centre_z_mm)) /
                mix(low.half_width_mm, high.half_width_mm)};
  }

 private:
  std::vector<OutlineSection> sections_;
};

}  // namespace endplate::limb
