#pragma once
// How far the fitted limb can be trusted: every study predicted by a fit that never saw it.
#include <string>
#include <vector>

#include "models/calibration/fit.hpp"

namespace endplate::calibration {

// What decides whether a measure tests anything: without other measures of its point it is
// reproduced by that point alone.
enum class Support { tested, free_point };

// Support of each measure of the atlas by those that `observations` hold.
std::vector<Support> support_of(const limb::Atlas& atlas,
                                const std::vector<Observation>& observations);

// One study's mean against the fit without that study.
struct HeldOut {
  Observation observation;
  double predicted_mm = 0.0;
  double model_sd_mm = 0.0;       // posterior of the mean limb
  double between_study_mm = 0.0;  // what the tables without the study expect at this distance
  double inflation = 1.0;         // of both, estimated on the other studies
  double between_limbs_mm = 0.0;  // what the tables without the study expect of single limbs
  double mean_low_mm = 0.0;       // 90 % interval for the study's mean
  double mean_high_mm = 0.0;
  double limb_low_mm = 0.0;  // 90 % interval for one limb
  double limb_high_mm = 0.0;
  double limbs_covered = 0.0;  // share of the study's limbs in it, taken as normal
  // The plain pooled mean of the other studies of the same measure; NaN without any.
  double pooled_mm = 0.0;

  bool mean_covered() const {
    return mean_low_mm <= observation.effect.mean_mm && observation.effect.mean_mm <= mean_high_mm;
  }
};

struct CrossValidation {
  std::vector<HeldOut> held_out;
  std::size_t studies = 0;
  std::size_t not_predicted = 0;  // observations whose point nothing else holds
};

// A fit of everything without one study: neither its rows nor its share in the spread of the
// tables.
struct LeftOutFit {
  std::vector<Observation> rest;
  evidence::SpreadModel spread;
  FitResult fit;
  double inflation = 1.0;
};
Expected<LeftOutFit> fit_without(const limb::Atlas& atlas,
                                 const evidence::Table& landmark_distances, const FitState& start,
                                 const std::string& study);

// Refits once a study, in parallel; the result does not depend on the number of threads.
Expected<CrossValidation> leave_one_study_out(const limb::Atlas& atlas,
                                              const evidence::Table& landmark_distances,
                                              const FitState& start);

// Factor by which standardised errors of studies that a fit leaves out one by one exceed normal
// ones, at the 90th percentile: (I - H)^-1 r by study, from one fit (Cook and Weisberg, Residuals
// and Influence in Regression, 1982, section 2.2).
double inflation_of(const FitResult& fit, const limb::Atlas& atlas,
                    const std::vector<Observation>& observations);

}  // namespace endplate::calibration
