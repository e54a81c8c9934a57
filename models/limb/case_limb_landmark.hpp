#pragma once
// A place on a nerve by a landmark and an offset along the limb: the nerve at that level.
#include "models/anatomy/lesion.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/limb/atlas.hpp"
#include "models/limb/nerve_route_layout.hpp"

namespace endplate::limb {

// Along which segment an offset from a landmark runs. From one near the elbow it runs up the
// humerus and down the forearm; from one near the wrist up the forearm and down the hand; else
// along the landmark's own segment.
Segment offset_axis(const Landmark& landmark, casefile::Toward toward);

// Where on a course the level of an offset from a landmark lies, mm from its start; of several the
// one nearest to `near_mm`. Problems stand at "at" and name the range that would be accepted.
Expected<double> arc_at_landmark(const Landmark& landmark, const SegmentFrames& frames,
                                 const CaseLimbCourse& course, const casefile::AtLandmark& at,
                                 double near_mm);

// Problems stand at "at" and name the range that would be accepted: where the nerve lies beyond the
// level, or the offset leaves the segment. The lesion's sd is that of the landmark's placement.
Expected<anatomy::Lesion> place_at_landmark(const anatomy::NerveTree& tree, const Atlas& atlas,
                                            const SegmentFrames& frames,
                                            const NerveRouteLayout& layout,
                                            anatomy::NodeIndex nerve,
                                            const casefile::AtLandmark& at);

}  // namespace endplate::limb
