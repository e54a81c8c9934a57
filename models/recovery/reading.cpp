#include "models/recovery/reading.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::recovery {
namespace {

using casefile::Grade;

constexpr double kEarlyDays = 21.0;

bool concerns(const casefile::Case& patient, const casefile::Injury& injury,
              const casefile::Procedure& procedure) {
  return patient.injuries.size() == 1 || !procedure.nerve || injury.nerve.empty() ||
         *procedure.nerve == injury.nerve;
}

bool is_graft(const std::string& procedure) {
  return procedure.find("graft") != std::string::npos;
}

bool is_suture(const std::string& procedure) {
  return procedure.find("repair") != std::string::npos ||
         procedure.find("suture") != std::string::npos;
}

}  // namespace

OperationOn operation_on(const casefile::Case& patient, const casefile::Injury& injury) {
  OperationOn result;
  for (const casefile::Operation& operation : patient.operations) {
    const bool done = operation.state == casefile::OperationState::done;
    for (const casefile::Procedure& procedure : operation.done) {
      if (!concerns(patient, injury, procedure)) continue;
      const bool graft = is_graft(procedure.procedure);
      const bool reconstructs = graft || is_suture(procedure.procedure);
      if (reconstructs) {
        // What is done comes before what is planned; of two done, the later counts.
        if (result.repaired && !result.planned && !done) continue;
        result.repaired = true;
        result.planned = !done;
        result.graft = graft;
        result.date = operation.date;
        result.gap_mm = operation.gap_after_resection_mm;
      }
      if (!done) continue;
      const bool outranked =
          result.done == OperationDone::repair || result.done == OperationDone::graft;
      if (reconstructs) {
        result.done = graft ? OperationDone::graft : OperationDone::repair;
        result.done_date = operation.date;
      } else if (!outranked) {
        result.done = OperationDone::other;
        result.done_date = operation.date;
      }
    }
  }
  return result;
}

GradeChance grade_chance(const casefile::Injury& injury, const Parameters& parameters) {
  GradeChance result;
  switch (injury.grade) {
    case Grade::neurapraxia:
    case Grade::sunderland_1:
      result.chance = {1.0, 0.0, 0.0};
      return result;
    case Grade::sunderland_3:
      result.partial_growth = true;
      [[fallthrough]];
    case Grade::axonotmesis:
    case Grade::sunderland_2:
      result.chance = {0.0, 1.0, 0.0};
      return result;
    case Grade::neurotmesis:
    case Grade::sunderland_4:
    case Grade::sunderland_5:
      result.chance = {0.0, 0.0, 1.0};
      return result;
    case Grade::unknown:
      break;
  }
  result.mixture = true;
  const auto deficit = injury.complete.has_value() && !*injury.complete ? "partial" : "complete";
  const auto mechanism = mechanism_words(injury.mechanism);
  constexpr std::array<std::string_view, 3> kQuantities{
      "chance of neurapraxia", "chance of axonotmesis", "chance of neurotmesis"};
  double sum = 0.0;
  for (std::size_t k = 0; k < kQuantities.size(); ++k) {
    const Parameter* row = parameters.find_if_any(kQuantities[k], mechanism, "none", deficit);
    if (row == nullptr) row = &parameters.find(kQuantities[k], "unknown", "none", deficit);
    result.chance[k] = row->mean;
    sum += row->mean;
    result.parameters.push_back(row->id);
  }
  for (double& chance : result.chance) chance /= sum;
  return result;
}

std::vector<Finding> findings_of(const casefile::Case& patient,
                                 const std::vector<TargetBelow>& targets,
                                 const casefile::Date& injury_date,
                                 std::vector<std::string>& assumptions) {
  std::vector<Finding> findings;
  // Graded by name, a muscle of several parts stands for each of them: only the nearest would
  // answer first, so the first part that is listed takes the finding.
  const auto find_target = [&](const std::string& muscle) {
    return std::ranges::find_if(targets, [&](const TargetBelow& below) {
      const Target& target = below.target;
      return target.kind == TargetKind::motor && (target.id == muscle || target.name == muscle ||
                                                  target.name.starts_with(muscle + ","));
    });
  };
  const auto add = [&](const std::string& muscle, const std::optional<casefile::Date>& date,
                       Finding::Kind kind, bool present) {
    const auto found = find_target(muscle);
    if (found == targets.end() || found->partial) return;
    if (!date) {
      assumptions.push_back(
          fmt::format("{}: its examination has no date, so it was not used to "
                      "weigh the forecast",
                      muscle));
      return;
    }
    const double days = days_between(injury_date, *date);
    if (days < 0.0) return;
    findings.push_back({static_cast<std::size_t>(found - targets.begin()), days, kind, present});
  };
  const auto examined = [&](const casefile::Examination& examination) {
    for (const casefile::MuscleFinding& muscle : examination.muscles) {
      add(muscle.muscle, examination.date, Finding::Kind::movement, muscle.grade.value >= 1.0);
    }
  };
  if (patient.examination) examined(*patient.examination);
  for (const casefile::Examination& observation : patient.observations) examined(observation);
  for (const casefile::Electrodiagnosis& study : patient.electrodiagnosis) {
    if (!study.muscle || !study.units) continue;
    add(*study.muscle, study.date, Finding::Kind::units, *study.units != "none");
  }
  return findings;
}

RecoverySign recovery_sign(const std::vector<Finding>& findings,
                           const std::vector<TargetBelow>& targets) {
  RecoverySign sign = RecoverySign::unknown;
  for (const Finding& finding : findings) {
    if (targets[finding.target].partial) continue;
    if (finding.present && finding.days > kEarlyDays) return RecoverySign::seen;
    if (!finding.present) sign = RecoverySign::none;
  }
  return sign;
}

bool kept_early(const std::vector<Finding>& findings, const std::vector<TargetBelow>& targets) {
  return std::ranges::any_of(findings, [&](const Finding& finding) {
    return finding.present && finding.days <= kEarlyDays && !targets[finding.target].partial;
  });
}

}  // namespace endplate::recovery
