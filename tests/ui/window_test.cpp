// The window around the panels. Needs no OpenGL: these run on the offscreen platform as well.
#include <QAbstractButton>
#include <QAbstractSlider>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/help_dialog.hpp"
#include "ui/document/case_document.hpp"
#include "ui/document/case_file.hpp"
#include "ui/document/recovery_store.hpp"
#include "ui/panels/panel.hpp"

namespace endplate::ui {
namespace {

TEST_CASE("every question has a page of help and the tour at most five steps", "[window]") {
  DeskUnderTest desk;
  CHECK(desk.window().questions().front() == "decision");
  for (const QString& question : desk.window().questions()) {
    INFO(question.toStdString());
    CHECK(HelpDialog::page(question).size() > 100);
  }
  CHECK(HelpDialog::page("no such question").isEmpty());
  CHECK(TourDialog::steps().size() <= 5);
}

TEST_CASE("what can be operated has a name for assistive technology", "[window]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("radial-graft-after-fracture")));
  for (const QString& question : desk.window().questions()) {
    const Panel& panel = desk.ask(question);
    for (const QWidget* widget : panel.findChildren<QWidget*>()) {
      const bool operated = qobject_cast<const QComboBox*>(widget) != nullptr ||
                            qobject_cast<const QAbstractSlider*>(widget) != nullptr ||
                            qobject_cast<const QTableView*>(widget) != nullptr ||
                            qobject_cast<const QSpinBox*>(widget) != nullptr;
      // Parts of a widget that Qt makes itself are named by it.
      const QString name = widget->objectName();
      if (!operated || name.startsWith("qt_") || !widget->isVisible()) continue;
      if (widget->parentWidget()->objectName().startsWith("qt_scrollarea")) continue;
      INFO(question.toStdString() << ": " << widget->metaObject()->className() << ' '
                                  << name.toStdString());
      CHECK_FALSE(widget->accessibleName().isEmpty());
    }
  }
}

TEST_CASE("a case that is dropped on the window is opened", "[window]") {
  DeskUnderTest desk;
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(example("high-median-injury"))});
  QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  static_cast<QObject&>(desk.window()).event(&drop);
  CHECK(desk.document().path() == example("high-median-injury"));
  CHECK(desk.document().text() == bytes_of(example("high-median-injury")));
}

TEST_CASE("what was entered for one patient is not asked of the next", "[window]") {
  DeskUnderTest desk;
  const auto measures = [&] {
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QStringList names;
    for (const QLineEdit* line : desk.ask("patient").findChildren<QLineEdit*>()) {
      if (line->objectName().startsWith("/limb/measured/")) names << line->text();
    }
    return names;
  };
  REQUIRE(desk.window().open_file(example("radial-nerve-found-by-ultrasound")));
  const QStringList first = measures();
  REQUIRE_FALSE(first.isEmpty());
  CHECK_FALSE(first.contains(QString()));
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  CHECK(measures().isEmpty());
}

TEST_CASE("a file that is no case leaves the case that is open", "[window]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("high-median-injury")));
  const QString wrong = desk.folder() + "/wrong.json";
  QFile file(wrong);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{\"a\": 1, \"a\": 2}");
  file.close();
  CHECK_FALSE(desk.window().open_file(wrong));
  CHECK_FALSE(desk.window().open_file(desk.folder() + "/missing.json"));
  CHECK_FALSE(desk.window().open_file(desk.folder()));
  CHECK(desk.document().path() == example("high-median-injury"));
}

TEST_CASE("a case saved and opened again is the same bytes", "[window]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("high-median-injury")));
  const QString path = desk.folder() + "/saved.json";
  REQUIRE(desk.window().save_to(path));
  CHECK(bytes_of(path) == bytes_of(example("high-median-injury")));
  desk.document().set("/limb/age_years", 44, "age");
  CHECK(desk.document().is_changed());
  REQUIRE(desk.window().save());
  CHECK_FALSE(desk.document().is_changed());
  const std::string bytes = bytes_of(path);
  REQUIRE(desk.window().open_file(path));
  CHECK(desk.document().text() == bytes);
}

TEST_CASE("a case that a desk had not saved is offered and opened as changed", "[window]") {
  const QTemporaryDir folder;
  REQUIRE(QDir().mkpath(folder.path() + "/recovery"));
  const std::string bytes = bytes_of(example("high-median-injury"));
  const nlohmann::json copy{{"path", "/no/such/file.json"},
                            {"label", "lost"},
                            {"at", "2026-09-30T10:00:00"},
                            {"case", bytes}};
  const QString file = folder.path() + "/recovery/one.copy";
  REQUIRE(write_bytes(file, copy.dump()));
  MainWindow window(tables(), kToday, folder.path());
  window.show();
  auto* yes = window.findChild<QPushButton*>("bar yes");
  REQUIRE(yes->isVisible());
  yes->click();
  CHECK(window.desk().document.text() == bytes);
  CHECK(window.desk().document.is_changed());
  CHECK_FALSE(QFile::exists(file));
  CHECK_FALSE(yes->isVisible());
  // The copy of this desk takes its place.
  CHECK(wait_until(
      [&] { return !QDir(folder.path() + "/recovery").entryList({"*.copy"}).isEmpty(); }, 10'000));
}

TEST_CASE("every string is translated, with its place holders", "[window]") {
  const QString text =
      QString::fromStdString(bytes_of(ENDPLATE_SOURCE_DIR "/ui/translations/endplate_de.ts"));
  CHECK(text.count("<message") > 500);
  CHECK_FALSE(text.contains("unfinished"));
  CHECK_FALSE(text.contains("<translation />"));
}

}  // namespace
}  // namespace endplate::ui
