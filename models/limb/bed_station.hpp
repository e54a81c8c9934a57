#pragma once
// Slide and strain of a nerve at one place of its bed.
#include <cstddef>

#include "models/limb/nerve_bed.hpp"
#include "models/limb/posed_space.hpp"
#include "models/limb/segment_frames.hpp"

namespace endplate::limb {

// The place of a bed's course or finger that lies nearest to a level of a segment at rest.
std::size_t place_at_level(const NerveBed& bed, const SegmentFrames& frames, Segment segment,
                           double level);

// How far the nerve has slid toward the hand past a mark on the bone beside that place, mm.
double excursion_mm(const NerveBed& bed, const BedMotion& motion, const PosedSpace& space,
                    Segment segment, std::size_t place);

// Mean strain of the nerve within `half_mm` of that place, as a fraction; negative is slack.
double strain_about(const NerveBed& bed, const BedMotion& motion, std::size_t place,
                    double half_mm);

}  // namespace endplate::limb
