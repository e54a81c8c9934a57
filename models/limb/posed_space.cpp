#include "models/limb/posed_space.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "geometry/smooth_step.hpp"
#include "geometry/turn_about.hpp"

namespace endplate::limb {
namespace {

using Eigen::Isometry3d;
using Eigen::Vector3d;
using geometry::JointBend;
using geometry::smooth_step;
using geometry::turn_about;

// Of every three degrees of elevation two are the humerus's against the scapula, one the scapula's
// against the chest (common practice, Inman 1944 recalled); half of that at the clavicle's sternal
// end, half at its acromial end (assumed; Inman gives 30 of 60 degrees to each).
constexpr double kGlenohumeral = 2.0 / 3.0;
constexpr double kSternoclavicular = 0.5;

// Levels of the arm between which a nerve goes over from the scapula to the humerus; assumed: the
// cords of the plexus beside the coracoid above, below the surgical neck with its quadrangular
// space.
constexpr double kWithScapula = 0.98;
constexpr double kWithHumerus = 0.80;

Vector3d mirrored(const Vector3d& p) {
  return {p.x(), p.y(), -p.z()};
}

std::array<JointBend, 3> finger_bends(const char* finger, const FingerPose& pose,
                                      const SegmentFrames& frames, const LimbJoints& joints) {
  const auto bend = [&](const char* joint, double angle) {
    const std::string name = std::string(finger) + " " + joint;
    return JointBend(joints.centre_mm(name, frames), frames.proximal(Segment::hand),
                     frames.lateral(Segment::hand), angle, joints.half_zone_mm(name, frames));
  };
  return {bend("metacarpophalangeal", pose.mcp_flexion),
          bend("proximal interphalangeal", pose.pip_flexion),
          bend("distal interphalangeal", pose.dip_flexion)};
}

// Each phalanx against the hand, from the knuckle on.
std::array<Isometry3d, 3> finger_turns(const char* finger, const FingerPose& pose,
                                       const SegmentFrames& frames, const LimbJoints& joints) {
  const auto turn = [&](const char* joint, double angle) {
    return turn_about(joints.centre_mm(std::string(finger) + " " + joint, frames),
                      frames.lateral(Segment::hand), angle);
  };
  const Isometry3d proximal = turn("metacarpophalangeal", pose.mcp_flexion);
  const Isometry3d middle = proximal * turn("proximal interphalangeal", pose.pip_flexion);
  return {proximal, middle, middle * turn("distal interphalangeal", pose.dip_flexion)};
}

// A turn about a vector of that direction and size; about any axis when it is none.
struct Turn {
  Vector3d axis;
  double angle;
};
Turn turn_of(const Vector3d& vector, const Vector3d& otherwise) {
  const double angle = vector.norm();
  return {angle > 0.0 ? Vector3d(vector / angle) : otherwise, angle};
}

Turn wrist_turn(const Pose& pose, const SegmentFrames& frames) {
  return turn_of(pose.wrist_ulnar_deviation * frames.anterior(Segment::forearm) -
                     pose.wrist_extension * frames.lateral(Segment::forearm),
                 frames.lateral(Segment::forearm));
}

}  // namespace

PosedSpace::PosedSpace(const SegmentFrames& frames, const LimbJoints& joints, const Pose& pose)
    : frames_(frames.scale(), Side::right),
      left_(frames.side() == Side::left),
      pose_(pose),
      fingers_{finger_bends("index", pose.fingers[0], frames_, joints),
               finger_bends("middle", pose.fingers[1], frames_, joints),
               finger_bends("ring", pose.fingers[2], frames_, joints),
               finger_bends("little", pose.fingers[3], frames_, joints)},
      phalanges_{finger_turns("index", pose.fingers[0], frames_, joints),
                 finger_turns("middle", pose.fingers[1], frames_, joints),
                 finger_turns("ring", pose.fingers[2], frames_, joints),
                 finger_turns("little", pose.fingers[3], frames_, joints)},
      thumb_(frames_, joints, pose.thumb),
      wrist_(joints.centre_mm("wrist", frames_), frames_.proximal(Segment::forearm),
             wrist_turn(pose, frames_).axis, wrist_turn(pose, frames_).angle,
             joints.half_zone_mm("wrist", frames_)),
      elbow_(joints.centre_mm("elbow", frames_), frames_.proximal(Segment::humerus),
             frames_.lateral(Segment::humerus), pose.elbow_flexion,
             joints.half_zone_mm("elbow", frames_)) {
  const Turn wrist = wrist_turn(pose, frames_);
  wrist_turn_ = turn_about(joints.centre_mm("wrist", frames_), wrist.axis, wrist.angle);
  half_wrist_turn_ = turn_about(joints.centre_mm("wrist", frames_), wrist.axis, 0.5 * wrist.angle);
  elbow_turn_ = turn_about(joints.centre_mm("elbow", frames_), frames_.lateral(Segment::humerus),
                           pose.elbow_flexion);

  head_ = joints.centre_mm("shoulder", frames_);
  const Turn elevation = turn_of(pose.shoulder_flexion * frames_.lateral(Segment::humerus) -
                                     pose.shoulder_abduction * frames_.anterior(Segment::humerus),
                                 frames_.lateral(Segment::humerus));
  elevation_axis_ = elevation.axis;
  glenohumeral_ = kGlenohumeral * elevation.angle;
  const double scapular = elevation.angle - glenohumeral_;
  clavicle_ = turn_about(joints.centre_mm("sternoclavicular", frames_), elevation_axis_,
                         kSternoclavicular * scapular);
  scapula_ = clavicle_ * turn_about(joints.centre_mm("acromioclavicular", frames_), elevation_axis_,
                                    (1.0 - kSternoclavicular) * scapular);

  ulnar_head_ = joints.centre_mm("distal radioulnar", frames_);
  const Vector3d radial_head = joints.centre_mm("proximal radioulnar", frames_);
  pronation_axis_ = (radial_head - ulnar_head_).normalized();
  humerus_ = shoulder(1.0);
  pronation_ = pronation(1.0);
  radial_head_level_ = frames_.from_limb(Segment::forearm, radial_head).fraction;
  ulnar_head_level_ = frames_.from_limb(Segment::forearm, ulnar_head_).fraction;
}

double PosedSpace::share_of_arm(const Vector3d& neutral_mm) const {
  const double level = frames_.from_limb(Segment::humerus, neutral_mm).fraction;
  return smooth_step((kWithScapula - level) / (kWithScapula - kWithHumerus));
}

double PosedSpace::share_of_pronation(const Vector3d& neutral_mm) const {
  const double level = frames_.from_limb(Segment::forearm, neutral_mm).fraction;
  return std::clamp((level - radial_head_level_) / (ulnar_head_level_ - radial_head_level_), 0.0,
                    1.0);
}

Isometry3d PosedSpace::shoulder(double share) const {
  const Vector3d humerus = frames_.proximal(Segment::humerus);
  return scapula_ * turn_about(head_, elevation_axis_, share * glenohumeral_) *
         turn_about(head_, humerus, -share * pose_.shoulder_external_rotation);
}

Isometry3d PosedSpace::pronation(double share) const {
  return turn_about(ulnar_head_, pronation_axis_, share * pose_.forearm_pronation);
}

Isometry3d PosedSpace::of_bone(Bone bone) const {
  Isometry3d moved = Isometry3d::Identity();
  switch (bone) {
    case Bone::thorax:
      break;
    case Bone::clavicle:
      moved = clavicle_;
      break;
    case Bone::scapula:
      moved = scapula_;
      break;
    case Bone::humerus:
      moved = humerus_;
      break;
    case Bone::ulna:
      moved = humerus_ * elbow_turn_;
      break;
    case Bone::radius:
      moved = humerus_ * elbow_turn_ * pronation_;
      break;
    case Bone::hand:
      moved = humerus_ * elbow_turn_ * pronation_ * wrist_turn_;
      break;
  }
  return sided(moved);
}

Isometry3d PosedSpace::of_phalanx(Finger finger, Phalanx phalanx) const {
  return sided(humerus_ * elbow_turn_ * pronation_ * wrist_turn_ *
               phalanges_[static_cast<std::size_t>(finger)][static_cast<std::size_t>(phalanx)]);
}

Isometry3d PosedSpace::of_thumb(ThumbBone bone) const {
  return sided(humerus_ * elbow_turn_ * pronation_ * wrist_turn_ * thumb_.of_bone(bone));
}

Isometry3d PosedSpace::of_proximal_carpal_row() const {
  return sided(humerus_ * elbow_turn_ * pronation_ * half_wrist_turn_);
}

Isometry3d PosedSpace::sided(const Isometry3d& moved) const {
  if (!left_) return moved;
  const Eigen::Matrix3d mirror = Vector3d(1.0, 1.0, -1.0).asDiagonal();
  Isometry3d result;
  result.linear() = mirror * moved.linear() * mirror;
  result.translation() = mirror * moved.translation();
  result.makeAffine();
  return result;
}

Vector3d PosedSpace::moved(Vector3d p, std::optional<Finger> finger, Tissue tissue,
                           double least_pronation, double thumb) const {
  if (left_) p = mirrored(p);
  // The skin ends in a round top over the shoulder, which is the arm's.
  const double arm = tissue == Tissue::flesh ? 1.0 : share_of_arm(p);
  const double turned = std::max(share_of_pronation(p), least_pronation);
  if (thumb > 0.0) p = thumb_.flesh(p, thumb);
  if (finger) {
    const auto& joints = fingers_[static_cast<std::size_t>(*finger)];
    for (std::size_t k = joints.size(); k-- > 0;) p = joints[k](p);
  }
  p = wrist_(p);
  if (turned >= 1.0) {
    p = pronation_ * p;
  } else if (turned > 0.0) {
    p = pronation(turned) * p;
  }
  p = tissue == Tissue::flesh ? elbow_(p) : elbow_.held(p);
  p = (arm >= 1.0 ? humerus_ : shoulder(arm)) * p;
  return left_ ? mirrored(p) : p;
}

Vector3d PosedSpace::flesh(const Vector3d& neutral_mm, std::optional<Finger> finger) const {
  return moved(neutral_mm, finger, Tissue::flesh, 0.0, 0.0);
}

Vector3d PosedSpace::flesh_of_thumb(const Vector3d& neutral_mm, double share,
                                    std::optional<Finger> finger) const {
  return moved(neutral_mm, finger, Tissue::flesh, 0.0, share);
}

Vector3d PosedSpace::held(const Vector3d& neutral_mm, std::optional<Finger> finger,
                          double least_pronation, double thumb) const {
  return moved(neutral_mm, finger, Tissue::nerve, least_pronation, thumb);
}

Eigen::Matrix3d PosedSpace::turn(const Vector3d& neutral_mm) const {
  const Vector3d p = left_ ? mirrored(neutral_mm) : neutral_mm;
  Eigen::Matrix3d result = shoulder(share_of_arm(p)).linear();
  if (frames_.from_limb(Segment::humerus, p).fraction < 0.0) {
    result = result * elbow_turn_.linear() * pronation(share_of_pronation(p)).linear();
  }
  if (frames_.from_limb(Segment::hand, p).fraction > 0.0) result = result * wrist_turn_.linear();
  if (!left_) return result;
  const Eigen::Matrix3d mirror = Vector3d(1.0, 1.0, -1.0).asDiagonal();
  return mirror * result * mirror;
}

}  // namespace endplate::limb
