#include "tests/ui/edit_for_ever.hpp"

#include <QApplication>
#include <QTimer>
#include <QUndoStack>
#include <chrono>
#include <cstdio>
#include <functional>
#include <nlohmann/json.hpp>
#include <random>
#include <utility>

#include "tests/ui/desk_support.hpp"
#include "ui/app/main_window.hpp"
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

// Edits and saves by a timer of its own.
class Editor {
 public:
  Editor(CaseDocument& document, unsigned seed, std::function<bool(const QString&)> save)
      : document_(document), chance_(seed), save_(std::move(save)) {
    document_.steps().setUndoLimit(20);
    next_save_ = pause_(chance_);
    QObject::connect(&timer_, &QTimer::timeout, &document_, [this] { edit(); });
    timer_.start(kEvery_ms);
  }

 private:
  void edit() {
    say("edit %d %lld\n", ++edit_, monotonic_ms());
    document_.set("/limb/age_years", 1 + edit_ % 100, "age");
    document_.set("/label", label_of_edit(edit_).toStdString(), "label");
    if (edit_ < next_save_) return;
    next_save_ = edit_ + pause_(chance_);
    say("save %d\n", edit_);
    if (!save_("case.json")) std::abort();
    say("saved %d\n", edit_);
  }

  CaseDocument& document_;
  std::mt19937 chance_;
  std::uniform_int_distribution<int> pause_{kFewest, kMost};
  std::function<bool(const QString&)> save_;
  QTimer timer_;
  int edit_ = 0;
  int next_save_ = 0;
};

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
  // What is killed here are the document and its files alone.
  const QCoreApplication application(argc, argv);
  CaseDocument document(tables(), kToday);
  const RecoveryStore store(document, folder + "/recovery");
  const Editor editor(document, seed, [&](const QString& name) {
    const QString path = folder + '/' + name;
    if (!write_bytes(path, document.text())) return false;
    document.saved_as(path);
    return true;
  });
  return QCoreApplication::exec();
}

int edit_a_desk_for_ever(int argc, char** argv, const QString& folder, unsigned seed) {
  const QApplication application(argc, argv);
  MainWindow window(tables(), kToday, folder);
  window.show();
  const Editor editor(window.desk().document, seed,
                      [&](const QString& name) { return window.save_to(folder + '/' + name); });
  return QApplication::exec();
}

}  // namespace endplate::ui
