#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/recover.hpp"
#include "output/recovery_json.hpp"
#include "output/recovery_text.hpp"

namespace endplate::cli {
namespace {

Expected<Answer> run(const CommonOptions& options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  const auto patient = load_case(options, *package);
  if (!patient) return std::unexpected(patient.error());
  const auto answer =
      recovery::recover(*patient, *package, *tree, {options.samples, options.seed, options.today});
  if (!answer) return std::unexpected(answer.error());
  const Side side = patient->limb.side;
  return Answer{recovery_json(*answer, options, side), recovery_text(*answer, options, side)};
}

}  // namespace

void register_recovery(Registry& registry) {
  registry.add_command("recovery",
                       "what to decide next and by when; when each muscle and area may return",
                       true, run);
}

}  // namespace endplate::cli
