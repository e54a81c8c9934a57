#pragma once
// Patients made up by the tests themselves, with a known truth: their own draws and their own law
// of growth, stepped day by day. Nothing of models/followup is used to make them.
#include <cmath>
#include <random>
#include <vector>

#include "tests/models/recovery/fixture.hpp"

namespace followup_tests {

struct World {
  double rate_mean = 0.0;  // mm a day, lognormal
  double rate_sd = 0.0;
  double delay_mean = 0.0;  // days, a normal number for each coaptation
  double delay_sd = 0.0;
  int delays = 1;
  double operated_days = 0.0;
  double place_error_mm = 10.0;
  double observer_error_mm = 10.0;
  double way_mm = 400.0;
};

struct TruePatient {
  double rate = 0.0;
  double ready_days = 0.0;
  bool grows = true;
};

inline TruePatient draw_patient(const World& world, bool grows, std::mt19937_64& random) {
  std::normal_distribution<double> normal;
  const double log_sd = std::sqrt(std::log(1.0 + std::pow(world.rate_sd / world.rate_mean, 2.0)));
  TruePatient patient;
  patient.rate = world.rate_mean * std::exp(log_sd * normal(random) - 0.5 * log_sd * log_sd);
  patient.ready_days = world.operated_days;
  for (int k = 0; k < world.delays; ++k) {
    patient.ready_days += std::max(0.0, world.delay_mean + world.delay_sd * normal(random));
  }
  patient.grows = grows;
  return patient;
}

// The local rate falls as exp(-x/750 mm), from such a start that 150 mm take 150/rate days.
inline double true_front_mm(const World& world, const TruePatient& patient, double days) {
  if (!patient.grows) return 0.0;
  const double start_rate = patient.rate * 750.0 * (std::exp(150.0 / 750.0) - 1.0) / 150.0;
  double x = 0.0;
  constexpr double kStep = 0.25;
  for (double day = patient.ready_days; day + kStep <= days; day += kStep) {
    x += kStep * start_rate * std::exp(-x / 750.0);
  }
  return std::min(x, world.way_mm);
}

// Where the observer marks the sign at each visit, mm from the place taken for the lesion.
inline std::vector<double> observed_mm(const World& world, const TruePatient& patient,
                                       const std::vector<double>& visits, std::mt19937_64& random) {
  std::normal_distribution<double> normal;
  const double shift = world.place_error_mm * normal(random);
  std::vector<double> seen;
  for (const double day : visits) {
    seen.push_back(true_front_mm(world, patient, day) + shift +
                   world.observer_error_mm * normal(random));
  }
  return seen;
}

}  // namespace followup_tests
