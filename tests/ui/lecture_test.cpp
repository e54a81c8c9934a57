// Lectures: the file, what the tables say for a step, the presenter and the editor.
#include "ui/lecture/lecture.hpp"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/app/lecture_room.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/lecture/lecture_editor.hpp"
#include "ui/lecture/presenter.hpp"
#include "ui/lecture/step_facts.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

const QString kShipped = ENDPLATE_SOURCE_DIR "/datasets/lectures/five-great-nerves.json";

LectureVocabulary vocabulary(DeskUnderTest& desk) {
  return LectureRoom(desk.window().desk(), desk.window().stage(), &desk.window()).vocabulary();
}

QByteArray bytes(const QString& path) {
  return QByteArray::fromStdString(bytes_of(path));
}

LectureStep about(StepKind kind, const QString& nerve) {
  LectureStep step;
  step.kind = kind;
  step.nerve = nerve;
  return step;
}

QString all_facts(const LectureStep& step) {
  QStringList lines;
  for (const StepFact& fact : step_facts(step, tables()->anatomy, tables()->package)) {
    CHECK_FALSE(fact.source.isEmpty());
    lines.push_back(fact.text);
  }
  return lines.join("\n");
}

}  // namespace

TEST_CASE("the lecture that is shipped goes through each great nerve and reads back", "[lecture]") {
  DeskUnderTest desk;
  const auto words = vocabulary(desk);
  const auto lecture = read_lecture(bytes(kShipped), words);
  REQUIRE(lecture);
  for (const char* nerve : {"musculocutaneous nerve", "axillary nerve", "radial nerve",
                            "median nerve", "ulnar nerve"}) {
    for (const StepKind kind : {StepKind::course, StepKind::muscles, StepKind::skin,
                                StepKind::exceptions, StepKind::danger}) {
      INFO(nerve << " " << static_cast<int>(kind));
      CHECK(std::ranges::any_of(lecture->steps, [&](const LectureStep& step) {
        return step.kind == kind && step.nerve == nerve;
      }));
    }
  }
  const QByteArray once = write_lecture(*lecture);
  const auto again = read_lecture(once, words);
  REQUIRE(again);
  CHECK(write_lecture(*again) == once);
}

TEST_CASE("what a lecturer adds by hand is kept", "[lecture]") {
  DeskUnderTest desk;
  const auto lecture = read_lecture(
      R"({"endplate_lecture": 1, "title": "t", "room": "4",
          "steps": [{"show": "text", "title": "a", "handout": true}]})",
      vocabulary(desk));
  REQUIRE(lecture);
  const QByteArray text = write_lecture(*lecture);
  CHECK(text.contains("handout"));
  CHECK(text.contains("room"));
}

TEST_CASE("a lecture that cannot be shown says where and how to mend it", "[lecture]") {
  DeskUnderTest desk;
  const auto words = vocabulary(desk);
  const auto wrong = read_lecture(
      R"({"endplate_lecture": 1, "title": "t", "steps": [
          {"show": "course", "title": "a", "nerve": "no nerve", "view": "above"},
          {"show": "danger", "title": "b", "nerve": "ulnar nerve", "rules": ["AP_9999"]},
          {"show": "muscles", "title": ""}]})",
      words);
  REQUIRE_FALSE(wrong);
  std::vector<std::string> places;
  for (const Problem& problem : wrong.error().problems) places.push_back(problem.place);
  CHECK(places == std::vector<std::string>{"/steps/0/nerve", "/steps/0/view", "/steps/1/rules/0",
                                           "/steps/2/title", "/steps/2/nerve"});
  CHECK_FALSE(read_lecture("{}", words));
  CHECK_FALSE(read_lecture("[1", words));
  CHECK_FALSE(read_lecture(R"({"endplate_lecture": 1, "title": "t", "steps": []})", words));
}

