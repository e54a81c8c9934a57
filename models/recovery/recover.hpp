#pragma once
// The question of the recovery command: what to decide next and by when; when, and with what
// chance, each muscle and skin area below the lesions is reinnervated.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/decision.hpp"
#include "models/recovery/forecast.hpp"
#include "models/recovery/timing.hpp"
#include "models/recovery/tinel.hpp"

namespace endplate::recovery {

struct RecoveryTarget {
  std::string id;
  std::string name;
  TargetKind kind = TargetKind::motor;
  std::string nerve;
  bool partial = false;
  bool autonomous_zone = false;
  TargetForecast forecast;
};

struct RecoveryLesion {
  std::string nerve;
  std::string place;  // in words
  std::string mechanism;
  std::string grade;
  std::array<double, 3> grade_chance{};  // neurapraxia, axonotmesis, no growth; given the findings
  bool repaired = false;
  bool preganglionic = false;
  std::string operation;  // "without repair", "with the planned graft", "after the repair"
};

struct RecoveryAnswer {
  Decision decision;
  std::vector<DecisionFacts> facts;  // by injury: what the decision was made on
  std::vector<RecoveryLesion> lesions;
  std::string no_forecast;              // why there are no targets; empty when there is a forecast
  std::vector<RecoveryTarget> targets;  // in order of return
  std::optional<Summary> block_first_days;
  std::optional<Summary> block_useful_days;
  bool findings_used = false;
  std::optional<OperationTiming> timing;
  std::string no_timing;  // why there is no curve
  TinelSchedule tinel;
  std::optional<casefile::Date> injury_date;
  std::vector<std::string> assumptions;         // what was not given, in words
  std::vector<std::string> warnings;            // where the limb lies outside what was published
  std::vector<std::string> assumed_parameters;  // figures that no source supports, with reasons
  std::vector<std::string> sources;
};

struct RecoveryOptions {
  int samples = 2000;
  std::uint64_t seed = 1;
  casefile::Date today{};
};

// Fault::outside_model when the case holds no injury; what the limb refuses is passed on.
Expected<RecoveryAnswer> recover(const casefile::Case& patient,
                                 const evidence::DataPackage& package,
                                 const anatomy::NerveTree& tree, const RecoveryOptions& options);

}  // namespace endplate::recovery
