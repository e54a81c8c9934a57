#pragma once
// What the fit of the limb left behind besides courses: the spreads that every answer needs.
#include <map>
#include <string>

#include "models/evidence/data_package.hpp"
#include "models/evidence/scale_curve.hpp"

namespace endplate::limb {

// One measure on the fitted ledger limb beside the studies.
struct FittedMeasure {
  double model_mm = 0.0;
  double model_sd_mm = 0.0;
  std::size_t studies = 0;
  double pooled_mm = 0.0;
  double pooled_se_mm = 0.0;
  double limb_sd_mm = 0.0;
};

struct FitSummary {
  // By how much errors on left-out studies exceed the stated spread.
  double inflation = 1.0;
  evidence::ScaleCurve between_studies;
  evidence::ScaleCurve between_limbs;
  std::map<std::string, FittedMeasure, std::less<>> measures;  // by id
  std::map<std::string, double, std::less<>> knot_sd_mm;       // by point id

  // Reads fit_summary.csv, fitted_measures.csv and fitted_points.csv.
  static FitSummary from(const evidence::DataPackage& package);

  // Standard deviation of the model's error on a study's mean at a distance of d mm.
  double model_error_mm(double model_sd_mm, double d_mm) const;
};

}  // namespace endplate::limb
