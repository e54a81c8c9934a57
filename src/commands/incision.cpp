#include "models/incision/incision.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <CLI/CLI.hpp>
#include <array>
#include <memory>
#include <optional>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/terms.hpp"
#include "models/incision/approach_plans.hpp"
#include "models/incision/mark_text.hpp"
#include "output/incision_views.hpp"

namespace endplate::cli {
namespace {

using casefile::CutKind;
using incision::PlannedCut;

struct Options {
  std::string approach;
  std::string line;
  std::string portal;
  std::string pin;
  std::string injection;
  std::string toward;
  std::optional<double> depth_mm;
  double farther_than_mm = 10.0;
  std::optional<double> corridor_mm;
  double within_mm = 5.0;
  std::size_t which = 1;
};

// The cut of the options; nothing where they name none.
Expected<std::optional<PlannedCut>> cut_of(const Options& options, const anatomy::Terms& terms,
                                           std::vector<std::string>& assumptions) {
  struct Given {
    const char* option;
    CutKind kind;
    const std::string& text;
  };
  const std::array given{Given{"--line", CutKind::line, options.line},
                         Given{"--portal", CutKind::portal, options.portal},
                         Given{"--pin", CutKind::pin, options.pin},
                         Given{"--injection", CutKind::injection, options.injection}};
  for (const Given& one : given) {
    if (one.text.empty()) continue;
    PlannedCut cut;
    cut.kind = one.kind;
    auto marks = incision::marks_from(one.text, one.option, terms, assumptions);
    if (!marks) return std::unexpected(marks.error());
    cut.marks = std::move(*marks);
    if (!options.toward.empty()) {
      auto aim = incision::marks_from(options.toward, "--toward", terms, assumptions);
      if (!aim) return std::unexpected(aim.error());
      cut.aimed_at = aim->front();
    }
    return cut;
  }
  return std::nullopt;
}

Expected<PlannedCut> cut_of_case(const casefile::Case& patient, std::size_t which) {
  if (patient.incisions.empty()) {
    return std::unexpected(Error::input({"incision", "there is no cut to judge",
                                         "Give --approach, --line, --portal, --pin or --injection, "
                                         "or a case file with \"incisions\"."}));
  }
  if (which < 1 || which > patient.incisions.size()) {
    return std::unexpected(Error::input(
        {"--which", fmt::format("the case file has {} incisions", patient.incisions.size()),
         fmt::format("Give a number from 1 to {}.", patient.incisions.size())}));
  }
  return incision::planned(patient.incisions[which - 1]);
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
  const auto terms = anatomy::Terms::from(*package);
  if (!terms) return std::unexpected(terms.error());
  std::vector<std::string> readings = patient.assumptions;
  const auto given = cut_of(options, *terms, readings);
  if (!given) return std::unexpected(given.error());
  auto planned =
      *given ? Expected<PlannedCut>(**given)
      : !options.approach.empty()
          ? incision::lay_approach(*package, options.approach, "--approach", patient.limb, readings)
          : cut_of_case(patient, options.which);
  if (!planned) return std::unexpected(planned.error());
  if (options.depth_mm) planned->depth_mm = options.depth_mm;

  incision::IncisionOptions settings;
  settings.samples = common.samples;
  settings.seed = common.seed;
  settings.nearby.farther_than_mm = options.farther_than_mm;
  if (options.corridor_mm) {
    settings.corridor.emplace();
    settings.corridor->half_width_mm = *options.corridor_mm;
    settings.corridor->within_mm = options.within_mm;
  }
  if (!*given) settings.approach = options.approach;
  auto answer = incision::answer_incision(patient, *planned, *package, settings);
  if (!answer) return std::unexpected(answer.error());
  answer->assumptions.insert(answer->assumptions.begin(), readings.begin(), readings.end());

  Answer result;
  if (common.json) {
    result.document = incision_json(common, *answer);
  } else {
    result.text = incision_text(*answer);
  }
  return result;
}

}  // namespace

void register_incision(Registry& registry) {
  auto options = std::make_shared<Options>();
  CLI::App* command = registry.add_command(
      "incision", "how near a cut, portal, pin or needle comes to each nerve", true,
      [options](const CommonOptions& common) { return run(common, *options); });
  auto* approach = command->add_option("--approach", options->approach,
                                       "a standard approach by its name, in its own pose");
  approach->type_name("NAME");
  auto* line =
      command->add_option("--line", options->line, "a line over the skin: \"MARK; MARK; ...\"");
  auto* portal = command->add_option("--portal", options->portal, "a portal at this mark");
  auto* pin = command->add_option("--pin", options->pin, "a pin that enters at this mark");
  auto* needle = command->add_option("--injection", options->injection, "a needle at this mark");
  line->excludes(approach);
  portal->excludes(line)->excludes(approach);
  pin->excludes(line)->excludes(portal)->excludes(approach);
  needle->excludes(line)->excludes(portal)->excludes(pin)->excludes(approach);
  for (auto* option : {line, portal, pin, needle}) option->type_name("MARK");
  command
      ->add_option("--toward", options->toward, "where a track points to, instead of straight in")
      ->type_name("MARK")
      ->excludes(line);
  command->add_option("--depth", options->depth_mm, "mm straight in; else to the first bone")
      ->check(CLI::PositiveNumber);
  command
      ->add_option("--farther-than", options->farther_than_mm,
                   "mm: tell the stretches farther than this from every modelled nerve")
      ->check(CLI::PositiveNumber)
      ->capture_default_str();
  auto* beside = command->add_option("--corridor", options->corridor_mm,
                                     "the line of least risk, so many mm beside it at most");
  beside->check(CLI::Range(1.0, incision::kWidest_mm));
  command->add_option("--within", options->within_mm, "mm: what the corridor counts as a risk")
      ->check(CLI::Range(0.5, incision::kFarthest_mm))
      ->needs(beside)
      ->capture_default_str();
  command->add_option("--which", options->which, "which of the case file's incisions, from 1")
      ->capture_default_str();
  command->footer(
      "A MARK is a landmark, then mm along and across the limb and the side whose skin is meant:\n"
      "\"lateral epicondyle, 20 proximal, 10 anterior, on lateral\"; or \"at X Y Z\" in mm.");
}

}  // namespace endplate::cli
