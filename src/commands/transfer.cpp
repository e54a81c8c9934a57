#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "case_input.hpp"
#include "command.hpp"
#include "models/evidence/data_package.hpp"
#include "models/transfer/transfers.hpp"
#include "output/transfer_json.hpp"
#include "output/transfer_text.hpp"

namespace endplate::cli {
namespace {

using transfer::TransferAnswer;
using transfer::TransferCandidate;

struct TransferChoices {
  std::vector<std::string> compare;  // two ids, or none
  bool unpublished = false;
};

const TransferCandidate* find(const TransferAnswer& answer, const std::string& id) {
  for (const transfer::TransferGroup& group : answer.groups) {
    for (const TransferCandidate& candidate : group.candidates) {
      if (candidate.judged.id == id) return &candidate;
    }
  }
  for (const TransferCandidate& candidate : answer.unpublished) {
    if (candidate.judged.id == id) return &candidate;
  }
  return nullptr;
}

Problem no_candidate(const TransferAnswer& answer, const std::string& id) {
  for (const transfer::Candidate& candidate : answer.rejected) {
    if (candidate.id != id) continue;
    return {"--compare", fmt::format("{} is no candidate here: {}", id, candidate.rejected_because),
            "Compare two that the table shows."};
  }
  return {"--compare", fmt::format("there is no transfer {}", id),
          "Use the ids that the command shows without --compare."};
}

Expected<Answer> run(const CommonOptions& options, const TransferChoices& choices) {
  const auto package = evidence::DataPackage::read(options.datasets);
  if (!package) return std::unexpected(package.error());
  const auto patient = load_case(options, *package);
  if (!patient) return std::unexpected(patient.error());
  auto answer = transfer::transfers(
      *patient, *package, {options.samples, options.seed, options.today, choices.unpublished});
  if (!answer) return std::unexpected(answer.error());
  const Side side = patient->limb.side;
  if (choices.compare.empty()) {
    return Answer{transfer_json(*answer, options, side),
                  transfer_text(*answer, options, side, choices.unpublished)};
  }
  std::vector<Problem> problems;
  std::vector<TransferCandidate> two;
  for (const std::string& id : choices.compare) {
    const TransferCandidate* found = find(*answer, id);
    if (found == nullptr) {
      problems.push_back(no_candidate(*answer, id));
    } else {
      two.push_back(*found);
    }
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::input, std::move(problems)});
  std::string text = compare_text(two[0], two[1], options, side);
  const auto is_other = [&](const TransferCandidate& candidate) {
    return std::ranges::find(choices.compare, candidate.judged.id) == choices.compare.end();
  };
  for (transfer::TransferGroup& group : answer->groups) std::erase_if(group.candidates, is_other);
  std::erase_if(answer->unpublished, is_other);
  return Answer{transfer_json(*answer, options, side), std::move(text)};
}

}  // namespace

void register_transfer(Registry& registry) {
  auto choices = std::make_shared<TransferChoices>();
  CLI::App* command = registry.add_command(
      "transfer", "nerve and tendon transfers: who can give, what reaches, the best set", true,
      [choices](const CommonOptions& options) { return run(options, *choices); });
  command->add_option("--compare", choices->compare, "two candidates side by side, by their ids")
      ->delimiter(',')
      ->expected(2)
      ->type_name("A,B");
  command->add_flag("--unpublished", choices->unpublished,
                    "also list, apart, pairs that meet though nobody published them");
}

}  // namespace endplate::cli
