#include "models/followup/sensation.hpp"

#include <algorithm>

#include "models/recovery/decision.hpp"

namespace endplate::followup {
namespace {

using casefile::SensoryState;

// S3 or better, or clearly less; nothing where the finding does not say.
std::optional<bool> useful(const casefile::SensoryFinding& finding) {
  if (finding.s_grade) {
    const std::string& grade = *finding.s_grade;
    return grade.starts_with("S3") || grade == "S4";
  }
  if (finding.state == SensoryState::normal) return true;
  if (finding.state == SensoryState::absent) return false;
  return std::nullopt;
}

}  // namespace

std::vector<recovery::Finding> sensation_findings(
    const casefile::Case& patient, casefile::Date day_zero,
    const std::vector<recovery::TargetBelow>& targets) {
  std::vector<recovery::Finding> findings;
  const auto add = [&](const casefile::Examination& examination) {
    if (!examination.date) return;
    const double days = recovery::days_between(day_zero, *examination.date);
    for (const casefile::SensoryFinding& finding : examination.sensation) {
      const auto found = std::ranges::find_if(targets, [&](const recovery::TargetBelow& below) {
        return below.target.kind == recovery::TargetKind::sensory &&
               below.target.id == finding.area;
      });
      const auto present = useful(finding);
      if (found == targets.end() || found->partial || !found->target.autonomous_zone || !present) {
        continue;
      }
      findings.push_back({static_cast<std::size_t>(found - targets.begin()), days,
                          recovery::Finding::Kind::sensation, *present});
    }
  };
  if (patient.examination) add(*patient.examination);
  for (const casefile::Examination& observation : patient.observations) add(observation);
  return findings;
}

}  // namespace endplate::followup
