#pragma once
// The fitted limb as tables under datasets/.
#include <string>
#include <vector>

#include "models/calibration/motion_fit.hpp"
#include "models/calibration/reproduction.hpp"

namespace endplate::calibrate {

std::string fitted_waypoints(const limb::Atlas& fitted);
std::string fitted_points(const limb::Atlas& fitted, const calibration::FitResult& fit);
std::string fitted_measures(const limb::Atlas& fitted,
                            const std::vector<calibration::Reproduced>& reproduced);
// How closely the beds hold their nerves.
std::string fitted_motion(const limb::MotionParameters& parameters);
// The spreads that answers need besides: one name, value and reason a row.
std::string fit_summary(const evidence::SpreadModel& spread, double inflation);

}  // namespace endplate::calibrate
