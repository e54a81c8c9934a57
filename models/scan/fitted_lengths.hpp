#pragma once
// The lengths of arm, forearm and hand as a fit to a scan has them, under the names by which a case
// gives measured lengths.
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/limb_size.hpp"
#include "models/scan/pose_fit.hpp"
#include "models/scan/scan_fit.hpp"

namespace endplate::scan {

struct FittedLength {
  std::string measure;  // of limb_measures.csv
  double length_mm = 0.0;
  double sd_mm = 0.0;  // of the fit, widened as the whole fit is
  // Before the scan was looked at.
  double expected_mm = 0.0;
  double expected_sd_mm = 0.0;
  bool given = false;  // the case knows it already, by this or other measures
  // The scan says it: the case did not, landmarks at both ends were picked, and the scan leaves
  // less than half of what was open before (assumed). Without its ends a length would rest on how
  // the model's skin tapers.
  bool measured = false;
};

// `size` and `prior`: what the fit to `picks` began with. `widened_by` as in ScanAnswer.
std::vector<FittedLength> fitted_lengths(const limb::LimbSize& size, const Prior& prior,
                                         const ScanFit& fit, double widened_by,
                                         const std::vector<Pick>& picks,
                                         const ScanLandmarks& landmarks);

// The limb with those of `lengths` that are measured, in whole mm. Fault::input where they
// contradict what the case gives, as LimbSize::from says it.
Expected<casefile::Limb> with_lengths(const evidence::DataPackage& package, casefile::Limb limb,
                                      const std::vector<FittedLength>& lengths);

}  // namespace endplate::scan
