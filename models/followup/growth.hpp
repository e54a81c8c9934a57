#pragma once
// What serial Tinel points say of one patient's growth. Possible patients are drawn from the
// forecast's distributions and weighed by how well the points fit the front of each.
#include <Eigen/Core>
#include <cstdint>
#include <span>
#include <vector>

#include "models/recovery/forecast.hpp"
#include "models/recovery/growth.hpp"
#include "models/recovery/patients.hpp"

namespace endplate::followup {

// How the axons of one possible patient grow along the nerve that is tapped.
struct Growth {
  recovery::Course::State state = recovery::Course::State::none;
  double ready_days = 0.0;  // from the injury, when they set out
  double rate = 0.0;        // mm a day, mean over the reference distance of Slowing
  double way_mm = 0.0;      // to the end of the skin fibres
  double start_mm = 0.0;    // where they set out, along the nerve from the lesion, <= 0
};

// Of each patient of the question toward its target number `target`.
std::vector<Growth> growth_of(const recovery::ForecastQuestion& question, std::size_t target);

// Points of one nerve in order of time; the n x n covariance holds the observer's own error and
// what all points share, in mm^2.
struct TinelEvidence {
  std::vector<double> days;        // from the injury
  std::vector<double> advance_mm;  // along the nerve from the lesion, beyond it positive
  Eigen::MatrixXd covariance;
};

// Where the tapped front should be on a day, mm from the lesion.
double expected_front_mm(const Growth& growth, double days, const recovery::Slowing& slowing);

struct Likelihoods {
  std::vector<double> relative;   // by patient, the largest is 1; all 0 when none can be
  double least_chi_square = 0.0;  // of the course that fits best
};
// A front of axons that do not grow stays where they were cut; whole axons in a conduction block
// tingle with chance `tinel_in_block` only. Normal errors.
Likelihoods likelihoods(std::span<const Growth> patients, const TinelEvidence& evidence,
                        const recovery::Slowing& slowing, double tinel_in_block);

// `count` indices into `weights` (>= 0, not all 0), each as often as its weight asks: systematic
// resampling (Carpenter J, Clifford P, Fearnhead P, IEE Proc Radar 1999;146:2), with the middle as
// its start so that nothing is left to chance.
std::vector<std::uint32_t> resample(std::span<const double> weights, std::size_t count);

}  // namespace endplate::followup
