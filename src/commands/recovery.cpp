#include <CLI/CLI.hpp>
#include <fstream>
#include <sstream>

#include "case_input.hpp"
#include "command.hpp"
#include "models/anatomy/nerve_tree.hpp"
#include "models/evidence/data_package.hpp"
#include "models/recovery/recover.hpp"
#include "models/schedule/schedule.hpp"
#include "output/calendar.hpp"
#include "output/recovery_json.hpp"
#include "output/recovery_text.hpp"
#include "output/schedule_views.hpp"

namespace endplate::cli {
namespace {

struct Options {
  bool sheet = false;
  std::string calendar;  // file to write
  std::string withdraw;  // calendar that was issued before
};

Expected<std::string> read_file(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) {
    return std::unexpected(Error::input(
        {path, "the file cannot be opened", "Name a file that --calendar wrote for this case."}));
  }
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

Expected<void> write_file(const std::string& path, const std::string& text) {
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  out << text;
  out.close();
  if (out) return {};
  return std::unexpected(Error::input(
      {path, "the file cannot be written", "Check the folder and whether you may write there."}));
}

// Writes the calendar, or the withdrawal of one.
Expected<void> write_calendar(const Options& options, const CalendarCase& of,
                              const schedule::Schedule& schedule) {
  if (options.calendar.empty() && options.withdraw.empty()) return {};
  if (!options.calendar.empty() && !options.calendar.ends_with(".ics")) {
    return std::unexpected(Error::input({"--calendar", "the name of a calendar ends in .ics",
                                         "Name it so; no other file is written over."}));
  }
  if (options.calendar.empty()) {
    return std::unexpected(Error::input({"--withdraw", "it is not said where the withdrawal goes",
                                         "Name the file to write with --calendar."}));
  }
  if (options.withdraw.empty()) {
    const auto text = calendar(of, schedule.appointments);
    if (!text) return std::unexpected(text.error());
    return write_file(options.calendar, *text);
  }
  const auto issued = read_file(options.withdraw);
  if (!issued) return std::unexpected(issued.error());
  const auto text = withdrawal(of, schedule.appointments, *issued, options.withdraw);
  if (!text) return std::unexpected(text.error());
  if (text->empty()) {
    return std::unexpected(
        Error::input({options.withdraw, "every entry from today on still stands or only moves",
                      "Issue the calendar anew: write it with --calendar alone."}));
  }
  return write_file(options.calendar, *text);
}

Expected<Answer> run(const CommonOptions& common, const Options& options) {
  const auto package = evidence::DataPackage::read(common.datasets);
  if (!package) return std::unexpected(package.error());
  const auto tree = anatomy::NerveTree::from(*package);
  if (!tree) return std::unexpected(tree.error());
  const auto patient = load_case(common, *package);
  if (!patient) return std::unexpected(patient.error());
  const auto answer =
      recovery::recover(*patient, *package, *tree, {common.samples, common.seed, common.today});
  if (!answer) return std::unexpected(answer.error());
  const Side side = patient->limb.side;
  const auto schedule = schedule::schedule_of(*answer, *package, common.today);
  const auto written = write_calendar(options, {patient->label, side, common.today}, schedule);
  if (!written) return std::unexpected(written.error());
  Answer result{recovery_json(*answer, common, side),
                options.sheet ? sheet_text(schedule, *answer, common, side)
                              : recovery_text(*answer, common, side)};
  result.document["schedule"] = schedule_json(schedule, *answer);
  return result;
}

}  // namespace

void register_recovery(Registry& registry) {
  auto options = std::make_shared<Options>();
  CLI::App* command = registry.add_command(
      "recovery", "what to decide next and by when; when each muscle and area may return", true,
      [options](const CommonOptions& common) { return run(common, *options); });
  command->add_flag("--sheet", options->sheet, "the order of return as a sheet to tick");
  command->add_option("--calendar", options->calendar,
                      "write the dates to this file for a calendar (.ics)");
  command->add_option("--withdraw", options->withdraw,
                      "write there instead what of this issued file no longer stands");
}

}  // namespace endplate::cli
