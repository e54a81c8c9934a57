#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"
#include "models/followup/follow_up.hpp"
#include "output/followup_json.hpp"
#include "output/followup_text.hpp"

namespace endplate::cli {
namespace {

Expected<Answer> run(const CommonOptions& options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  const auto patient = load_case(options, *package);
  if (!patient) return std::unexpected(patient.error());
  recovery::RecoveryOptions asked;
  asked.samples = options.samples;
  asked.seed = options.seed;
  asked.today = options.today;
  const auto answer = followup::follow_up(*patient, *package, *tree, asked);
  if (!answer) return std::unexpected(answer.error());
  const Side side = patient->limb.side;
  return Answer{followup_json(*answer, options, side), followup_text(*answer, options, side)};
}

}  // namespace

void register_followup(Registry& registry) {
  registry.add_command("followup",
                       "is the nerve on course by what was seen since, and what to decide now",
                       true, run);
}

}  // namespace endplate::cli
