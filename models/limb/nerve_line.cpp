#include "models/limb/nerve_line.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "geometry/smooth_step.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using geometry::smooth_step;

// The axillary nerve goes with the humerus at its neck's medial side and with the deltoid on its
// lateral one; these offsets of the ledger limb bound the way between (assumed).
constexpr std::string_view kInDeltoid = "axillary";
constexpr double kWithNeck_mm = -5.0;
constexpr double kWithMuscle_mm = 20.0;
// A muscle has skin over it: the nerve in the deltoid lies at least so deep (assumed).
constexpr double kUnderDeltoid_mm = 8.0;

double share_of_deltoid(std::string_view course, const SegmentFrames& frames, const Vector3d& p) {
  if (course != kInDeltoid) return 0.0;
  const double lateral_mm = frames.from_limb(Segment::humerus, p).z_mm;
  return smooth_step((lateral_mm - kWithNeck_mm) / (kWithMuscle_mm - kWithNeck_mm));
}

}  // namespace

NerveLine nerve_line(const Atlas& atlas, std::size_t course, const SegmentFrames& frames,
                     const BodyEnvelope& envelope, double step_mm) {
  const geometry::CubicSpline curve = atlas.curve(course, frames);
  const double length = curve.last_knot() - curve.first_knot();
  const auto steps = static_cast<int>(std::max(1.0, std::ceil(length / step_mm)));
  NerveLine line;
  line.course = course;
  for (int k = 0; k <= steps; ++k) {
    const double knot = curve.first_knot() + length * k / steps;
    const Vector3d p = envelope.inside(frames, curve.position(knot), kLeastDepth_mm);
    line.knots.push_back(knot);
    line.places.push_back(
        {p, finger_shares(frames, p), share_of_deltoid(atlas.courses()[course].id, frames, p)});
  }
  return line;
}

PosedNerves::PosedNerves(const LandmarkSet& landmarks, const BodyEnvelope& envelope,
                         const SegmentFrames& frames, const PosedSpace& space)
    : envelope_(envelope),
      frames_(frames),
      space_(space),
      humerus_(space.of_bone(Bone::humerus)),
      deltoid_(landmarks, frames, space),
      bones_(envelope, frames, space) {}

// The skin over the shoulder goes with the humerus.
Vector3d PosedNerves::within_deltoid(const Vector3d& neutral_mm) const {
  const Vector3d with_humerus = humerus_.inverse() * deltoid_(neutral_mm);
  const double level = frames_.from_limb(Segment::humerus, with_humerus).fraction;
  const Vector3d axis = frames_.to_limb(Segment::humerus, level, 0.0, 0.0);
  // Widened to the section at four fifths, brought under the skin there, and narrowed again.
  const double narrowing = std::max(0.1, top_narrowing(level));
  const Vector3d widened = axis + (with_humerus - axis) / narrowing;
  return humerus_ *
         (axis + narrowing * (envelope_.inside(frames_, widened, kUnderDeltoid_mm) - axis));
}

Vector3d PosedNerves::operator()(const NervePlace& place) const {
  Vector3d p = Vector3d::Zero();
  double total = 0.0;
  for (std::size_t f = 0; f < place.fingers.share.size(); ++f) {
    const double share = place.fingers.share[f];
    if (share <= 0.0) continue;
    p += share * space_.held(place.neutral_mm, static_cast<Finger>(f));
    total += share;
  }
  if (total <= 0.0) p = space_.held(place.neutral_mm);
  if (place.in_deltoid > 0.0) {
    p += place.in_deltoid * (within_deltoid(place.neutral_mm) - p);
  }
  return bones_.outside(p, kLeastClearance_mm);
}

std::vector<Vector3d> PosedNerves::operator()(const NerveLine& line) const {
  std::vector<Vector3d> posed;
  posed.reserve(line.places.size());
  for (const NervePlace& place : line.places) posed.push_back((*this)(place));
  return posed;
}

}  // namespace endplate::limb
