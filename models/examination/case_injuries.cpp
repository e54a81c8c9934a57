#include "models/examination/case_injuries.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace endplate::examination {
namespace {

using casefile::Grade;
using casefile::Injury;
using casefile::Mechanism;

// What the case says of how much of the nerve is hurt; nothing where it does not say.
std::optional<Extent> extent_given(const Injury& injury) {
  if (injury.grade == Grade::neurapraxia || injury.grade == Grade::sunderland_1) {
    return Extent::conduction_block;
  }
  if (injury.complete) return *injury.complete ? Extent::complete : Extent::partial;
  if (injury.grade == Grade::neurotmesis || injury.grade == Grade::sunderland_5) {
    return Extent::complete;
  }
  return std::nullopt;
}

}  // namespace

Expected<CaseInjuries> case_injuries(const casefile::Case& patient, const anatomy::Anatomy& anatomy,
                                     const limb::CaseLimb& limb) {
  if (patient.injuries.empty()) {
    return std::unexpected(Error::outside_model(
        {"/injuries", "no injury is given, so there is no deficit to tell",
         "Name the injured nerve and where along it; a plexus injury is several injuries."}));
  }
  CaseInjuries result;
  for (std::size_t i = 0; i < patient.injuries.size(); ++i) {
    const Injury& injury = patient.injuries[i];
    const std::string pointer = fmt::format("/injuries/{}", i);
    if (injury.mechanism == Mechanism::spinal_cord) {
      return std::unexpected(Error::outside_model(
          {pointer + "/mechanism",
           "a spinal cord lesion paralyses by segments of the cord and denervates only at its own "
           "level; the nerve tree cannot tell its deficit",
           "Use the segmental examination of the cord. Which muscles still answer to stimulation "
           "is "
           "the finding that decides."}));
    }
    if (!injury.at) {
      return std::unexpected(
          Error::outside_model({pointer + "/at",
                                fmt::format("where the {} is injured is not given",
                                            injury.nerve.empty() ? "plexus" : injury.nerve),
                                "Give the place: a landmark and an offset, a root, a trunk, a cord "
                                "or a branch. The most "
                                "proximal muscle that is weak tells it."}));
    }
    auto lesion = limb.place_injury(injury, i);
    if (!lesion) return std::unexpected(std::move(lesion.error()));
    const auto extent = extent_given(injury);
    const std::string& nerve = anatomy.tree().node(lesion->at.nerve).name;
    if (!extent) {
      result.assumptions.push_back(fmt::format(
          "{}: how much of it is hurt is not known; shown as if all of it were", nerve));
    }
    if (injury.mechanism == Mechanism::inflammatory) {
      result.assumptions.push_back(
          fmt::format("{}: an inflammatory palsy often strikes several nerves or single fascicles; "
                      "only the place "
                      "given is shown",
                      nerve));
    }
    result.injuries.push_back({std::move(*lesion), extent.value_or(Extent::complete)});
  }
  for (const std::string& name : patient.variants) {
    if (const auto variant = anatomy.find_variant(name)) {
      if (std::ranges::count(result.variants, *variant) == 0) result.variants.push_back(*variant);
    } else {
      result.assumptions.push_back(fmt::format(
          "{}: taken to change no nerve supply, as no row of the tables says how", name));
    }
  }
  return result;
}

Examined examined(const casefile::Case& patient, const anatomy::Anatomy& anatomy) {
  Examined result;
  result.muscles.resize(anatomy.muscles().size());
  result.areas.resize(anatomy.areas().size());
  const auto take = [&](const casefile::Examination& examination) {
    for (const casefile::MuscleFinding& finding : examination.muscles) {
      const auto muscle = anatomy.find_muscle(finding.muscle);
      if (!muscle) continue;
      result.muscles[*muscle] = finding.grade;
      result.any = true;
    }
    for (const casefile::SensoryFinding& finding : examination.sensation) {
      const auto area = anatomy.find_area(finding.area);
      if (!area) continue;
      result.areas[*area] = finding;
      result.any = true;
    }
  };
  if (patient.examination) take(*patient.examination);
  std::vector<casefile::Examination> later = patient.observations;
  std::ranges::stable_sort(later, {}, [](const casefile::Examination& e) {
    return e.date ? std::chrono::sys_days(*e.date) : std::chrono::sys_days::min();
  });
  for (const casefile::Examination& observation : later) take(observation);
  return result;
}

}  // namespace endplate::examination
