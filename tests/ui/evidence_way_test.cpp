// From what is on the screen to the published rows behind it.
#include <QKeyEvent>
#include <QLabel>
#include <QTest>
#include <catch2/catch.hpp>

#include "models/evidence/evidence_answer.hpp"
#include "models/examination/case_deficit.hpp"
#include "models/recovery/recover.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"

namespace endplate::ui {
namespace {

// Whether the evidence shows a row of that id, in a quantity or as it stands.
bool shows_row(DeskUnderTest& desk, const QString& id) {
  REQUIRE(desk.wait_idle());
  const auto& held = desk.answers().evidence();
  if (held.answer == nullptr) return false;
  const std::string wanted = id.toStdString();
  const auto has = [&](const auto& rows) {
    return std::ranges::any_of(rows, [&](const auto& row) { return row.id == wanted; });
  };
  return std::ranges::any_of(held.answer->rows,
                             [&](const auto& row) { return row.cell("id") == wanted; }) ||
         std::ranges::any_of(held.answer->distances,
                             [&](const auto& one) { return has(one.quantity.rows); }) ||
         std::ranges::any_of(held.answer->shares,
                             [&](const auto& one) { return has(one.quantity.rows); });
}

}  // namespace

TEST_CASE("the decision's rule and its rows are reached from the decision", "[panels]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("radial-graft-after-fracture")));
  desk.ask("decision");
  auto& rows = desk.find<QLabel>("decision", "rows");
  const auto& answer = desk.answers().recovery().answer;
  REQUIRE(answer != nullptr);
  const QString rule = QString::fromStdString(answer->answer->decision.rule);
  CHECK(rows.text().contains(rule));
  for (const std::string& row : answer->answer->decision.rows) {
    CHECK(rows.text().contains(QString::fromStdString(row)));
  }
  Q_EMIT rows.linkActivated(rule);
  CHECK(desk.window().panel("evidence")->isVisible());
  CHECK(shows_row(desk, rule));
}

TEST_CASE("from rows of the deficit and the recovery to the evidence", "[panels]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  const auto check = [&](const char* question, const char* name, const char* id) {
    INFO(question << ": " << name);
    desk.ask(question);
    auto& table = desk.find<RowTable>(question, name);
    int row = 0;
    while (row < table.rows().rowCount() && !table.behind(row).contains(id)) ++row;
    REQUIRE(row < table.rows().rowCount());
    Q_EMIT table.behind_wanted(id);
    CHECK(desk.window().panel("evidence")->isVisible());
    CHECK(shows_row(desk, id));
  };
  check("deficit", "Muscles", "ECRL");
  check("deficit", "Movements", "ECRL");
  check("recovery", "Order of return", "ECRL");
  check("recovery", "Rows behind this answer", "latency_rabbit_crush_gutmann42");
}

TEST_CASE("every source of the recovery is listed, with the table that has it", "[panels]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("recovery");
  const auto& sources = desk.answers().recovery().answer->answer->sources;
  const auto& table = desk.find<RowTable>("recovery", "Rows behind this answer");
  REQUIRE(table.rows().rowCount() == static_cast<int>(sources.size()));
  for (int row = 0; row < table.rows().rowCount(); ++row) {
    const QString id = table.shown(row, 0);
    INFO(id.toStdString());
    CHECK(std::ranges::count(sources, id.toStdString()) == 1);
    CHECK(table.behind(row) == QStringList{id});
    CHECK_FALSE(table.shown(row, 3).isEmpty());
  }
}

TEST_CASE("Return on a row goes to the evidence behind it", "[panels]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("deficit");
  auto& table = desk.find<RowTable>("deficit", "Muscles");
  table.setFocus();
  table.choose(0);
  const QString id = table.behind(0).value(0);
  REQUIRE_FALSE(id.isEmpty());
  QTest::keyClick(&table, Qt::Key_Return);
  CHECK(desk.window().panel("evidence")->isVisible());
  CHECK(shows_row(desk, id));
}

}  // namespace endplate::ui
