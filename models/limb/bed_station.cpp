#include "models/limb/bed_station.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

Bone bone_of(Segment segment) {
  switch (segment) {
    case Segment::humerus:
      return Bone::humerus;
    case Segment::forearm:
      return Bone::radius;
    case Segment::hand:
      break;
  }
  return Bone::hand;
}

}  // namespace

std::size_t place_at_level(const NerveBed& bed, const SegmentFrames& frames, Segment segment,
                           double level) {
  std::size_t nearest = 0;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < bed.places().size(); ++i) {
    if (bed.places()[i].on_root > 0.0) continue;
    const double away = std::abs(frames.from_limb(segment, bed.rest_way_mm()[i]).fraction - level);
    if (away < least) {
      least = away;
      nearest = i;
    }
  }
  return nearest;
}

double excursion_mm(const NerveBed& bed, const BedMotion& motion, const PosedSpace& space,
                    Segment segment, std::size_t place) {
  // The mark goes with the bone; this is where the way passes it now.
  const Vector3d mark = space.of_bone(bone_of(segment)) * bed.rest_way_mm()[place];
  std::size_t near = 1;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 1; i + 1 < motion.way_mm.size(); ++i) {
    const double away = (motion.way_mm[i] - mark).squaredNorm();
    if (away < least) {
      least = away;
      near = i;
    }
  }
  const Vector3d along = (motion.way_mm[near + 1] - motion.way_mm[near - 1]).normalized();
  const double mark_mm = motion.arc_mm[near] + (mark - motion.way_mm[near]).dot(along);
  return motion.arc_mm[place] + motion.slide.slide_mm[place] - mark_mm;
}

double strain_about(const NerveBed& bed, const BedMotion& motion, std::size_t place,
                    double half_mm) {
  const std::vector<double>& rest = bed.rest_mm();
  double stretched = 0.0;
  double length = 0.0;
  for (std::size_t i = 0; i + 1 < rest.size(); ++i) {
    if (std::abs(0.5 * (rest[i] + rest[i + 1]) - rest[place]) > half_mm) continue;
    const double step = rest[i + 1] - rest[i];
    stretched += step * motion.slide.strain[i];
    length += step;
  }
  return length > 0.0 ? stretched / length : 0.0;
}

}  // namespace endplate::limb
