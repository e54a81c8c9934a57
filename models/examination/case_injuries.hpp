#pragma once
// From the injuries of a case to injuries on the nerve tree.
#include <optional>
#include <string>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/examination/interruption.hpp"
#include "models/limb/case_limb.hpp"

namespace endplate::examination {

struct CaseInjuries {
  std::vector<TreeInjury> injuries;   // in the order of the case
  std::vector<std::size_t> variants;  // of Anatomy::variants(), those given that bear on supply
  std::vector<std::string> assumptions;
};

// Outside the model: a case without an injury, an injury without a place, and a spinal cord lesion,
// whose muscles are not denervated along the nerve tree. A place that the limb refuses is an error
// of the input.
Expected<CaseInjuries> case_injuries(const casefile::Case& patient, const anatomy::Anatomy& anatomy,
                                     const limb::CaseLimb& limb);

// Latest finding of each muscle and area of the examination and the later observations. What is
// not listed was not examined, which is not the same as normal.
struct Examined {
  std::vector<std::optional<casefile::MrcGrade>> muscles;      // by Anatomy::muscles()
  std::vector<std::optional<casefile::SensoryFinding>> areas;  // by Anatomy::areas()
  bool any = false;
};
Examined examined(const casefile::Case& patient, const anatomy::Anatomy& anatomy);

}  // namespace endplate::examination
