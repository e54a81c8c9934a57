// The interface thread is never held for long: each event of a whole case is timed.
#include <QAbstractSlider>
#include <QElapsedTimer>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>
#include <catch2/catch.hpp>
#include <functional>

#include "tests/ui/busy_watch.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

constexpr double kMost_ms = 50.0;

// Lets the window work for a while, as someone looks on.
void look_on(int milliseconds = 300) {
  wait_until([] { return false; }, milliseconds);
}

// As an event of its own, so that it is timed.
void act(const std::function<void()>& action, int milliseconds = 300) {
  QMetaObject::invokeMethod(qApp, action, Qt::QueuedConnection);
  look_on(milliseconds);
}

void check_longest(const QString& doing) {
  const BusyTime longest = WatchedApplication::self().take_longest();
  WARN(doing.toStdString() << ": " << longest.processor_ms << " ms of the thread, "
                           << longest.clock_ms << " ms by the clock, "
                           << longest.what.toStdString());
  CHECK(longest.processor_ms < kMost_ms);
}

}  // namespace

TEST_CASE("no event of a whole case holds the interface thread", "[busy]") {
  DeskUnderTest desk;
  MainWindow& window = desk.window();
  look_on();
  check_longest("showing the window");
  act([&] { window.open_file(example("humeral-shaft-radial-palsy")); }, 1500);
  check_longest("opening a case and the first picture");
  const auto ask = [&](const QString& question, int milliseconds) {
    act([&] { window.show_question(question); }, milliseconds);
    REQUIRE(desk.wait_idle());
    look_on(milliseconds);
  };
  for (const QString& question : window.questions()) {
    ask(question, 200);
    check_longest("asking " + question);
  }
  // With every answer there.
  for (const QString& question : window.questions()) ask(question, 50);
  check_longest("turning over the panels");
  act([&] { desk.answers().set_evidence({"nerve", "", ""}); });
  ask("evidence", 300);
  const int listed = desk.find<RowTable>("evidence", "Quantities").rows().rowCount();
  WARN(listed << " quantities and rows of the evidence");
  CHECK(listed > 300);
  check_longest("most of the evidence");

  ask("patient", 100);
  auto& slider = desk.find<QAbstractSlider>("patient", "elbow_flexion_deg");
  LimbView& view = *window.stage().view();
  int poses = 0;
  const auto counting =
      QObject::connect(&view, &LimbView::pose_shown, &view, [&](bool) { ++poses; });
  QElapsedTimer clock;
  clock.start();
  slider.setSliderDown(true);
  // As often as a mouse tells of its way.
  for (int step = 1; step <= 120; ++step) act([&] { slider.setValue(step); }, 8);
  WARN("dragging a joint: " << 1e3 * poses / static_cast<double>(clock.elapsed())
                            << " poses a second");
  QObject::disconnect(counting);
  act([&] { slider.setSliderDown(false); }, 1000);
  REQUIRE(desk.wait_idle());
  check_longest("dragging a joint");
  act([&] { desk.document().steps().undo(); });
  REQUIRE(desk.wait_idle());
  look_on();
  check_longest("undoing");

  for (int k = 1; k < 10; ++k) {
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(view.width() * k / 10, view.height() / 2));
    look_on(50);
  }
  check_longest("picking");
  act([&] { view.set_layer(Layer::muscles, true); }, 1000);
  check_longest("showing muscles");
  act([&] { view.take_picture({2400, 2400}, [](const QImage&) {}); }, 1500);
  check_longest("a picture for print");
  for (const QSize size : {QSize(1600, 1000), QSize(1280, 800)}) act([&] { window.resize(size); });
  check_longest("another size of the window");
}

}  // namespace endplate::ui
