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

// The supinator arises from the ulna and ends on the radius: the nerve within it turns by at least
// a quarter of what the radius does, from the arcade on; more than the flesh has so near the elbow.
// Assumed, with the medial shift of the nerve at the arcade in sight (16 to 33 per cent of the turn
// would fit it); the studies of its crossing of the radius were not.
constexpr std::string_view kInSupinator = "deep_radial";
constexpr double kSupinatorShare = 0.25;
constexpr double kBeforeSupinator = 0.125;  // levels of the forearm
constexpr double kAtArcade = 0.18;

double share_of_supinator(std::string_view course, const SegmentFrames& frames, const Vector3d& p) {
  if (course != kInSupinator) return 0.0;
  const double level = frames.from_limb(Segment::forearm, p).fraction;
  return kSupinatorShare * smooth_step((level - kBeforeSupinator) / (kAtArcade - kBeforeSupinator));
}

double share_of_deltoid(std::string_view course, const SegmentFrames& frames, const Vector3d& p) {
  if (course != kInDeltoid) return 0.0;
  const double lateral_mm = frames.from_limb(Segment::humerus, p).z_mm;
  return smooth_step((lateral_mm - kWithNeck_mm) / (kWithMuscle_mm - kWithNeck_mm));
}

}  // namespace

NervePlace nerve_place(std::string_view course, const SegmentFrames& frames, const Vector3d& p) {
  return {p, finger_shares(frames, p), share_of_deltoid(course, frames, p),
          share_of_supinator(course, frames, p)};
}

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
    line.places.push_back(nerve_place(atlas.courses()[course].id, frames, p));
  }
  return line;
}

void follow_thumb(NerveLine& line, const SkinMesh& skin, const SegmentFrames& frames) {
  constexpr double kHandFrom = -0.1;  // levels of the hand between which the thumb draws on it
  constexpr double kHandTo = 0.6;
  const auto in_hand = [&](const Vector3d& p) {
    const double level = frames.from_limb(Segment::hand, p).fraction;
    return level > kHandFrom && level < kHandTo;
  };
  std::vector<std::size_t> vertices;
  for (std::size_t v = 0; v < skin.mesh.vertices_mm.size(); ++v) {
    if (in_hand(skin.mesh.vertices_mm[v])) vertices.push_back(v);
  }
  if (vertices.empty()) return;
  for (NervePlace& place : line.places) {
    if (!in_hand(place.neutral_mm)) continue;
    const std::size_t nearest = *std::ranges::min_element(vertices, {}, [&](std::size_t v) {
      return (skin.mesh.vertices_mm[v] - place.neutral_mm).squaredNorm();
    });
    place.fingers.thumb = skin.fingers[nearest].thumb;
  }
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
    p += share * space_.held(place.neutral_mm, static_cast<Finger>(f), place.least_pronation,
                             place.fingers.thumb);
    total += share;
  }
  if (total <= 0.0) {
    p = space_.held(place.neutral_mm, std::nullopt, place.least_pronation, place.fingers.thumb);
  }
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
