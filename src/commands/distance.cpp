#include "models/limb/distance.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/terms.hpp"
#include "output/distance_views.hpp"
#include "output/envelope.hpp"

namespace endplate::cli {
namespace {

struct Options {
  std::string nerve;
  std::string point;
  std::string from;
  bool over_skin = false;
};

// The standard name of what was typed; a slip that was read is added to `assumptions`.
Expected<std::string> standard_name(const anatomy::Terms& terms, anatomy::TermKind kind,
                                    const std::string& option, const std::string& typed,
                                    std::vector<std::string>& assumptions) {
  const auto reading = terms.resolve(kind, typed);
  if (!reading) {
    return std::unexpected(
        Error::input({option, fmt::format("'{}' is not a name of the tables", typed),
                      fmt::format("Perhaps one of these is meant: {}.",
                                  fmt::join(reading.error().nearest, "; "))}));
  }
  if (reading->names.size() > 1) {
    return std::unexpected(
        Error::input({option, fmt::format("'{}' stands for several names", typed),
                      fmt::format("Choose one of: {}.", fmt::join(reading->names, "; "))}));
  }
  if (reading->slip) {
    assumptions.push_back(fmt::format("'{}' was read as '{}'", typed, reading->names.front()));
  }
  return reading->names.front();
}

Expected<Answer> run(const CommonOptions& common, const Options& options) {
  const auto package = evidence::DataPackage::read(common.datasets);
  if (!package) return std::unexpected(package.error());
  casefile::Case patient;
  if (!common.case_path.empty()) {
    auto loaded = load_case(common, *package);
    if (!loaded) return std::unexpected(loaded.error());
    patient = std::move(*loaded);
  }

  std::vector<std::string> readings = patient.assumptions;
  limb::DistanceQuery query;
  query.point = options.point;
  query.over_skin = options.over_skin;
  if (!options.nerve.empty() || !options.from.empty()) {
    const auto terms = anatomy::Terms::from(*package);
    if (!terms) return std::unexpected(terms.error());
    const auto resolve = [&](anatomy::TermKind kind, const std::string& option,
                             const std::string& typed,
                             std::optional<std::string>& into) -> Expected<void> {
      if (typed.empty()) return {};
      const auto name = standard_name(*terms, kind, option, typed, readings);
      if (!name) return std::unexpected(name.error());
      into = *name;
      return {};
    };
    if (auto ok = resolve(anatomy::TermKind::nerve, "--nerve", options.nerve, query.nerve); !ok) {
      return std::unexpected(ok.error());
    }
    if (auto ok = resolve(anatomy::TermKind::landmark, "--from", options.from, query.landmark);
        !ok) {
      return std::unexpected(ok.error());
    }
  }
  auto answer = limb::distances(*package, patient.limb, query, patient.operations);
  if (!answer) return std::unexpected(answer.error());
  answer->assumptions.insert(answer->assumptions.begin(), readings.begin(), readings.end());
  const auto repeats = std::ranges::unique(answer->assumptions);
  answer->assumptions.erase(repeats.begin(), repeats.end());

  Answer result;
  if (common.json) {
    result.document = distance_json(common, patient.limb, *answer);
  } else {
    result.text = distance_text(patient.limb, *answer);
  }
  return result;
}

}  // namespace

void register_distance(Registry& registry) {
  auto options = std::make_shared<Options>();
  CLI::App* command = registry.add_command(
      "distance", "how far points of the nerves are from landmarks", true,
      [options](const CommonOptions& common) { return run(common, *options); });
  command->add_option("--nerve", options->nerve, "only this nerve or branch");
  command->add_option("--point", options->point, "only points with these words in their name");
  command->add_option("--from", options->from, "only from this landmark");
  command->add_flag("--over-skin", options->over_skin,
                    "over the skin too (always with --from, and with 30 distances or fewer)");
}

}  // namespace endplate::cli
