#pragma once
// What a place of the skin is called: part of the limb, aspect and level.
#include <Eigen/Core>
#include <string>

#include "models/limb/limb_joints.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

// `neutral_mm`: in the anatomical position, in the limb frame of `frames`. `shares`: of the skin
// there. "anterior forearm, proximal third", "lateral elbow", "thenar eminence",
// "palmar index finger, middle phalanx". The elbow reaches 40 mm either way on the ledger limb, the
// wrist from 30 mm above the distal crease to the crease (assumed).
std::string skin_region(const SegmentFrames& frames, const LimbJoints& joints,
                        const Eigen::Vector3d& neutral_mm, const FingerShares& shares);

}  // namespace endplate::limb
