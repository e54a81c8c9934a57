#include "models/examination/case_deficit.hpp"

#include <algorithm>
#include <utility>

#include "models/limb/case_limb.hpp"

namespace endplate::examination {

Expected<CaseDeficit> deficit_of_case(const casefile::Case& patient,
                                      const evidence::DataPackage& package,
                                      const anatomy::Anatomy& anatomy, int samples,
                                      std::uint64_t seed) {
  const auto limb = limb::CaseLimb::from(package, anatomy.tree(), patient.limb);
  if (!limb) return std::unexpected(limb.error());
  auto injuries = case_injuries(patient, anatomy, *limb);
  if (!injuries) return std::unexpected(injuries.error());

  const auto limbs = limb->sample(std::min(samples, kMostDeficitLimbs), seed);
  const auto spread = branch_spread(limb->metrics(), limbs, anatomy.tree());
  CaseDeficit of_case;
  of_case.answer =
      deficit(anatomy, limb->metrics(), spread, injuries->injuries, injuries->variants);
  of_case.assumptions = patient.assumptions;
  for (const std::vector<std::string>* more :
       {&limb->assumptions(), &std::as_const(injuries->assumptions),
        &std::as_const(of_case.answer.assumptions)}) {
    of_case.assumptions.insert(of_case.assumptions.end(), more->begin(), more->end());
  }
  of_case.injuries = std::move(*injuries);
  of_case.examined = examined(patient, anatomy);
  of_case.warnings = limb->warnings();
  of_case.side = patient.limb.side;
  return of_case;
}

}  // namespace endplate::examination
