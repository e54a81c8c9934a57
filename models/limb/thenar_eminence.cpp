#include "models/limb/thenar_eminence.hpp"

#include <Eigen/Geometry>
#include <cmath>

#include "geometry/smooth_step.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using geometry::smooth_step;

// Distance of the skin from the metacarpal's axis, assumed: bone, muscle and skin in front and
// toward the palm, bone and skin behind.
constexpr double kFront_mm = 20.5;
constexpr double kBack_mm = 10.5;
// In lengths of the metacarpal from its root: where the eminence begins and is full, where it sinks
// and ends.
constexpr double kBegins = -0.70;
constexpr double kFull = 0.10;
constexpr double kSinks = 0.35;
constexpr double kEnds = 1.40;
// The third power leaves what lies twice as far off nearly where it was.
constexpr double kPower = 3.0;

}  // namespace

void raise_thenar_eminence(geometry::TriangleMesh& skin, const SegmentFrames& frames,
                           const LimbJoints& joints) {
  const Vector3d root = joints.centre_mm("thumb carpometacarpal", frames);
  const Vector3d along = joints.centre_mm("thumb metacarpophalangeal", frames) - root;
  const Vector3d axis = along.normalized();
  const auto across = [&](const Vector3d& v) { return Vector3d(v - v.dot(axis) * axis); };
  const Vector3d palmar = across(frames.anterior(Segment::hand)).normalized();
  const Vector3d ulnar = across(-frames.lateral(Segment::hand)).normalized();
  const Vector3d front = (2.0 * palmar + ulnar).normalized();
  const double breadth = frames.scale().breadth;
  for (Vector3d& p : skin.vertices_mm) {
    const double part = (p - root).dot(axis) / along.norm();
    const double amount = smooth_step((part - kBegins) / (kFull - kBegins)) *
                          smooth_step((kEnds - part) / (kEnds - kSinks));
    if (amount <= 0.0) continue;
    const Vector3d off = across(p - root);
    const double distance = off.norm();
    if (distance <= 0.0) continue;
    const double facing = smooth_step(0.5 * (1.0 + off.dot(front) / distance));
    const double least = amount * breadth * std::lerp(kBack_mm, kFront_mm, facing);
    const double moved =
        std::pow(std::pow(distance, kPower) + std::pow(least, kPower), 1.0 / kPower);
    p += off * (moved / distance - 1.0);
  }
}

}  // namespace endplate::limb
