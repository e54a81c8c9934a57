#pragma once
// The published distances at incisions beside the limb's own: a table under datasets/ and a page.
#include <string>
#include <vector>

#include "models/calibration/approach_prediction.hpp"

namespace endplate::calibrate {

// How many of the published distances the limb meets.
struct ApproachShares {
  std::size_t expressed = 0;
  std::size_t predicted = 0;  // by a fit without their study
  std::size_t scored = 0;     // of these, with a printed deviation or range
  std::size_t within = 0;
  std::size_t with_mean = 0;
  std::size_t covered = 0;  // mean in the 90 % interval for one limb
};

// By the fit without the study, or by the full fit.
ApproachShares approach_shares(const std::vector<incision::ApproachMeasure>& measures,
                               const std::vector<calibration::ApproachPrediction>& predictions,
                               bool full);

// approach_predicted.csv.
std::string approach_table(const std::vector<incision::ApproachMeasure>& measures,
                           const std::vector<calibration::ApproachPrediction>& predictions);

// docs/incision-rows.md.
std::string approach_page(const evidence::DataPackage& package,
                          const std::vector<incision::ApproachMeasure>& measures,
                          const std::vector<calibration::ApproachPrediction>& predictions,
                          const std::vector<incision::ApproachRule>& rules);

}  // namespace endplate::calibrate
