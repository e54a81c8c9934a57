#include "models/transfer/situation.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::transfer {
namespace {

using examination::AreaState;
using examination::MuscleState;

constexpr double kUseful = 3.0;
constexpr double kStrong = 4.0;

}  // namespace

std::string_view to_string(DonorState state) {
  switch (state) {
    case DonorState::strong:
      return "strong";
    case DonorState::weak:
      return "weak";
    case DonorState::dead:
      return "dead";
    case DonorState::not_judged:
      break;
  }
  return "not judged";
}

Expected<Situation> Situation::of(const casefile::Case& patient, const anatomy::Anatomy& anatomy,
                                  const limb::CaseLimb& limb,
                                  const std::vector<anatomy::NerveMetrics>& limbs) {
  auto injuries = examination::case_injuries(patient, anatomy, limb);
  if (!injuries) return std::unexpected(injuries.error());
  Situation now;
  now.patient_ = &patient;
  now.anatomy_ = &anatomy;
  now.injuries_ = injuries->injuries;
  now.lengths_ = limb.metrics();
  const auto spread = examination::branch_spread(limb.metrics(), limbs, anatomy.tree());
  const auto deficit =
      examination::deficit(anatomy, limb.metrics(), spread, injuries->injuries, injuries->variants);
  now.muscles_.resize(anatomy.muscles().size());
  now.areas_.assign(anatomy.areas().size(), AreaState::intact);
  for (const auto& muscle : deficit.muscles) now.muscles_[muscle.muscle] = muscle.state;
  for (const auto& area : deficit.areas) now.areas_[area.area] = area.state;
  now.examined_ = examination::examined(patient, anatomy);
  return now;
}

bool Situation::muscle_recovers_in_part(std::size_t muscle) const {
  if (const auto& grade = examined_.muscles[muscle]) {
    if (grade->value >= 1.0 && grade->value < kUseful) return true;
  }
  const std::string& id = anatomy_->muscles()[muscle].id;
  return muscle_lost(muscle) &&
         std::ranges::any_of(patient_->electrodiagnosis, [&](const auto& study) {
           return study.muscle == id && study.units && study.units != "none";
         });
}

bool Situation::muscle_lost(std::size_t muscle) const {
  const auto& state = muscles_[muscle];
  if (!state || *state == MuscleState::intact) return false;
  if (const auto& grade = examined_.muscles[muscle]) return grade->value < kUseful;
  return *state == MuscleState::denervated;
}

bool Situation::muscle_kept(std::size_t muscle) const {
  const auto& state = muscles_[muscle];
  if (const auto& grade = examined_.muscles[muscle]) return grade->value >= kUseful;
  return state && *state == MuscleState::intact;
}

bool Situation::area_lost(std::size_t area) const {
  if (areas_[area] == AreaState::intact) return false;
  const auto& found = examined_.areas[area];
  if (found && found->state) return *found->state == casefile::SensoryState::absent;
  return areas_[area] == AreaState::absent;
}

bool Situation::area_kept(std::size_t area) const {
  const auto& found = examined_.areas[area];
  if (found && found->state) return *found->state == casefile::SensoryState::normal;
  return areas_[area] == AreaState::intact;
}

DonorState Situation::donor(std::size_t muscle, std::string& why) const {
  const std::string name = muscle_name(muscle);
  if (!muscles_[muscle]) {
    why = fmt::format("{} is absent", name);
    return DonorState::dead;
  }
  if (const auto& grade = examined_.muscles[muscle]) {
    why = fmt::format("{} examined M{}", name, grade->text);
    if (grade->value >= kStrong) return DonorState::strong;
    return grade->value < 1.0 ? DonorState::dead : DonorState::weak;
  }
  if (*muscles_[muscle] == MuscleState::denervated) {
    why = fmt::format("this injury paralyses {}", name);
    return DonorState::dead;
  }
  why = fmt::format("{} was not examined", name);
  return DonorState::not_judged;
}

DonorState Situation::donor_area(std::size_t area, std::string& why) const {
  const std::string& name = anatomy_->areas()[area].name;
  const auto& found = examined_.areas[area];
  if (found && found->state) {
    const bool normal = *found->state == casefile::SensoryState::normal;
    why = fmt::format("{} examined: {}", name, normal ? "normal" : "not normal");
    return normal ? DonorState::strong : DonorState::weak;
  }
  if (areas_[area] == AreaState::absent) {
    why = fmt::format("this injury numbs the {}", name);
    return DonorState::dead;
  }
  why = fmt::format("{} was not examined", name);
  return DonorState::not_judged;
}

