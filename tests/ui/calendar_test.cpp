// The dates of the decision as a calendar: saved, and taken back when they no longer stand.
#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"

namespace endplate::ui {
namespace {

// Answers the dialogs that come up: each file dialog with the next name, each message with its
// button, and keeps what the messages said.
class Answering {
 public:
  explicit Answering(QStringList names) : names_(std::move(names)) {
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] { answer(); });
    timer_.start(20);
  }
  const QStringList& said() const { return said_; }
  bool all_named() const { return names_.isEmpty(); }

 private:
  void answer() {
    QWidget* dialog = QApplication::activeModalWidget();
    if (auto* message = qobject_cast<QMessageBox*>(dialog)) {
      said_ << message->text();
      message->accept();
    } else if (auto* file = qobject_cast<QFileDialog*>(dialog)) {
      auto* name = file->findChild<QLineEdit*>("fileNameEdit");
      if (name == nullptr || names_.isEmpty()) return file->reject();
      name->setText(names_.takeFirst());
      QMetaObject::invokeMethod(file, "accept");
    }
  }

  QTimer timer_;
  QStringList names_;
  QStringList said_;
};

}  // namespace

TEST_CASE("entries of a saved calendar that no longer stand are taken back", "[panels]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("decision");
  auto& save = desk.find<QPushButton>("decision", "calendar");
  auto& withdraw = desk.find<QPushButton>("decision", "withdraw");
  const QString issued = desk.folder() + "/issued.ics";
  const QString taken = desk.folder() + "/taken.ics";
  {
    const Answering answering({issued});
    save.click();
    CHECK(answering.all_named());
    CHECK(answering.said().isEmpty());
  }
  const QString before = QString::fromStdString(bytes_of(issued));
  CHECK(before.contains("METHOD:PUBLISH"));
  const auto entries = before.count("BEGIN:VEVENT");
  REQUIRE(entries > 0);

  // As long as all stand there is nothing to take back, and no file is asked for.
  {
    const Answering answering({issued});
    withdraw.click();
    REQUIRE(answering.said().size() == 1);
    CHECK(answering.said().front().startsWith("Every entry from today on still stands"));
  }

  // Without the date of the injury nothing can be dated.
  desk.document().remove("/injuries/0/date", "date");
  REQUIRE(desk.wait_idle());
  {
    const Answering answering({issued, taken});
    withdraw.click();
    CHECK(answering.all_named());
    CHECK(answering.said().isEmpty());
  }
  const QString after = QString::fromStdString(bytes_of(taken));
  CHECK(after.contains("METHOD:CANCEL"));
  CHECK(after.count("STATUS:CANCELLED") == after.count("BEGIN:VEVENT"));
  CHECK(after.count("BEGIN:VEVENT") > 0);
  CHECK(after.count("BEGIN:VEVENT") <= entries);

  // The calendar of another case is refused.
  desk.document().set("/label", "another", "label");
  REQUIRE(desk.wait_idle());
  {
    const Answering answering({issued});
    withdraw.click();
    REQUIRE(answering.said().size() == 1);
    CHECK(answering.said().front().contains("belongs to another case"));
  }
}

}  // namespace endplate::ui
