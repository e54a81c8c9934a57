#pragma once
#include "geometry/triangle_mesh.hpp"
#include "models/limb/limb_joints.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// Raises the ball of the thumb on the skin of a right hand: what lies near the first metacarpal is
// moved away from its axis, most on the palmar side. Places on one ray from the axis keep their
// order, so a skin that does not cross itself is not made to.
void raise_thenar_eminence(geometry::TriangleMesh& skin, const SegmentFrames& frames,
                           const LimbJoints& joints);

}  // namespace endplate::limb
