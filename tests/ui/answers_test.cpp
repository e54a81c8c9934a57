#include <QCoreApplication>
#include <QUndoStack>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "models/examination/case_check.hpp"
#include "models/limb/limb_answer.hpp"
#include "models/recovery/recover.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/panel.hpp"

namespace endplate::ui {
namespace {

constexpr auto kCase = "humeral-shaft-radial-palsy";

struct Asking {
  CaseDocument document{tables(), kToday};
  AnswerRunner answers{document};
  Asking() {
    Asked asked = answers.asked();
    asked.samples = 200;
    answers.set_asked(asked);
    REQUIRE(document.open(bytes_of(example(kCase)), {}));
  }
  bool idle() {
    return wait_until([&] { return answers.is_idle(); });
  }
};

TEST_CASE("only what is wanted is asked", "[answers]") {
  Asking desk;
  desk.answers.want({Question::check});
  REQUIRE(desk.idle());
  REQUIRE(desk.answers.check().answer != nullptr);
  CHECK_FALSE(desk.answers.check().stale);
  CHECK(desk.answers.recovery().answer == nullptr);
  CHECK(desk.answers.check().answer->injuries.front().words.find("lateral epicondyle") !=
        std::string::npos);
}

TEST_CASE("the last answer stays, marked, until the new one is there", "[answers]") {
  Asking desk;
  desk.answers.want({Question::recovery});
  REQUIRE(desk.idle());
  const auto before = desk.answers.recovery().answer;
  REQUIRE(before != nullptr);
  const int revision = desk.answers.recovery().revision;
  desk.document.set("/limb/age_years", 60, "age");
  CHECK(desk.answers.recovery().stale);
  CHECK(desk.answers.recovery().answer == before);
  CHECK(desk.document.changes_since(revision) == QStringList{"age"});
  REQUIRE(desk.idle());
  CHECK_FALSE(desk.answers.recovery().stale);
  CHECK(desk.answers.recovery().answer != before);
  CHECK(desk.answers.recovery().revision == desk.document.revision());
}

TEST_CASE("the latest inputs win over runs that older ones began", "[answers]") {
  Asking desk;
  desk.answers.want({Question::limb});
  // Each change after the rest has passed, so that runs have begun.
  for (int age = 20; age < 26; ++age) {
    desk.document.set("/limb/stature_mm", 1500 + 10 * age, "stature");
    wait_until([&] { return !desk.answers.running().isEmpty(); }, 2000);
  }
  REQUIRE(desk.idle());
  REQUIRE(desk.answers.limb().answer != nullptr);
  CHECK(desk.answers.limb().answer->stature_mm.mean == Approx(1750.0));
}

TEST_CASE("what nobody looks at any more is not waited for", "[answers]") {
  Asking desk;
  desk.answers.want({Question::recovery, Question::plan});
  desk.answers.want({Question::check});
  REQUIRE(desk.idle());
  CHECK(desk.answers.check().answer != nullptr);
  CHECK(desk.answers.plan().answer == nullptr);
}

TEST_CASE("what is stopped stays unanswered until it is asked again", "[answers]") {
  Asking desk;
  desk.answers.want({Question::recovery});
  wait_until([&] { return !desk.answers.running().isEmpty(); }, 5000);
  desk.answers.cancel();
  CHECK(desk.answers.is_idle());
  CHECK(desk.answers.recovery().progress == Progress::cancelled);
  wait_until([] { return false; }, 1500);
  CHECK(desk.answers.recovery().answer == nullptr);
  desk.answers.resume();
  REQUIRE(desk.idle());
  CHECK(desk.answers.recovery().answer != nullptr);
}

TEST_CASE("of a case that cannot be read nothing is asked and the last answer stays", "[answers]") {
  Asking desk;
  desk.answers.want({Question::check});
  REQUIRE(desk.idle());
  const auto before = desk.answers.check().answer;
  desk.document.set("/injuries/0/nerve", "no such nerve", "nerve");
  REQUIRE_FALSE(desk.document.read());
  REQUIRE(desk.idle());
  CHECK(desk.answers.check().stale);
  CHECK(desk.answers.check().answer == before);
  desk.document.steps().undo();
  REQUIRE(desk.idle());
  CHECK_FALSE(desk.answers.check().stale);
}

TEST_CASE("nothing said of one patient stands beside another", "[answers]") {
  Asking desk;
  desk.answers.want({Question::recovery});
  REQUIRE(desk.idle());
  REQUIRE(desk.document.open(bytes_of(example("birth-palsy")), {}));
  CHECK(desk.answers.recovery().answer == nullptr);
}

TEST_CASE("an answer that is not current says so and on which case it stands", "[answers]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example(kCase)));
  Panel& panel = desk.ask("recovery");
  CHECK(panel.notice_text().isEmpty());
  CHECK(panel.head_text().contains("RIGHT LIMB"));
  desk.document().set("/limb/age_years", 50, "age");
  QCoreApplication::processEvents();
  CHECK(panel.notice_text().contains("NOT CURRENT"));
  CHECK(panel.notice_text().contains("age"));
  REQUIRE(desk.wait_idle());
  CHECK(panel.notice_text().isEmpty());
  desk.document().set("/limb/side", "left", "side");
  QCoreApplication::processEvents();
  CHECK(panel.head_text().contains("LEFT LIMB"));
}

}  // namespace
}  // namespace endplate::ui
