#pragma once
// What is known of a limb before its scan is looked at.
#include <array>
#include <map>
#include <string>

#include "models/limb/limb_size.hpp"
#include "models/scan/pose_fit.hpp"

namespace endplate::scan {

// Standard deviations of angles, degrees. A joint read with a goniometer is known to about 5
// degrees (recalled); one of which nothing was said is taken as straight and may be off by 15, the
// fingers, which curl at rest, by 25 (both assumed).
inline constexpr double kGivenAngle_deg = 5.0;
inline constexpr double kOtherAngle_deg = 15.0;
inline constexpr double kFist_deg = 25.0;

// The keys of a case file's pose, in the order of angles_of(), and fingers_flexion_deg.
extern const std::array<const char*, kAngles> kAngleKeys;

// `pose_deg` as a case file gives it (casefile::Limb).
Prior prior_of(const limb::LimbSize& size, const std::map<std::string, double>& pose_deg);

}  // namespace endplate::scan
