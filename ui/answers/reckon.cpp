#include "ui/answers/reckon.hpp"

#include <utility>

#include "models/casefile/words.hpp"
#include "models/evidence/evidence_answer.hpp"
#include "models/examination/case_check.hpp"
#include "models/examination/case_deficit.hpp"
#include "models/followup/follow_up.hpp"
#include "models/incision/approach_plans.hpp"
#include "models/incision/incision.hpp"
#include "models/incision/mark_text.hpp"
#include "models/limb/limb_answer.hpp"
#include "models/plan/plan.hpp"
#include "models/recovery/recover.hpp"
#include "models/schedule/schedule.hpp"
#include "models/transfer/transfers.hpp"
#include "ui/document/case_tables.hpp"

namespace endplate::ui {
namespace {

template <class T>
Reckoned<T> held(Expected<T> answer) {
  if (!answer) return std::unexpected(std::move(answer.error()));
  return std::make_shared<const T>(std::move(*answer));
}

recovery::RecoveryOptions options_of(const Asked& asked) {
  recovery::RecoveryOptions options;
  options.samples = asked.samples;
  options.seed = asked.seed;
  options.today = asked.today;
  return options;
}

Expected<incision::PlannedCut> own_cut(const Inputs& inputs, std::vector<std::string>& readings) {
  incision::PlannedCut cut;
  for (const auto& kind : casefile::kCutKinds) {
    if (kind.text == inputs.incision.kind) cut.kind = kind.value;
  }
  auto marks = incision::marks_from(inputs.incision.marks, "marks", inputs.tables->terms, readings);
  if (!marks) return std::unexpected(marks.error());
  cut.marks = std::move(*marks);
  return cut;
}

incision::PlannedCut drawn_cut(const IncisionRequest& request) {
  incision::PlannedCut cut;
  cut.label = "drawn on the limb";
  for (const auto& [x, y, z] : request.picked_mm) {
    incision::AtSkin mark;
    mark.picked_mm = Eigen::Vector3d(x, y, z);
    cut.marks.push_back(mark);
  }
  return cut;
}

Expected<incision::PlannedCut> cut_of(const Inputs& inputs, casefile::Case& patient,
                                      std::vector<std::string>& readings) {
  const IncisionRequest& request = inputs.incision;
  if (!request.picked_mm.empty()) return drawn_cut(request);
  if (!request.marks.empty()) return own_cut(inputs, readings);
  if (!request.approach.empty()) {
    return incision::lay_approach(inputs.tables->package, request.approach, "approach",
                                  patient.limb, readings);
  }
  if (request.of_case < patient.incisions.size()) {
    return incision::planned(patient.incisions[request.of_case]);
  }
  return std::unexpected(Error::input(
      {"incision", "no cut was chosen", "Choose an approach, or write the marks of a cut."}));
}

}  // namespace

Reckoned<examination::CaseCheck> reckon_check(const Inputs& inputs) {
  return held(examination::check_case(*inputs.patient, inputs.tables->package,
                                      inputs.tables->anatomy.tree()));
}

Reckoned<examination::CaseDeficit> reckon_deficit(const Inputs& inputs) {
  return held(examination::deficit_of_case(*inputs.patient, inputs.tables->package,
                                           inputs.tables->anatomy, inputs.asked.samples,
                                           inputs.asked.seed));
}

Reckoned<RecoveryView> reckon_recovery(const Inputs& inputs) {
  auto answer = held(recovery::recover(*inputs.patient, inputs.tables->package,
                                       inputs.tables->anatomy.tree(), options_of(inputs.asked)));
  if (!answer) return std::unexpected(answer.error());
  auto schedule = std::make_shared<const schedule::Schedule>(
      schedule::schedule_of(**answer, inputs.tables->package, inputs.asked.today));
  return std::make_shared<const RecoveryView>(
      RecoveryView{std::move(*answer), std::move(schedule)});
}

Reckoned<FollowupView> reckon_followup(const Inputs& inputs) {
  auto answer = held(followup::follow_up(*inputs.patient, inputs.tables->package,
                                         inputs.tables->anatomy.tree(), options_of(inputs.asked)));
  if (!answer) return std::unexpected(answer.error());
  auto schedule = std::make_shared<const schedule::Schedule>(
      schedule::schedule_of((*answer)->recovery, inputs.tables->package, inputs.asked.today));
  return std::make_shared<const FollowupView>(
      FollowupView{std::move(*answer), std::move(schedule)});
}

Reckoned<plan::PlanAnswer> reckon_plan(const Inputs& inputs) {
  return held(plan::plan(*inputs.patient, inputs.tables->package, options_of(inputs.asked)));
}

Reckoned<transfer::TransferAnswer> reckon_transfer(const Inputs& inputs) {
  return held(transfer::transfers(
      *inputs.patient, inputs.tables->package,
      {inputs.asked.samples, inputs.asked.seed, inputs.asked.today, inputs.asked.unpublished}));
}

Reckoned<incision::IncisionAnswer> reckon_incision(const Inputs& inputs) {
  casefile::Case patient = *inputs.patient;
  std::vector<std::string> readings = patient.assumptions;
  auto cut = cut_of(inputs, patient, readings);
  if (!cut) return std::unexpected(cut.error());
  if (inputs.incision.depth_mm) cut->depth_mm = inputs.incision.depth_mm;
  incision::IncisionOptions options;
  options.samples = inputs.asked.samples;
  options.seed = inputs.asked.seed;
  if (inputs.incision.marks.empty() && inputs.incision.picked_mm.empty())
    options.approach = inputs.incision.approach;
  // Nothing but a line has a corridor.
  if (inputs.incision.corridor_mm && cut->kind == casefile::CutKind::line) {
    options.corridor.emplace();
    options.corridor->half_width_mm = *inputs.incision.corridor_mm;
    options.corridor->within_mm = inputs.incision.corridor_within_mm;
  }
  auto answer = incision::answer_incision(patient, *cut, inputs.tables->package, options);
  if (!answer) return std::unexpected(answer.error());
  answer->assumptions.insert(answer->assumptions.begin(), readings.begin(), readings.end());
  // Not by held(): g++ 12 then takes the error of an answer that is there for one that is not set.
  return std::make_shared<const incision::IncisionAnswer>(std::move(*answer));
}

Reckoned<limb::LimbAnswer> reckon_limb(const Inputs& inputs) {
  return held(limb::answer_limb(inputs.tables->package, inputs.tables->anatomy.tree(),
                                inputs.patient->limb, inputs.patient->operations,
                                inputs.asked.samples, inputs.asked.seed));
}

Reckoned<evidence::EvidenceAnswer> reckon_evidence(const Inputs& inputs) {
  evidence::EvidenceQuery query;
  query.words = inputs.evidence.words;
  query.table = inputs.evidence.table;
  query.id = inputs.evidence.id;
  return held(evidence::answer_evidence(inputs.tables->package, query));
}

}  // namespace endplate::ui
