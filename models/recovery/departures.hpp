#pragma once
// Axons leaving a lesion, in such numbers that one formula gives the day on which they reach a
// target, whatever became of them.
//
// With days = ready + slowness * scale (e^((to - behind) / slowing) - 1), where `to` belongs to the
// limb and the rest to the patient, days = start + reach * e^(to / slowing).
#include <map>
#include <span>
#include <vector>

#include "models/recovery/patients.hpp"

namespace endplate::recovery {

// The day on which axons reach a target, with what is no day coded so that the better of two ways
// (a block returns whole axons) is the lesser number.
struct ReachDay {
  static constexpr float kBlocked = -1.0F;
  static constexpr float kNever = 1e30F;     // nothing grows
  static constexpr float kNotBelow = 2e30F;  // the lesion does not touch the way

  // Rounding may put a day on which axons arrive at once a little before 0.
  static constexpr float kEarliest = -0.5F;

  static FourInts below(FourFloats day) { return day < kNotBelow; }
  static FourInts grows(FourFloats day) { return (day >= kEarliest) & (day < kNever); }
  static FourInts blocked(FourFloats day) { return day < kEarliest; }
};

// By patient.
struct Departure {
  struct AtRate {
    FloatColumn start;  // days, or a code of ReachDay
    FloatColumn reach;  // days; 0 where nothing grows
  };
  // Where the way begins: the place of the lesion, for growth across a graft half its gap before.
  std::span<const float> behind_mm;
  FloatColumn behind_gap_mm;                   // what behind_mm refers to where there is a gap
  std::map<const Parameter*, AtRate> at_rate;  // by the row of the rate
};

// Holds references to `patients`. From every lesion, at every rate that the models ask for.
std::vector<Departure> departures(const ForecastQuestion& question, const PatientColumns& patients,
                                  const std::vector<TargetModel>& models);

}  // namespace endplate::recovery
