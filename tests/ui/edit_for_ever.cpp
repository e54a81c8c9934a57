#include "tests/ui/edit_for_ever.hpp"

#include <QCoreApplication>
#include <QTimer>
#include <QUndoStack>
#include <chrono>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <random>

#include "tests/ui/desk_support.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/recovery_store.hpp"

namespace endplate::ui {
namespace {

constexpr int kEvery_ms = 50;
// From a quarter of a second to six seconds: with copies between two saves and without.
constexpr int kFewest = 5;
constexpr int kMost = 120;
constexpr int kFill = 300'000;

template <class... Numbers>
void say(const char* format, Numbers... numbers) {
  std::printf(format, numbers...);
  std::fflush(stdout);
}

}  // namespace

qint64 monotonic_ms() {
  using std::chrono::steady_clock;
  return std::chrono::duration_cast<std::chrono::milliseconds>(
             steady_clock::now().time_since_epoch())
      .count();
}

QString label_of_edit(int number) {
  return QString("edit %1 ").arg(number) + QString(kFill, QChar('a' + number % 26));
}

int edit_of_label(const QString& label) {
  const int number = label.section(' ', 1, 1).toInt();
  return label == label_of_edit(number) ? number : 0;
}

int edit_for_ever(int argc, char** argv, const QString& folder, unsigned seed) {
  // A whole desk takes seconds to start; what is killed here are its document and its files.
  const QCoreApplication application(argc, argv);
  CaseDocument document(tables(), kToday);
  document.steps().setUndoLimit(20);
  RecoveryStore store(document, folder + "/recovery");
  std::mt19937 chance(seed);
  std::uniform_int_distribution<int> pause(kFewest, kMost);
  int edit = 0;
  int next_save = pause(chance);
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &document, [&] {
    say("edit %d %lld\n", ++edit, monotonic_ms());
    document.set("/limb/age_years", 1 + edit % 100, "age");
    document.set("/label", label_of_edit(edit).toStdString(), "label");
    if (edit < next_save) return;
    next_save = edit + pause(chance);
    const QString path = folder + "/case.json";
    say("save %d\n", edit);
    if (!write_bytes(path, document.text())) std::abort();
    say("saved %d\n", edit);
    document.saved_as(path);
  });
  timer.start(kEvery_ms);
  return QCoreApplication::exec();
}

}  // namespace endplate::ui
