#pragma once
// The ways from every lesion to every target, in all limbs at once.
#include <span>
#include <vector>

#include "models/anatomy/limb_columns.hpp"
#include "models/recovery/patients.hpp"

namespace endplate::recovery {

// A lesion on a way, by limb as LimbColumns counts them.
struct LesionOnWay {
  std::size_t lesion = 0;
  FloatColumn to_target_mm;          // from the beginning of the injured nerve
  FloatColumn exponential;           // of that, as SlowingCurve has it
  std::span<const float> leaves_mm;  // where the way leaves that nerve; of the limbs' columns
};
using WayColumns = std::vector<LesionOnWay>;
using TargetWays = std::vector<WayColumns>;  // one for each of TargetModel::ways
using WayTable = std::vector<TargetWays>;    // by model

// Holds references to `limbs`, which are those of the question.
WayTable way_table(const ForecastQuestion& question, const anatomy::LimbColumns& limbs,
                   const std::vector<TargetModel>& models);

}  // namespace endplate::recovery
