#include <QApplication>
#include <QCommandLineParser>
#include <chrono>
#include <cstdio>

#include "models/casefile/words.hpp"
#include "ui/app/main_window.hpp"
#include "ui/app/settings.hpp"
#include "ui/app/start.hpp"
#include "ui/document/case_tables.hpp"

namespace {

int refuse(const endplate::Error& error) {
  for (const endplate::Problem& problem : error.problems) {
    std::fprintf(stderr, "error: %s: %s. %s\n", problem.place.c_str(), problem.what.c_str(),
                 problem.mend.c_str());
  }
  return error.fault == endplate::Fault::input ? 2 : 1;
}

}  // namespace

int main(int argc, char** argv) {
  namespace ui = endplate::ui;
  QApplication application(argc, argv);
  ui::prepare(application);

  QCommandLineParser parser;
  parser.setApplicationDescription(QCoreApplication::translate(
      "main",
      "The desk: one case of an injured nerve of the upper limb, its decision and its "
      "answers."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument("CASE", QCoreApplication::translate("main", "case file to open"),
                               "[CASE]");
  const QCommandLineOption datasets(
      "datasets", QCoreApplication::translate("main", "folder of the evidence tables"), "DIR");
  const QCommandLineOption day(
      "today", QCoreApplication::translate("main", "the date to reckon from, YYYY-MM-DD"), "DATE");
  parser.addOption(datasets);
  parser.addOption(day);
  parser.process(application);

  endplate::casefile::Date today =
      std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
  if (parser.isSet(day)) {
    const auto given = endplate::casefile::date_from(parser.value(day).toStdString());
    if (!given) {
      return refuse(
          endplate::Error::input({"--today", "this is no date", "Write the date as YYYY-MM-DD."}));
    }
    today = *given;
  }
  const auto tables = ui::CaseTables::from(
      parser.isSet(datasets) ? std::filesystem::path(parser.value(datasets).toStdString())
                             : ui::default_datasets());
  if (!tables) return refuse(tables.error());
  ui::MainWindow window(*tables, today, ui::data_folder());
  if (!parser.positionalArguments().isEmpty()) {
    window.open_file(parser.positionalArguments().front());
  }
  window.show();
  if (!window.desk().settings.choices().tour_seen) window.show_tour();
  return QApplication::exec();
}
