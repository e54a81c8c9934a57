#pragma once
// The published distances at incisions beside the limb's own: a table under datasets/ and a page.
#include <string>
#include <vector>

#include "models/calibration/approach_prediction.hpp"

namespace endplate::calibrate {

// approach_predicted.csv.
std::string approach_table(const std::vector<incision::ApproachMeasure>& measures,
                           const std::vector<calibration::ApproachPrediction>& predictions);

// docs/incision-rows.md.
std::string approach_page(const evidence::DataPackage& package,
                          const std::vector<incision::ApproachMeasure>& measures,
                          const std::vector<calibration::ApproachPrediction>& predictions,
                          const std::vector<incision::ApproachRule>& rules);

}  // namespace endplate::calibrate
