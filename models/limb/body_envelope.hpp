#pragma once
// How deep under the skin a place of the neutral limb lies, and how far from bone.
//
// The skin is a row of ellipses along each segment (skin_outline.csv) and the bones are capsules
// (bone_capsules.csv): both are assumed shapes for the mean limb, good to some millimetres, and
// above four fifths of the arm the skin says nothing. Places are in the limb frame of the frames
// given, mm. The scalar type may be a dual number. The pose is neutral.
#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "geometry/cubic_spline.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// On the ledger limb: x anterior, mm.
struct SkinSection {
  double fraction = 0.0;  // level of the segment
  double centre_x_mm = 0.0;
  double half_depth_mm = 0.0;  // along x, > 0
  double half_width_mm = 0.0;  // along z, > 0
};

// All places within `radius_mm` of the line between two places of one segment.
struct BoneCapsule {
  std::string bone;
  std::string part;
  Segment segment = Segment::humerus;
  SegmentPoint from;
  SegmentPoint to;
  double radius_mm = 0.0;  // on the ledger limb
};

class BodyEnvelope {
 public:
  static Expected<BodyEnvelope> from(const evidence::DataPackage& package);

  // Depth under the skin, mm; negative outside. Exact for a round section, to first order near the
  // skin of any other, and between the section's half-axes at its middle.
  template <class Scalar>
  Scalar depth_mm(const SegmentFrames& frames, const Eigen::Matrix<Scalar, 3, 1>& p) const;

  // The place itself, or where it is less deep the one at that depth toward the section's middle.
  Eigen::Vector3d inside(const SegmentFrames& frames, const Eigen::Vector3d& p,
                         double least_depth_mm) const;

  // Distance to the nearest bone's surface, mm; negative inside it.
  template <class Scalar>
  Scalar clearance_mm(const SegmentFrames& frames, const Eigen::Matrix<Scalar, 3, 1>& p) const {
    return distance_mm(frames, capsules_[nearest_capsule(frames, values(p))], p);
  }

  // The one that clearance_mm speaks of.
  const BoneCapsule& nearest_bone(const SegmentFrames& frames, const Eigen::Vector3d& p) const {
    return capsules_[nearest_capsule(frames, p)];
  }

  const std::vector<BoneCapsule>& capsules() const { return capsules_; }
  const std::vector<SkinSection>& skin(Segment segment) const {
    return skin_[static_cast<std::size_t>(segment)];
  }

 private:
  // How the skin of arm and forearm closes over the elbow, beyond the end of each.
  static constexpr double kElbowCap_mm = 40.0;

  template <class Scalar>
  static Eigen::Vector3d values(const Eigen::Matrix<Scalar, 3, 1>& p) {
    using geometry::value_of;
    return {value_of(p(0)), value_of(p(1)), value_of(p(2))};
  }
  template <class Scalar>
  static Scalar distance_mm(const SegmentFrames& frames, const BoneCapsule& capsule,
                            const Eigen::Matrix<Scalar, 3, 1>& p);
  template <class Scalar>
  Scalar depth_in_mm(Segment segment, const SegmentFrames& frames,
                     const Eigen::Matrix<Scalar, 3, 1>& p) const;
  std::size_t nearest_capsule(const SegmentFrames& frames, const Eigen::Vector3d& p) const;
  // The segment whose skin covers a place.
  Segment covering(const SegmentFrames& frames, const Eigen::Vector3d& p) const;

  std::vector<SkinSection> skin_[3];  // by segment, in ascending order of fraction
  std::vector<BoneCapsule> capsules_;
};

template <class Scalar>
Scalar BodyEnvelope::depth_mm(const SegmentFrames& frames,
                              const Eigen::Matrix<Scalar, 3, 1>& p) const {
  return depth_in_mm<Scalar>(covering(frames, values(p)), frames, p);
}

