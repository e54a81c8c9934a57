#include "models/examination/case_check.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "models/casefile/words.hpp"
#include "models/limb/case_limb.hpp"

namespace endplate::examination {

Expected<CaseCheck> check_case(const casefile::Case& patient, const evidence::DataPackage& package,
                               const anatomy::NerveTree& tree) {
  const auto limb = limb::CaseLimb::from(package, tree, patient.limb);
  if (!limb) return std::unexpected(limb.error());

  CaseCheck answer;
  std::vector<Problem> problems;
  Fault fault = Fault::input;
  for (std::size_t i = 0; i < patient.injuries.size(); ++i) {
    const casefile::Injury& injury = patient.injuries[i];
    PlacedInjury& placed = answer.injuries.emplace_back();
    placed.what =
        injury.nerve.empty() ? casefile::plexus_element(*injury.at).value_or("") : injury.nerve;
    placed.mechanism = casefile::to_string(injury.mechanism);
    placed.words = "place not given";
    if (!injury.at) continue;
    auto lesion = limb->place_injury(injury, i);
    if (lesion) {
      placed.words = lesion->words;
      continue;
    }
    fault = lesion.error().fault;
    std::ranges::move(lesion.error().problems, std::back_inserter(problems));
  }
  if (!problems.empty()) return std::unexpected(Error{fault, std::move(problems)});
  answer.assumptions = patient.assumptions;
  answer.warnings = limb->warnings();
  answer.worth_giving = casefile::worth_giving(patient);
  return answer;
}

}  // namespace endplate::examination
