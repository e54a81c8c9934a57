#pragma once
// How a follow-up reads serial findings, from followup_parameters.csv.
#include <string>
#include <vector>

#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::followup {

struct FollowupParameters {
  double tinel_error_mm = 0.0;        // one SD of the observer, of each point by itself
  double tinel_place_error_mm = 0.0;  // one SD, shared by all points of a series
  double tinel_in_block = 0.0;        // chance
  double grade_error = 0.0;           // chance
  double repair_fails = 0.0;          // chance
  double earliest_call_days = 0.0;    // from the injury or the repair
  double fewest_visits = 0.0;
  double shortest_gap_days = 0.0;
  double slow_mm_per_day = 0.0;
  double fast_mm_per_day = 0.0;
  double call_chance = 0.0;
  double call_evidence = 0.0;  // ratio of odds
  double finding_due = 0.0;    // share of growing patients
  double misfit = 0.0;         // chance
  double last_look_days = 0.0;

  std::vector<std::string> assumed;  // in words, those that no source supports, with the reason
  std::vector<std::string> rows;     // of regeneration.csv

  // Fault::internal when the table lacks one of them.
  static Expected<FollowupParameters> from(const evidence::DataPackage& package);
};

}  // namespace endplate::followup
