#pragma once
// Where the places of the anatomical position come to lie when the joints bend.
//
// Places in and out are in the limb frame of the frames given (segment_frames.hpp), mm. The thorax
// does not move. The left limb is the mirror image of the right one, to the last digit.
#include <Eigen/Geometry>
#include <array>
#include <optional>

#include "geometry/joint_bend.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/pose.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/thumb_bend.hpp"

namespace endplate::limb {

enum class Bone { thorax, clavicle, scapula, humerus, ulna, radius, hand };
enum class Finger { index, middle, ring, little };
enum class Phalanx { proximal, middle, distal };

class PosedSpace {
 public:
  PosedSpace(const SegmentFrames& frames, const LimbJoints& joints, const Pose& pose);

  // A bone moves as one piece.
  Eigen::Isometry3d of_bone(Bone bone) const;
  Eigen::Isometry3d of_phalanx(Finger finger, Phalanx phalanx) const;
  Eigen::Isometry3d of_thumb(ThumbBone bone) const;
  // Scaphoid, lunate, triquetrum and pisiform take half of the wrist's turn: the radiocarpal and
  // the midcarpal joint share it about equally (common practice).
  Eigen::Isometry3d of_proximal_carpal_row() const;

  // Skin and muscle: near a hinge the flesh folds (geometry::JointBend), the forearm twists evenly
  // from the elbow to the wrist as the radius turns round the ulna, and all of it, to the round top
  // over the shoulder, goes with the humerus.
  // `finger`: of a place on a finger, beyond its knuckle or near it.
  Eigen::Vector3d flesh(const Eigen::Vector3d& neutral_mm,
                        std::optional<Finger> finger = std::nullopt) const;
  // Skin and muscle on the thumb or drawn along by it, by as much as ThumbBend::flesh says.
  Eigen::Vector3d flesh_of_thumb(const Eigen::Vector3d& neutral_mm, double share,
                                 std::optional<Finger> finger = std::nullopt) const;
  // Nerve: as the flesh round it, so that it stays under the skin; but toward the plexus it goes
  // over from the humerus to the scapula. `least_pronation`: of the forearm's turn, the share that
  // the place takes part in even where the flesh at its level would less. `thumb`: as the share of
  // flesh_of_thumb.
  Eigen::Vector3d held(const Eigen::Vector3d& neutral_mm,
                       std::optional<Finger> finger = std::nullopt, double least_pronation = 0.0,
                       double thumb = 0.0) const;
  // How the surroundings of a place of a nerve turn: that of its bone, without the folding.
  Eigen::Matrix3d turn(const Eigen::Vector3d& neutral_mm) const;

 private:
  enum class Tissue { flesh, nerve };
  Eigen::Vector3d moved(Eigen::Vector3d p, std::optional<Finger> finger, Tissue tissue,
                        double least_pronation, double thumb) const;
  // Of the arm's own movement, the share that a nerve's neutral place takes part in: none at the
  // cords of the plexus, all of it below the surgical neck.
  double share_of_arm(const Eigen::Vector3d& neutral_mm) const;
  double share_of_pronation(const Eigen::Vector3d& neutral_mm) const;
  Eigen::Isometry3d shoulder(double share) const;
  Eigen::Isometry3d pronation(double share) const;
  // Of the right limb, as that of the limb's own side.
  Eigen::Isometry3d sided(const Eigen::Isometry3d& moved) const;

  SegmentFrames frames_;  // of the right limb
  bool left_;
  Pose pose_;
  std::array<std::array<geometry::JointBend, 3>, 4> fingers_;  // knuckle, middle, end
  std::array<std::array<Eigen::Isometry3d, 3>, 4> phalanges_;  // against the hand
  ThumbBend thumb_;
  geometry::JointBend wrist_;
  geometry::JointBend elbow_;
  Eigen::Isometry3d wrist_turn_;
  Eigen::Isometry3d half_wrist_turn_;
  Eigen::Isometry3d elbow_turn_;
  Eigen::Isometry3d humerus_;    // the whole of the arm's movement
  Eigen::Isometry3d pronation_;  // the whole of it, about the ulna
  Eigen::Isometry3d clavicle_;
  Eigen::Isometry3d scapula_;
  Eigen::Vector3d head_;  // centre of the humeral head
  Eigen::Vector3d elevation_axis_;
  double glenohumeral_ = 0.0;  // part of the elevation
  Eigen::Vector3d ulnar_head_;
  Eigen::Vector3d pronation_axis_;
  double radial_head_level_ = 0.0;  // of the forearm's length
  double ulnar_head_level_ = 1.0;
};

}  // namespace endplate::limb
