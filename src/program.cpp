#include "program.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <exception>
#include <ostream>

#include "command.hpp"
#include "output/errors.hpp"
#include "paths.hpp"

namespace endplate::cli {
namespace {

std::chrono::year_month_day system_date() {
  return std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
}

// "2026-06-01" or nothing.
std::optional<std::chrono::year_month_day> parse_date(const std::string& text) {
  int year = 0;
  unsigned month = 0;
  unsigned day = 0;
  char rest = 0;
  if (std::sscanf(text.c_str(), "%4d-%2u-%2u%c", &year, &month, &day, &rest) != 3) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                         std::chrono::day(day)};
  if (!date.ok()) return std::nullopt;
  return date;
}

void add_common_options(CLI::App& command, CommonOptions& common, bool takes_case) {
  if (takes_case) {
    command.add_option("CASE", common.case_path,
                       "case file, or - for standard input; without it, a standard adult limb");
  }
  command.add_flag("--json", common.json, "one JSON document on standard output");
  command.add_option("--seed", common.seed, "seed of the random numbers")->capture_default_str();
  command.add_option("--samples", common.samples, "sampled limbs or patients")
      ->check(CLI::Range(100, 1'000'000))
      ->capture_default_str();
  command.add_option("--datasets", common.datasets, "folder of the evidence tables");
  command.add_option_function<std::string>(
      "--today",
      [&common](const std::string& text) {
        const auto date = parse_date(text);
        if (!date) throw CLI::ValidationError("--today", "write the date as YYYY-MM-DD");
        common.today = *date;
        common.today_given = true;
      },
      "the date to reckon from, YYYY-MM-DD");
  command.add_flag("--quiet", common.quiet, "no progress bar and no remarks");
}

}  // namespace

int run_program(int argc, const char* const* argv, std::ostream& out, std::ostream& err) {
  CLI::App app(
      "Endplate: from an injured nerve of the upper limb to sourced distances, deficits and\n"
      "reinnervation times. It informs a decision; the surgeon makes it.",
      "endplate");
  app.set_version_flag("--version", std::string("endplate ") + ENDPLATE_VERSION);
  app.require_subcommand(1);

  CommonOptions common;
  common.today = system_date();
  Run chosen;
  Registry registry{
      app, [&](const std::string& name, const std::string& description, bool takes_case, Run run) {
        CLI::App* command = app.add_subcommand(name, description);
        add_common_options(*command, common, takes_case);
        command->set_version_flag("--version", std::string("endplate ") + ENDPLATE_VERSION);
        command->callback([&chosen, run = std::move(run)] { chosen = run; });
        return command;
      }};
  register_limb(registry);
  register_distance(registry);
  register_deficit(registry);
  register_recovery(registry);
  register_followup(registry);
  register_incision(registry);
  register_transfer(registry);
  register_plan(registry);
  register_evidence(registry);
  register_check(registry);

  try {
    app.parse(argc, argv);
  } catch (const CLI::Success& asked) {  // --help or --version
    return app.exit(asked, out, err);
  } catch (const CLI::ParseError& wrong) {
    err << fmt::format("error: arguments: {}. See endplate --help.\n", wrong.what());
    return 2;
  }

  try {
    if (common.datasets.empty()) common.datasets = default_datasets();
    const auto answer = chosen(common);
    if (!answer) {
      print_error(answer.error(), err);
      return exit_status(answer.error().fault);
    }
    if (common.json) {
      out << answer->document.dump(2) << '\n';
    } else {
      out << answer->text;
    }
    return 0;
  } catch (const std::exception& fault) {
    err << fmt::format("error: program: {}. Please report this with the case file.\n",
                       fault.what());
    return 1;
  }
}

}  // namespace endplate::cli