DonorState Situation::donor_by_emg(std::size_t muscle, std::string& why) const {
  const DonorState by_injury = donor(muscle, why);
  if (by_injury == DonorState::dead) return by_injury;
  const std::string& id = anatomy_->muscles()[muscle].id;
  DonorState state = DonorState::not_judged;
  why = fmt::format("{} was not shown to work by EMG or stimulation", muscle_name(muscle));
  for (const casefile::Electrodiagnosis& study : patient_->electrodiagnosis) {
    if (study.muscle != id) continue;
    const bool works = study.units == "normal" || study.stimulation == "contracts";
    if (!works && !study.units && !study.stimulation) continue;
    why = fmt::format("{}: {}", muscle_name(muscle),
                      works ? "works on EMG or stimulation" : "not normal on EMG or stimulation");
    state = works ? DonorState::strong : DonorState::weak;
  }
  return state;
}

std::string Situation::doubt_by_emg(std::size_t muscle) const {
  const std::string& id = anatomy_->muscles()[muscle].id;
  for (const casefile::Electrodiagnosis& study : patient_->electrodiagnosis) {
    if (study.muscle != id) continue;
    if (study.fibrillation.value_or(false)) {
      return fmt::format("{} fibrillates on EMG", muscle_name(muscle));
    }
    if (study.units && study.units != "normal") {
      return fmt::format("{} has {} units on EMG", muscle_name(muscle), *study.units);
    }
    if (study.stimulation == "silent") {
      return fmt::format("{} did not answer to stimulation", muscle_name(muscle));
    }
  }
  return "";
}

bool Situation::sign_present(std::string_view sign) const {
  if (!patient_->examination) return false;
  return std::ranges::any_of(patient_->examination->signs, [&](const casefile::SignFinding& found) {
    return found.present && found.sign == sign;
  });
}

bool Situation::unavailable(std::string_view name) const {
  return std::ranges::find(patient_->unavailable, name) != patient_->unavailable.end();
}

std::vector<std::size_t> Situation::muscles_below(anatomy::NodeIndex node) const {
  const auto below = anatomy_->tree().descendants(node);
  std::vector<std::size_t> muscles;
  for (std::size_t m = 0; m < anatomy_->muscles().size(); ++m) {
    // A branch with several parents hangs on its usual one.
    const anatomy::NodeIndex branch = anatomy_->muscles()[m].branch;
    if (branch == node) {
      muscles.push_back(m);
      continue;
    }
    const auto& parents = anatomy_->tree().node(branch).parents;
    if (!parents.empty() && std::ranges::find(below, parents.front()) != below.end()) {
      muscles.push_back(m);
    }
  }
  return muscles;
}

std::vector<std::size_t> Situation::areas_below(anatomy::NodeIndex node) const {
  const auto below = anatomy_->tree().descendants(node);
  std::vector<std::size_t> areas;
  for (std::size_t a = 0; a < anatomy_->areas().size(); ++a) {
    if (std::ranges::all_of(anatomy_->areas()[a].branches, [&](anatomy::NodeIndex branch) {
          return std::ranges::find(below, branch) != below.end();
        })) {
      areas.push_back(a);
    }
  }
  return areas;
}

std::optional<double> Situation::branch_leaves_mm(anatomy::NodeIndex nerve,
                                                  std::size_t muscle) const {
  for (anatomy::NodeIndex at = anatomy_->muscles()[muscle].branch;;) {
    const auto& parents = anatomy_->tree().node(at).parents;
    if (parents.empty()) return std::nullopt;
    if (parents.front() == nerve) return lengths_.leaves_parent_at_mm[at].front();
    at = parents.front();
  }
}

bool Situation::injured_at_or_below(anatomy::NodeIndex node) const {
  const auto below = anatomy_->tree().descendants(node);
  return std::ranges::any_of(injuries_, [&](const examination::TreeInjury& injury) {
    return std::ranges::find(below, injury.lesion.at.nerve) != below.end();
  });
}

std::string Situation::muscle_name(std::size_t muscle) const {
  const anatomy::Muscle& row = anatomy_->muscles()[muscle];
  return row.part == "whole" ? row.name : fmt::format("{} ({})", row.name, row.part);
}

}  // namespace endplate::transfer
