#include <algorithm>

#include "case_input.hpp"
#include "command.hpp"
#include "models/evidence/data_package.hpp"
#include "models/examination/case_injuries.hpp"
#include "models/examination/deficit.hpp"
#include "models/limb/case_limb.hpp"
#include "output/deficit_views.hpp"

namespace endplate::cli {
namespace {

// The spread of branch points needs no more limbs than this.
constexpr int kMostLimbs = 400;

Expected<Answer> run(const CommonOptions& options) {
  if (options.case_path.empty()) {
    return std::unexpected(
        Error::input({"arguments", "deficit needs a case",
                      "Name a case file with an injury, or - for standard input"}));
  }
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto anatomy = anatomy::Anatomy::from(*package);
  if (!anatomy) return std::unexpected(anatomy.error());
  const auto patient = load_case(options, *package);
  if (!patient) return std::unexpected(patient.error());
  const auto limb = limb::CaseLimb::from(*package, anatomy->tree(), patient->limb);
  if (!limb) return std::unexpected(limb.error());
  const auto injuries = examination::case_injuries(*patient, *anatomy, *limb);
  if (!injuries) return std::unexpected(injuries.error());

  const auto limbs = limb->sample(std::min(options.samples, kMostLimbs), options.seed);
  const auto spread = examination::branch_spread(limb->metrics(), limbs, anatomy->tree());
  const auto answer = examination::deficit(*anatomy, limb->metrics(), spread, injuries->injuries,
                                           injuries->variants);

  std::vector<std::string> assumptions = patient->assumptions;
  for (const auto* more : {&limb->assumptions(), &injuries->assumptions, &answer.assumptions}) {
    assumptions.insert(assumptions.end(), more->begin(), more->end());
  }
  const auto findings = examination::examined(*patient, *anatomy);
  const DeficitView view{*anatomy,    answer,           *injuries,         findings,
                         assumptions, limb->warnings(), patient->limb.side};
  return Answer{deficit_json(view, options), deficit_text(view)};
}

}  // namespace

void register_deficit(Registry& registry) {
  registry.add_command("deficit", "what does this lesion paralyse and numb, and what does it spare",
                       true, run);
}

}  // namespace endplate::cli
