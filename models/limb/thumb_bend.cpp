#include "models/limb/thumb_bend.hpp"

#include "geometry/smooth_step.hpp"
#include "geometry/turn_about.hpp"

namespace endplate::limb {
namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;
using geometry::JointBend;
using geometry::smooth_step;
using geometry::turn_about;

// The thumb of the anatomical position is one straight line from its root to its tip. It stands
// across the fingers, its nail to the radial side (common practice): it flexes in the plane of the
// palm, about the palmar direction, and is abducted out of that plane.
struct ThumbAxes {
  ThumbAxes(const SegmentFrames& frames, const LimbJoints& joints)
      : root(joints.centre_mm("thumb carpometacarpal", frames)),
        knuckle(joints.centre_mm("thumb metacarpophalangeal", frames)),
        end(joints.centre_mm("thumb interphalangeal", frames)),
        proximal((root - joints.centre_mm("thumb tip", frames)).normalized()) {
    const Vector3d palmar = frames.anterior(Segment::hand);
    flexion = (palmar - palmar.dot(proximal) * proximal).normalized();
    abduction = flexion.cross(proximal);  // turns the tip to the front
  }

  Vector3d root;
  Vector3d knuckle;
  Vector3d end;
  Vector3d proximal;
  Vector3d flexion;
  Vector3d abduction;
};

JointBend hinge(const Vector3d& centre, const char* joint, double angle, const ThumbAxes& axes,
                const SegmentFrames& frames, const LimbJoints& joints) {
  return {centre, axes.proximal, axes.flexion, angle, joints.half_zone_mm(joint, frames)};
}

// Flesh with less than this share lies on the palm, where the thumb's two hinges bend nothing.
constexpr double kBends = 0.85;

// In lengths of the metacarpal from its root: where the flesh begins to come along with it, and
// from where it does so wholly; assumed.
constexpr double kDrawnFrom = -0.25;
constexpr double kWhollyFrom = 0.7;

}  // namespace

ThumbBend::ThumbBend(const SegmentFrames& frames, const LimbJoints& joints, const ThumbPose& pose)
    : knuckle_(hinge(ThumbAxes(frames, joints).knuckle, "thumb metacarpophalangeal",
                     pose.mcp_flexion, ThumbAxes(frames, joints), frames, joints)),
      end_(hinge(ThumbAxes(frames, joints).end, "thumb interphalangeal", pose.ip_flexion,
                 ThumbAxes(frames, joints), frames, joints)) {
  const ThumbAxes axes(frames, joints);
  root_ = axes.root;
  along_ = (axes.knuckle - axes.root) / (axes.knuckle - axes.root).squaredNorm();
  // One turn about an axis between the two, so that either alone is the plain movement.
  const Vector3d turn = pose.palmar_abduction * axes.abduction + pose.cmc_flexion * axes.flexion;
  root_angle_ = turn.norm();
  root_axis_ = root_angle_ > 0.0 ? Vector3d(turn / root_angle_) : axes.flexion;
  bones_[0] = at_root(1.0);
  bones_[1] = bones_[0] * turn_about(axes.knuckle, axes.flexion, pose.mcp_flexion);
  bones_[2] = bones_[1] * turn_about(axes.end, axes.flexion, pose.ip_flexion);
}

Isometry3d ThumbBend::at_root(double share) const {
  return turn_about(root_, root_axis_, share * root_angle_);
}

Vector3d ThumbBend::flesh(const Vector3d& neutral_mm, double share) const {
  if (share <= 0.0) return neutral_mm;
  const double along = (neutral_mm - root_).dot(along_);
  const double drawn = share * smooth_step((along - kDrawnFrom) / (kWhollyFrom - kDrawnFrom));
  return at_root(drawn) * (share < kBends ? neutral_mm : knuckle_(end_(neutral_mm)));
}

}  // namespace endplate::limb
