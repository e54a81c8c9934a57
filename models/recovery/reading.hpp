#pragma once
// What a case file says, put as the facts and lesions that decision and forecast work on.
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/recovery/decision.hpp"
#include "models/recovery/forecast.hpp"

namespace endplate::recovery {

// The operation on an injured nerve that decides how its axons grow.
struct OperationOn {
  OperationDone done = OperationDone::none;  // of operations that are done
  std::optional<casefile::Date> done_date;
  bool repaired = false;  // a repair or graft, done or planned
  bool planned = false;
  bool graft = false;
  std::optional<casefile::Date> date;  // of the repair or graft
  std::optional<double> gap_mm;
};
OperationOn operation_on(const casefile::Case& patient, const casefile::Injury& injury);

// Chance of block, growth and none from the grade, or from the mechanism where it is not known.
struct GradeChance {
  std::array<double, 3> chance{};
  bool partial_growth = false;
  bool mixture = false;
  std::vector<std::string> parameters;
};
GradeChance grade_chance(const casefile::Injury& injury, const Parameters& parameters);

// Examined muscles and EMG of the targets, in days from the injury; what is not dated is left out
// and said in `assumptions`. Muscles that are not listed are not examined and give no finding.
std::vector<Finding> findings_of(const casefile::Case& patient,
                                 const std::vector<TargetBelow>& targets,
                                 const casefile::Date& injury_date,
                                 std::vector<std::string>& assumptions);

// A sign of recovery in what hangs below, seen later than three weeks after the injury; movement
// kept before that shows that the deficit is partial.
RecoverySign recovery_sign(const std::vector<Finding>& findings,
                           const std::vector<TargetBelow>& targets);
bool kept_early(const std::vector<Finding>& findings, const std::vector<TargetBelow>& targets);

}  // namespace endplate::recovery
