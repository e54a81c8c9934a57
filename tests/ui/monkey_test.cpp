// Seeded random actions on the whole window. What is asked of it: no crash, no hang, and a case
// that can be read back as it stands.
#include <QAbstractButton>
#include <QAbstractSlider>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QUndoStack>
#include <array>
#include <catch2/catch.hpp>
#include <chrono>
#include <random>

#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/settings.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/panel.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

class Monkey {
 public:
  Monkey(DeskUnderTest& desk, unsigned seed) : desk_(desk), random_(seed) {}

  void act() {
    switch (number(9)) {
      case 0: {
        const auto questions = desk_.window().questions();
        question_ = questions[static_cast<std::size_t>(number(static_cast<int>(questions.size())))];
        desk_.window().show_question(question_);
        return;
      }
      case 1:
        desk_.document().steps().undo();
        return;
      case 2:
        desk_.document().steps().redo();
        return;
      case 3:
        if (auto* button = any<QAbstractButton>()) {
          // Those that open a dialog wait for an answer that does not come.
          if (!button->text().endsWith("...")) button->click();
        }
        return;
      case 4:
        if (auto* box = any<QComboBox>(); box != nullptr && box->count() > 0) {
          const int index = number(box->count());
          box->setCurrentIndex(index);
          Q_EMIT box->activated(index);
        }
        return;
      case 5:
        if (auto* line = any<QLineEdit>()) {
          line->setFocus();
          line->selectAll();
          QTest::keyClicks(line, words());
          QTest::keyClick(line, Qt::Key_Return);
        }
        return;
      case 6:
        if (auto* slider = any<QAbstractSlider>()) {
          const int span = slider->maximum() - slider->minimum();
          slider->setValue(slider->minimum() + number(span + 1));
        }
        return;
      case 7:
        if (auto* table = any<QTableView>(); table != nullptr && table->model()->rowCount() > 0) {
          table->setCurrentIndex(table->model()->index(number(table->model()->rowCount()), 2));
          constexpr std::array keys{Qt::Key_0, Qt::Key_4,     Qt::Key_Minus, Qt::Key_5,
                                    Qt::Key_N, Qt::Key_A,     Qt::Key_P,     Qt::Key_Delete,
                                    Qt::Key_R, Qt::Key_Space, Qt::Key_Plus};
          QTest::keyClick(table, keys[static_cast<std::size_t>(number(keys.size()))]);
        }
        return;
      default:
        if (auto* tabs = any<QTabWidget>()) tabs->setCurrentIndex(number(tabs->count()));
    }
  }

 private:
  int number(int below) { return std::uniform_int_distribution<int>(0, below - 1)(random_); }
  int number(std::size_t below) { return number(static_cast<int>(below)); }

  QString words() {
    constexpr std::array some{"",
                              "1650",
                              "34",
                              "radial nerve",
                              "ulnar",
                              "2026-06-01",
                              "-5",
                              "lateral epicondyle",
                              "x",
                              "99999999",
                              "\"quoted\" /slash~",
                              "FCU"};
    return some[static_cast<std::size_t>(number(some.size()))];
  }

  template <class T>
  T* any() {
    const auto all = desk_.window().panel(question_)->findChildren<T*>();
    QList<T*> seen;
    for (T* one : all) {
      if (one->isVisible() && one->isEnabled()) seen << one;
    }
    return seen.isEmpty() ? nullptr : seen[number(static_cast<int>(seen.size()))];
  }

  DeskUnderTest& desk_;
  std::mt19937 random_;
  QString question_ = "decision";
};

TEST_CASE("a thousand random actions leave a desk that works and a case that can be read",
          "[monkey]") {
  for (const unsigned seed : {1U, 2U, 3U, 4U}) {
    DeskUnderTest desk;
    Asked few = desk.answers().asked();
    few.samples = 100;
    desk.answers().set_asked(few);
    REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
    Monkey monkey(desk, seed);
    for (int action = 0; action < 250; ++action) {
      INFO("seed " << seed << ", action " << action);
      monkey.act();
      QApplication::processEvents();
      const auto again = parse_case_json(desk.document().text());
      REQUIRE(again);
    }
    REQUIRE(desk.wait_idle());
    CHECK(desk.window().stage().view()->gl_errors() == 0);
    while (desk.document().steps().canUndo()) desk.document().steps().undo();
    if (desk.document().steps().count() < 300) {
      CHECK(desk.document().text() == bytes_of(example("humeral-shaft-radial-palsy")));
    }
  }
}

TEST_CASE("a slider that is dragged never holds the window for long", "[monkey]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("patient");
  auto& slider = desk.find<QAbstractSlider>("patient", "elbow_flexion_deg");
  double longest_ms = 0.0;
  slider.setSliderDown(true);
  for (int degrees = 1; degrees <= 100; ++degrees) {
    const auto before = std::chrono::steady_clock::now();
    slider.setValue(degrees);
    const std::chrono::duration<double, std::milli> took =
        std::chrono::steady_clock::now() - before;
    longest_ms = std::max(longest_ms, took.count());
    QApplication::processEvents();
  }
  slider.setSliderDown(false);
  WARN("the longest of 100 steps of a slider took " << longest_ms << " ms");
  CHECK(longest_ms < 50.0);
  CHECK(desk.document().steps().count() == 1);
}

TEST_CASE("an answer that is there is shown without holding the window", "[monkey]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("upper-trunk-injury")));
  for (const QString& question : desk.window().questions()) {
    Panel& panel = desk.ask(question);
    const auto before = std::chrono::steady_clock::now();
    panel.come_forward();
    QApplication::processEvents();
    const std::chrono::duration<double, std::milli> took =
        std::chrono::steady_clock::now() - before;
    WARN(question.toStdString() << ": " << took.count() << " ms to fill and paint anew");
    CHECK(took.count() < 500.0);
  }
}

}  // namespace
}  // namespace endplate::ui
