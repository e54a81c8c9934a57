#pragma once
// The question of the deficit command: what the injuries of a case paralyse and numb, beside what
// was examined.
#include <cstdint>
#include <string>
#include <vector>

#include "models/anatomy/anatomy.hpp"
#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"
#include "models/examination/case_injuries.hpp"
#include "models/examination/deficit.hpp"

namespace endplate::examination {

struct CaseDeficit {
  DeficitAnswer answer;
  CaseInjuries injuries;
  Examined examined;
  std::vector<std::string> assumptions;  // of the file, the limb, the injuries and the answer
  std::vector<std::string> warnings;
  Side side = Side::right;
};

// The spread of branch points needs no more limbs than this.
inline constexpr int kMostDeficitLimbs = 400;

// `samples` >= 2, of which kMostDeficitLimbs at most are taken. Errors are those of CaseLimb::from
// and case_injuries.
Expected<CaseDeficit> deficit_of_case(const casefile::Case& patient,
                                      const evidence::DataPackage& package,
                                      const anatomy::Anatomy& anatomy, int samples,
                                      std::uint64_t seed);

}  // namespace endplate::examination
