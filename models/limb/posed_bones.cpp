#include "models/limb/posed_bones.hpp"

#include <algorithm>
#include <limits>
#include <string_view>

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// Pushed out of one bone a place may have come to lie in its neighbour.
constexpr int kRounds = 4;

Bone bone_of(std::string_view name) {
  if (name == "humerus") return Bone::humerus;
  if (name == "ulna") return Bone::ulna;
  if (name == "radius") return Bone::radius;
  return Bone::hand;  // the carpal bones
}

}  // namespace

PosedBones::PosedBones(const BodyEnvelope& envelope, const SegmentFrames& frames,
                       const PosedSpace& space) {
  for (const BoneCapsule& capsule : envelope.capsules()) {
    const Eigen::Isometry3d moved = space.of_bone(bone_of(capsule.bone));
    const Vector3d from = moved * frames.to_limb(capsule.segment, capsule.from);
    const Vector3d along = moved * frames.to_limb(capsule.segment, capsule.to) - from;
    const double square = along.squaredNorm();
    capsules_.push_back({from, along, square > 0.0 ? 1.0 / square : 0.0,
                         frames.scale().breadth * capsule.radius_mm, Vector3d::Zero()});
    // The ulnar nerve passes on the radial side of the pisiform, not over it.
    if (capsule.bone == "pisiform") {
      capsules_.back().way_out = moved.linear() * frames.lateral(Segment::hand);
    }
  }
}

Vector3d PosedBones::from_axis(const Capsule& capsule, const Vector3d& p) {
  const Vector3d from_end = p - capsule.from_mm;
  const double part = std::clamp(from_end.dot(capsule.along_mm) * capsule.per_square, 0.0, 1.0);
  return from_end - part * capsule.along_mm;
}

double PosedBones::clearance_mm(const Vector3d& posed_mm) const {
  double least = std::numeric_limits<double>::infinity();
  for (const Capsule& capsule : capsules_) {
    least = std::min(least, from_axis(capsule, posed_mm).norm() - capsule.radius_mm);
  }
  return least;
}

Vector3d PosedBones::outside(const Vector3d& posed_mm, double clearance_mm) const {
  Vector3d p = posed_mm;
  for (int round = 0; round < kRounds; ++round) {
    bool moved = false;
    for (const Capsule& capsule : capsules_) {
      const Vector3d away = from_axis(capsule, p);
      const double wanted = capsule.radius_mm + clearance_mm;
      const double square = away.squaredNorm();
      if (square >= wanted * wanted || square == 0.0) continue;
      const double along = away.dot(capsule.way_out);
      if (capsule.way_out.isZero()) {
        p += (wanted / std::sqrt(square) - 1.0) * away;
      } else {
        p += (std::sqrt(along * along + wanted * wanted - square) - along) * capsule.way_out;
      }
      moved = true;
    }
    if (!moved) break;
  }
  return p;
}

}  // namespace endplate::limb