template <class Scalar>
Scalar BodyEnvelope::depth_in_mm(Segment segment, const SegmentFrames& frames,
                                 const Eigen::Matrix<Scalar, 3, 1>& p) const {
  using geometry::value_of;
  using std::sqrt;
  const Eigen::Matrix<Scalar, 3, 1> from_origin = p - frames.origin(segment).cast<Scalar>();
  const auto along = [&](const Eigen::Vector3d& axis) {
    return Scalar(from_origin.dot(axis.cast<Scalar>()));
  };
  const double toward = segment == Segment::humerus ? 1.0 : -1.0;
  const Scalar level = along(frames.proximal(segment)) * Scalar(toward);
  const Scalar fraction = level / Scalar(frames.length_mm(segment));

  const auto& sections = skin(segment);
  const double f =
      std::clamp(value_of(fraction), sections.front().fraction, sections.back().fraction);
  const auto above = std::ranges::upper_bound(sections, f, {}, &SkinSection::fraction);
  const auto i = static_cast<std::size_t>(
      std::clamp<std::ptrdiff_t>(above - sections.begin(), 1, std::ssize(sections) - 1));
  const SkinSection& low = sections[i - 1];
  const SkinSection& high = sections[i];
  const Scalar inside = value_of(fraction) == f ? fraction : Scalar(f);
  const Scalar t = (inside - Scalar(low.fraction)) / Scalar(high.fraction - low.fraction);
  const auto mix = [&](double a, double b) {
    return (Scalar(a) + Scalar(b - a) * t) * Scalar(frames.scale().breadth);
  };
  const Scalar stout(frames.scale().skin.at(segment, value_of(fraction)));
  const Scalar a = stout * mix(low.half_depth_mm, high.half_depth_mm);
  const Scalar b = stout * mix(low.half_width_mm, high.half_width_mm);
  const Scalar x = along(frames.anterior(segment)) - mix(low.centre_x_mm, high.centre_x_mm);
  const Scalar z = along(frames.lateral(segment));

  Scalar sum = x * x / (a * a) + z * z / (b * b);
  Scalar slope = x * x / (a * a * a * a) + z * z / (b * b * b * b);
  if (segment != Segment::hand && value_of(level) < 0.0) {
    const double c = kElbowCap_mm * frames.scale().breadth;
    sum += level * level / Scalar(c * c);
    slope += level * level / Scalar(c * c * c * c);
  }
  // On the axis itself the direction of the nearest skin is the thinner one's.
  if (value_of(slope) < 1e-12) return value_of(a) < value_of(b) ? a : b;
  const Scalar share = sqrt(sum);  // 1 on the skin
  return share * (Scalar(1.0) - share) / sqrt(slope);
}

template <class Scalar>
Scalar BodyEnvelope::distance_mm(const SegmentFrames& frames, const BoneCapsule& capsule,
                                 const Eigen::Matrix<Scalar, 3, 1>& p) {
  using geometry::value_of;
  using std::sqrt;
  const Eigen::Vector3d from = frames.to_limb(capsule.segment, capsule.from);
  const Eigen::Vector3d line = frames.to_limb(capsule.segment, capsule.to) - from;
  const Eigen::Matrix<Scalar, 3, 1> v = p - from.cast<Scalar>();
  const double length_squared = line.squaredNorm();
  Scalar t(0.0);
  if (length_squared > 0.0) {
    t = Scalar(v.dot(line.cast<Scalar>())) / Scalar(length_squared);
    if (value_of(t) < 0.0) t = Scalar(0.0);
    if (value_of(t) > 1.0) t = Scalar(1.0);
  }
  const Eigen::Matrix<Scalar, 3, 1> off = v - line.cast<Scalar>() * t;
  const Scalar squared = off.dot(off);
  const Scalar radius(capsule.radius_mm * frames.scale().breadth);
  // A square root has no derivative on the capsule's own axis.
  return value_of(squared) < 1e-12 ? -radius : sqrt(squared) - radius;
}

}  // namespace endplate::limb
