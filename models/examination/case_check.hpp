#pragma once
// Whether the injuries of a case that was read lie on its limb, and in what words.
#include <string>
#include <vector>

#include "models/anatomy/nerve_tree.hpp"
#include "models/casefile/case.hpp"
#include "models/casefile/remarks.hpp"
#include "models/core/error.hpp"
#include "models/evidence/data_package.hpp"

namespace endplate::examination {

struct PlacedInjury {
  std::string what;   // the nerve, root, trunk or cord
  std::string words;  // where, or that it is not known
  std::string mechanism;
};

struct CaseCheck {
  std::vector<PlacedInjury> injuries;  // in the order of the case
  std::vector<casefile::Remark> worth_giving;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;
};

// Every injury that names a place must lie on this limb; all that do not are reported.
Expected<CaseCheck> check_case(const casefile::Case& patient, const evidence::DataPackage& package,
                               const anatomy::NerveTree& tree);

}  // namespace endplate::examination
