#pragma once
// The answer to `deficit` for scripts and for people.
#include <string>
#include <vector>

#include "command.hpp"
#include "models/casefile/case.hpp"
#include "models/examination/case_injuries.hpp"
#include "models/examination/deficit.hpp"

namespace endplate::cli {

struct DeficitView {
  const anatomy::Anatomy& anatomy;
  const examination::DeficitAnswer& answer;
  const examination::CaseInjuries& injuries;
  const examination::Examined& examined;
  const std::vector<std::string>& assumptions;
  const std::vector<std::string>& warnings;
  Side side = Side::right;
};

Json deficit_json(const DeficitView& view, const CommonOptions& options);
// At most 100 columns; what is intact stands in one line.
std::string deficit_text(const DeficitView& view);

// "M4-" or "not examined".
std::string examined_words(const std::optional<casefile::MrcGrade>& grade);
// "reduced, S2, 12 mm" or "not examined".
std::string examined_words(const std::optional<casefile::SensoryFinding>& finding);

}  // namespace endplate::cli
