#pragma once
// One study's reading of one measure, on the scale of the ledger limb.
#include <string>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/limb/atlas.hpp"

namespace endplate::calibration {

struct Observation {
  std::size_t measure = 0;  // of the atlas
  std::string study;
  std::vector<std::string> rows;  // ids
  double mean_mm = 0.0;
  double limb_sd_mm = 0.0;  // spread between limbs
  bool sd_printed = false;  // else imputed from the mean
  double n = 0.0;
  double standard_error_mm() const;
};

// SD between limbs of a distance, from studies that print both; the regression and its data are in
// docs/limb-fit.md.
double imputed_limb_sd_mm(double mean_mm);

// Rows of one study in one measure are one observation (the mean of its rows weighted by n).
std::vector<Observation> observations(const limb::Atlas& atlas,
                                      const evidence::Table& landmark_distances);

}  // namespace endplate::calibration
