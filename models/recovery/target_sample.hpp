#pragma once
// All patients of a forecast at one target at once, by columns: the quick way to what
// TargetModel::course says of one patient.
#include <map>
#include <vector>

#include "models/recovery/patients.hpp"

namespace endplate::recovery {

// A lesion on a way, in each limb.
struct LesionOnWay {
  std::size_t lesion = 0;
  std::vector<double> to_target_mm;   // from the beginning of the injured nerve
  std::span<const double> leaves_mm;  // where the way leaves that nerve
};
using WayColumns = std::vector<LesionOnWay>;
using TargetWays = std::vector<WayColumns>;  // one for each of TargetModel::ways

// Of every model, in the limbs that the patients have.
struct WayTable {
  std::vector<TargetWays> targets;
  std::vector<std::vector<double>> lengths;  // what leaves_mm points to
};
WayTable way_table(const ForecastQuestion& question, const std::vector<TargetModel>& models);

// Days for a millimetre in each patient, by the row of the rate.
using Slowness = std::map<const Parameter*, std::vector<double>>;
Slowness slowness_of(const PatientColumns& patients, const std::vector<TargetModel>& models);

// Columns without the patients whom they do not concern. Weights are empty where all weigh 1.
struct TargetSample {
  std::vector<double> distance_mm;  // of those with the target below a lesion
  std::vector<double> distance_weights;
  struct Growing {
    std::vector<double> arrive;
    std::vector<double> units;     // motor
    std::vector<double> movement;  // motor
    std::vector<double> useful;
    std::vector<double> weights;
  } growing;
  std::vector<std::size_t> blocked;  // patients
  double below = 0.0;                // sums of weights
  double in_time = 0.0;
  double grown_in_time = 0.0;  // without the blocks
  double useful = 0.0;
};

// `weights` of the patients, or empty.
// `into` is filled anew; its memory is used again.
void sample_target(const ForecastQuestion& question, const TargetModel& model,
                   const TargetWays& ways, const PatientColumns& patients, const Slowness& slowness,
                   const std::vector<double>& weights, const Draws& draws, TargetSample& into);

}  // namespace endplate::recovery
