#pragma once
#include <cstdint>
#include <vector>

#include "models/limb/limb_joints.hpp"
#include "models/limb/segment_frames.hpp"
#include "models/limb/skin_mesh.hpp"

namespace endplate::limb {

// How far the thumb takes each vertex of a right hand's skin along: most of the way at the rim of
// its window, all of it some rings beyond, and less and less of the palm about the window.
// `rim`: the vertices of the window's edge; the thumb's own are `first_of_thumb` and all after it.
void share_thumb(SkinMesh& skin, const std::vector<std::uint32_t>& rim,
                 std::uint32_t first_of_thumb, int fineness, const SegmentFrames& frames,
                 const LimbJoints& joints);

}  // namespace endplate::limb
