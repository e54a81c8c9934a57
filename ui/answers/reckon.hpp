#pragma once
// From a case to each answer: calls of the model functions and nothing else. Safe on any thread.
#include <memory>

#include "ui/answers/answers.hpp"

namespace endplate::ui {

struct CaseTables;

struct Inputs {
  std::shared_ptr<const CaseTables> tables;
  std::shared_ptr<const casefile::Case> patient;
  Asked asked;
  IncisionRequest incision;
  EvidenceRequest evidence;
};

template <class T>
using Reckoned = Expected<std::shared_ptr<const T>>;

Reckoned<examination::CaseCheck> reckon_check(const Inputs& inputs);
Reckoned<examination::CaseDeficit> reckon_deficit(const Inputs& inputs);
Reckoned<RecoveryView> reckon_recovery(const Inputs& inputs);
Reckoned<FollowupView> reckon_followup(const Inputs& inputs);
Reckoned<plan::PlanAnswer> reckon_plan(const Inputs& inputs);
Reckoned<transfer::TransferAnswer> reckon_transfer(const Inputs& inputs);
Reckoned<incision::IncisionAnswer> reckon_incision(const Inputs& inputs);
Reckoned<limb::LimbAnswer> reckon_limb(const Inputs& inputs);
Reckoned<evidence::EvidenceAnswer> reckon_evidence(const Inputs& inputs);

}  // namespace endplate::ui
