#pragma once
// The fitted chances as a table under datasets/, and the page under docs/ that sets published
// fractions beside those predicted without their study.
#include <string>
#include <vector>

#include "models/calibration/recovery_fit.hpp"

namespace endplate::calibrate {

std::string fitted_chances(const calibration::RecoveryFit& fit,
                           const std::vector<calibration::RecoverySeries>& rows);

std::string recovery_page(const calibration::RecoveryFit& fit,
                          const calibration::RecoverySeriesTable& table);

// How many rows are judged, lie in the published 95 % interval of their count, and have a count
// that the other studies' 95 % interval covers.
struct RecoveryShares {
  int rows = 0;
  int inside = 0;
  int covered = 0;
};
RecoveryShares recovery_shares(const calibration::RecoveryFit& fit);

}  // namespace endplate::calibrate
