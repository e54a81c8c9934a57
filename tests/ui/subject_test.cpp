// What is picked on the limb stands out in the tables, and what is chosen in a table on the limb.
#include <QMenu>
#include <QTest>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/pick_card.hpp"
#include "ui/panels/finding_table.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

Pick nerve_pick(const char* name) {
  Pick pick;
  pick.kind = PickKind::nerve;
  pick.name = name;
  return pick;
}

int row_of(const RowTable& table, int column, const QString& begins) {
  for (int row = 0; row < table.rows().rowCount(); ++row) {
    if (table.shown(row, column).startsWith(begins)) return row;
  }
  FAIL("no row " << begins.toStdString());
  return -1;
}

int count_pointed(const RowTable& table) {
  int count = 0;
  for (int row = 0; row < table.rows().rowCount(); ++row) {
    if (table.rows().is_pointed(row)) ++count;
  }
  return count;
}

void click(RowTable& table, int row) {
  const QModelIndex index = table.model()->index(row, 0);
  table.scrollTo(index);
  QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(index).center());
}

}  // namespace

TEST_CASE("rows about the nerve that was picked stand out in every table", "[stage]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  desk.ask("deficit");
  const auto& muscles = desk.find<RowTable>("deficit", "Muscles");
  CHECK(count_pointed(muscles) == 0);
  LimbView* view = desk.window().stage().view();
  Q_EMIT view->picked(nerve_pick("posterior interosseous nerve"));
  CHECK(muscles.rows().is_pointed(row_of(muscles, 1, "EPL  ")));
  CHECK_FALSE(muscles.rows().is_pointed(row_of(muscles, 1, "ECRL  ")));
  CHECK(count_pointed(desk.find<RowTable>("deficit", "Skin areas")) == 0);

  SECTION("also in panels that come to the front later, where the first is scrolled to") {
    desk.ask("recovery");
    auto& targets = desk.find<RowTable>("recovery", "Order of return");
    const int row = row_of(targets, 0, "extensor pollicis longus");
    CHECK(targets.rows().is_pointed(row));
    CHECK_FALSE(targets.rows().is_pointed(row_of(targets, 0, "brachioradialis")));
    desk.ask("examination");
    auto& findings = *desk.window().panel("examination")->findChild<FindingTable*>();
    int first = -1;
    for (int at = 0; at < findings.rowCount(); ++at) {
      const FindingRow& finding = findings.rows()[static_cast<std::size_t>(at)];
      if (finding.head) continue;
      if (finding.name == "EPL") CHECK(findings.is_pointed(at));
      if (finding.name == "ECRL") CHECK_FALSE(findings.is_pointed(at));
      if (first < 0 && findings.is_pointed(at)) first = at;
    }
    REQUIRE(first >= 0);
    CHECK(findings.visualItemRect(findings.item(first, 0)).intersects(findings.viewport()->rect()));
  }
  SECTION("its skin as well as its muscles") {
    Q_EMIT view->picked(nerve_pick("superficial branch of radial nerve"));
    CHECK_FALSE(muscles.rows().is_pointed(row_of(muscles, 1, "EPL  ")));
    const auto& areas = desk.find<RowTable>("deficit", "Skin areas");
    CHECK(areas.rows().is_pointed(row_of(areas, 1, "first dorsal web space")));
  }
  SECTION("a muscle without the others of its nerve") {
    Pick pick;
    pick.kind = PickKind::muscle;
    pick.name = "extensor carpi radialis longus";
    Q_EMIT view->picked(pick);
    CHECK(muscles.rows().is_pointed(row_of(muscles, 1, "ECRL  ")));
    CHECK(count_pointed(muscles) == 1);
  }
  SECTION("until nothing is picked") {
    Q_EMIT view->picked(Pick{});
    CHECK(count_pointed(muscles) == 0);
  }
  SECTION("still after the answer was reckoned anew") {
    Asked few = desk.answers().asked();
    few.samples = 100;
    desk.answers().set_asked(few);
    REQUIRE(desk.wait_idle());
    CHECK(muscles.rows().is_pointed(row_of(muscles, 1, "EPL  ")));
    CHECK_FALSE(muscles.rows().is_pointed(row_of(muscles, 1, "ECRL  ")));
  }
}

TEST_CASE("a row that stands out beyond the lower edge is scrolled to", "[stage]") {
  RowTable table("Many rows");
  table.resize(300, 200);
  table.show();
  std::vector<Line> lines;
  for (int i = 0; i < 150; ++i) lines.push_back({{{QString("row %1").arg(i)}}, {"a"}, {}});
  lines[120].about = QStringList{"b"};
  table.set({{"What", false, true}}, lines);
  const auto sight = [&] {
    return table.visualRect(table.model()->index(120, 0)).intersects(table.viewport()->rect());
  };
  CHECK_FALSE(sight());
  table.point_out({"b"});
  CHECK(wait_until(sight, 3000));
  // A reader who scrolled on is left there when the rows come again.
  table.scrollToTop();
  table.set({{"What", false, true}}, lines);
  wait_until([] { return false; }, 100);
  CHECK_FALSE(sight());
  CHECK(table.rows().is_pointed(120));
}

TEST_CASE("a row that was chosen stands out on the limb and in the other tables", "[stage]") {
  DeskUnderTest desk;
  REQUIRE(desk.window().open_file(example("humeral-shaft-radial-palsy")));
  LimbStage& stage = desk.window().stage();
  QStringList pointed{"nothing yet"};
  QObject::connect(&stage, &LimbStage::pointed_at, &stage,
                   [&](const QStringList& names) { pointed = names; });
  const auto* card = stage.findChild<PickCard*>();

  SECTION("a muscle, which is then shown") {
    desk.ask("deficit");
    CHECK_FALSE(stage.view()->layers().testFlag(Layer::muscles));
    CHECK(pointed == QStringList{"nothing yet"});
    auto& muscles = desk.find<RowTable>("deficit", "Muscles");
    click(muscles, row_of(muscles, 1, "ECRL  "));
    CHECK(pointed == QStringList{"ECRL"});
    CHECK(card->words().contains("Extensor carpi radialis longus"));
    CHECK(stage.view()->layers().testFlag(Layer::muscles));
    stage.point_out({});
    CHECK(pointed.isEmpty());
    CHECK(card->isHidden());
    CHECK_FALSE(stage.view()->layers().testFlag(Layer::muscles));
  }
  SECTION("the nerves and muscles of a transfer") {
    desk.ask("transfer");
    CHECK(pointed == QStringList{"nothing yet"});
    auto& table = desk.find<RowTable>("transfer", "Transfers side by side");
    click(table, 1);
    CHECK(pointed.size() > 1);
    CHECK(table.rows().is_pointed(table.chosen()));
    CHECK_FALSE(card->isHidden());
  }
  SECTION("a finding that the reader goes to, not one that follows what was entered") {
    desk.ask("examination");
    auto& findings = *desk.window().panel("examination")->findChild<FindingTable*>();
    findings.setFocus();
    findings.setCurrentCell(2, 2);
    const QString name = QString::fromStdString(findings.rows()[2].name);
    CHECK(pointed == QStringList{name});
    QTest::keyClick(&findings, Qt::Key_0);
    CHECK(findings.currentRow() == 3);
    CHECK(pointed == QStringList{name});
  }
}

}  // namespace endplate::ui
