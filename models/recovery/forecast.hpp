#pragma once
// When axons come to each target below the lesions, what they do there, and with what chance.
//
// One sampled patient has one limb, one rate of growth, one grade and delay at each lesion; two
// targets of one patient share them. All times are days from the injury.
//   axons arrive = operation (or injury) + latency or coaptation delays + distance over rate
//   first units = arrival + end-organ delay;  first movement (M1) = first units + delay
//   useful = first movement + delay (M3), or arrival + delay (S3)
// Dates are those of the patients whose axons grow, so they stand in order; whether the muscle
// still answers when the axons come is said by the chances, which count every patient.
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/lesion.hpp"
#include "models/anatomy/limb_columns.hpp"
#include "models/anatomy/nerve_metrics.hpp"
#include "models/core/summary.hpp"
#include "models/recovery/growth.hpp"
#include "models/recovery/parameters.hpp"
#include "models/recovery/targets.hpp"

namespace endplate::recovery {

// What the axons do at a lesion.
enum class Component : std::uint8_t {
  block,   // whole axons that do not conduct (neurapraxia): back at once, not in order
  growth,  // interrupted in a nerve in continuity, or repaired: they grow
  none     // divided and not repaired, or torn from the cord: nothing grows
};

struct LesionModel {
  anatomy::Lesion lesion;
  // The lesion's place in each of ForecastQuestion::limbs, mm from the start of its nerve. Empty:
  // that of `lesion` in every limb.
  std::vector<double> places_mm;
  std::array<double, 3> chance{};  // of block, growth, none without repair; sums to 1
  bool partial_growth = false;     // Sunderland 3: growth that stays partial
  bool repaired = false;
  double chance_repair_fails = 0.0;  // nothing grows across the repair
  double operation_days = 0.0;       // from the injury, when repaired
  int coaptations = 1;               // 2 with a graft
  double gap_mm = 0.0;               // after resection; the lesion lies in its middle
  // Of a nerve transfer: the mended nerve got axons of a "near donor", a "distant donor" or an
  // "intercostal donor", as recovery_fitted.csv calls them. The first movement is seen later. Empty
  // when the nerve's own axons grow.
  std::string donor;
};

// Something seen in a target on a day.
struct Finding {
  std::size_t target = 0;  // index into ForecastQuestion::targets
  double days = 0.0;
  enum class Kind { movement, units, sensation } kind = Kind::movement;  // sensation: S3
  bool present = false;
};

struct ForecastQuestion {
  const anatomy::NerveTree* tree = nullptr;
  const Parameters* parameters = nullptr;
  // Patient i has limb i, counted round when there are fewer limbs than patients.
  const std::vector<anatomy::NerveMetrics>* limbs = nullptr;
  // The same limbs, where they are at hand by columns; otherwise the forecast makes them.
  const anatomy::LimbColumns* limb_columns = nullptr;
  std::size_t samples = 0;  // patients
  std::vector<TargetBelow> targets;
  std::vector<LesionModel> lesions;
  std::vector<Finding> findings;
  std::optional<double> age_years;
  std::uint64_t seed = 1;
  // Patient i takes rate, grade and delays from the draws of patient drawn_as[i]. Empty: its own.
  std::vector<std::uint32_t> drawn_as{};

  const anatomy::NerveMetrics& limb(std::size_t patient) const {
    return (*limbs)[patient % limbs->size()];
  }
};

struct UsefulChance {
  std::string scale;  // "M3" or "S3"
  double chance = 0.0;
  // The chance in 90 % of published series of such operations; absent without an operation.
  std::optional<double> p05;
  std::optional<double> p95;
};

struct TargetForecast {
  std::size_t target = 0;  // index into ForecastQuestion::targets
  Summary distance_mm;
  double chance_below_lesion = 1.0;  // share of limbs in which the branch leaves beyond the lesion
  std::optional<Summary> axons_arrive_days;
  std::optional<Summary> first_units_days;     // motor
  std::optional<Summary> first_movement_days;  // motor, M1
  std::optional<Summary> useful_days;          // M3 or S3
  double chance_axons_in_time = 0.0;
  // Absent when part of the target's axons were never interrupted: the model says nothing of them.
  std::optional<UsefulChance> chance_useful;
};

struct Forecast {
  std::vector<TargetForecast> targets;  // in order of return
  // Chance of block, growth and none at each lesion given the findings.
  std::vector<std::array<double, 3>> grade_chance;
  std::optional<Summary> block_first_days;  // when a block is possible
  std::optional<Summary> block_useful_days;
  bool findings_used = false;
  bool findings_contradict = false;     // too few sampled patients agree with them; left out
  std::vector<double> weights;          // of the sampled patients, mean 1
  std::vector<std::string> parameters;  // ids of recovery_parameters.csv that were used
};

Forecast forecast(const ForecastQuestion& question);

}  // namespace endplate::recovery
