#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/anatomy.hpp"
#include "models/evidence/data_package.hpp"
#include "models/examination/case_deficit.hpp"
#include "output/deficit_views.hpp"

namespace endplate::cli {
namespace {

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
  const auto of_case =
      examination::deficit_of_case(*patient, *package, *anatomy, options.samples, options.seed);
  if (!of_case) return std::unexpected(of_case.error());
  const DeficitView view{*anatomy,          of_case->answer,      of_case->injuries,
                         of_case->examined, of_case->assumptions, of_case->warnings,
                         of_case->side};
  return Answer{deficit_json(view, options), deficit_text(view)};
}

}  // namespace

void register_deficit(Registry& registry) {
  registry.add_command("deficit", "what does this lesion paralyse and numb, and what does it spare",
                       true, run);
}

}  // namespace endplate::cli
