#include "models/plan/plan.hpp"

#include "case_input.hpp"
#include "command.hpp"
#include "models/evidence/data_package.hpp"
#include "output/plan_json.hpp"
#include "output/plan_text.hpp"

namespace endplate::cli {
namespace {

Expected<Answer> run(const CommonOptions& options) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto patient = load_case(options, *package);
  if (!patient) return std::unexpected(patient.error());
  const auto answer =
      plan::plan(*patient, *package, {options.samples, options.seed, options.today});
  if (!answer) return std::unexpected(answer.error());
  const Side side = patient->limb.side;
  return Answer{plan_json(*answer, options, side), plan_text(*answer, options, side)};
}

}  // namespace

void register_plan(Registry& registry) {
  registry.add_command("plan", "the options side by side: what each needs, brings and costs", true,
                       run);
}

}  // namespace endplate::cli