TEST_CASE("facts of a step come from the tables, each with who says so", "[lecture]") {
  CHECK(all_facts(about(StepKind::muscles, "axillary nerve")).contains("teres minor"));
  CHECK(all_facts(about(StepKind::skin, "radial nerve")).contains("first dorsal web space"));
  CHECK_FALSE(all_facts(about(StepKind::skin, "radial nerve")).contains("thenar"));
  CHECK(all_facts(about(StepKind::exceptions, "ulnar nerve")).contains("Martin-Gruber"));
  LectureStep danger = about(StepKind::danger, "axillary nerve");
  danger.rules = QStringList{"AP_004"};
  CHECK(all_facts(danger).contains("35 mm"));
  CHECK(step_facts(about(StepKind::text, {}), tables()->anatomy, tables()->package).isEmpty());
  const QStringList front =
      step_foreground(about(StepKind::muscles, "ulnar nerve"), tables()->anatomy);
  CHECK(front.contains("FDI"));
  CHECK(front.contains("deep branch of ulnar nerve"));
  CHECK_FALSE(front.contains("APB"));
}

TEST_CASE("a lecture is driven by keys and gives the picture back", "[lecture]") {
  DeskUnderTest desk;
  Presenter* presenter = desk.window().show_lecture(kShipped);
  REQUIRE(presenter != nullptr);
  const qsizetype last = presenter->lecture().steps.size() - 1;
  QTest::keyClick(presenter, Qt::Key_Space);
  CHECK(presenter->step() == 1);
  QTest::keyClick(presenter, Qt::Key_End);
  CHECK(presenter->step() == last);
  QTest::keyClick(presenter, Qt::Key_Right);
  CHECK(presenter->step() == last);
  QTest::keyClick(presenter, Qt::Key_Home);
  QTest::keyClick(presenter, Qt::Key_Left);
  CHECK(presenter->step() == 0);
  LimbView* view = desk.window().stage().view();
  REQUIRE(view != nullptr);
  CHECK(view->window() == presenter);
  QTest::keyClick(presenter, Qt::Key_Escape);
  CHECK(wait_until([&] { return view->window() == &desk.window(); }));
}

TEST_CASE("steps are moved, added and removed, and a bad one cannot be kept", "[lecture]") {
  DeskUnderTest desk;
  const auto words = vocabulary(desk);
  const auto shipped = read_lecture(bytes(kShipped), words);
  LectureEditor editor(*shipped, words);
  const qsizetype count = shipped->steps.size();
  editor.move_step(1);
  CHECK(editor.lecture().steps[0].title == shipped->steps[1].title);
  CHECK(editor.lecture().steps[1].title == shipped->steps[0].title);
  editor.add_step();
  CHECK(editor.lecture().steps.size() == count + 1);
  CHECK(read_lecture(write_lecture(editor.lecture()), words));
  editor.remove_step();
  CHECK(editor.lecture().steps.size() == count);
}

TEST_CASE("pictures of each step of the lecture", "[.pictures]") {
  DeskUnderTest desk;
  desk.window().show();
  REQUIRE(wait_until([&] { return desk.window().stage().view()->scene() != nullptr; }));
  Presenter* presenter = desk.window().show_lecture(kShipped);
  REQUIRE(presenter != nullptr);
  const auto scale = static_cast<int>(desk.window().devicePixelRatioF());
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1200)}) {
    presenter->showNormal();
    presenter->resize(size);
    const QDir folder(QString("%1/lecture-%2x%3-scale%4")
                          .arg(ENDPLATE_SCREENSHOTS)
                          .arg(size.width())
                          .arg(size.height())
                          .arg(scale));
    REQUIRE(QDir().mkpath(folder.path()));
    for (qsizetype step = 0; step < presenter->lecture().steps.size(); ++step) {
      presenter->go_to(step);
      QApplication::processEvents();
      REQUIRE(wait_until([&] { return desk.window().stage().view()->is_up_to_date(); }));
      const QImage picture = presenter->grab().toImage();
      CHECK(picture.save(folder.filePath(QString("step-%1.png").arg(step + 1, 2, 10, QChar('0')))));
    }
  }
  presenter->close();
}

}  // namespace endplate::ui
