#pragma once
// Where the skin of a posed limb meets itself, and how far the joints go before it does.
//
// A legal angle of each joint may still drive the hand into the arm or a fingertip into the palm:
// flesh stops there. The forearm, hand or fingers against the arm are laid to the elbow, which
// gives way to the last whole degree; a finger against the hand to its three joints, in proportion;
// the thumb against either to all of its own.
#include <string>
#include <vector>

#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

struct ContactLimit {
  Pose pose;  // the pose asked for, or short of it as far as the skin stays free of itself
  // In words: "the forearm meets the arm: the elbow is bent by 155 degrees, not by 158".
  std::vector<std::string> contacts;
  // The skin crosses itself where no joint above is to blame: its shape is at fault, such as a web
  // stretched by one finger that bends alone.
  bool crosses_elsewhere = false;
};

// `skin`: that of `frames` in the anatomical position. Judged with CGAL's exact predicates: about
// 50 ms for a pose without contact on 18,776 triangles, half a second more for each contact.
ContactLimit limit_contact(const SkinMesh& skin, const SegmentFrames& frames,
                           const LimbJoints& joints, const Pose& pose);

}  // namespace endplate::limb
