#include "tests/ui/hand_entry.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>
#include <catch2/catch.hpp>

#include "tests/ui/desk_support.hpp"
#include "ui/panels/finding_table.hpp"
#include "ui/panels/panel.hpp"

namespace endplate::ui {
namespace {

void type(QLineEdit& line, const QString& words) {
  line.setFocus();
  line.selectAll();
  QTest::keyClicks(&line, words);
  QTest::keyClick(&line, Qt::Key_Return);
}

void type(QComboBox& box, const QString& words) {
  box.lineEdit()->setFocus();
  box.lineEdit()->selectAll();
  QTest::keyClicks(box.lineEdit(), words);
  QTest::keyClick(box.lineEdit(), Qt::Key_Return);
}

// The choice of a closed list, as a click on its entry does.
void pick(QComboBox& box, const QString& words) {
  const int index = box.findText(words);
  REQUIRE(index >= 0);
  box.setCurrentIndex(index);
  Q_EMIT box.activated(index);
}

}  // namespace

QString enter_a_case(DeskUnderTest& desk) {
  desk.ask("patient");
  desk.find<QRadioButton>("patient", "side left").click();
  pick(desk.find<QComboBox>("patient", "/limb/dominant_side"), "right");
  pick(desk.find<QComboBox>("patient", "/limb/sex"), "female");
  type(desk.find<QLineEdit>("patient", "/limb/age_years"), "34");
  type(desk.find<QLineEdit>("patient", "/limb/stature_mm"), "1650");
  type(desk.find<QLineEdit>("patient", "/label"), "entered by hand");

  desk.ask("injury");
  desk.find<QPushButton>("injury", "add injury").click();
  type(desk.find<QComboBox>("injury", "/injuries/0/nerve"), "radial nerve");
  for (QComboBox* way : desk.window().panel("injury")->findChildren<QComboBox*>()) {
    if (way->accessibleName() == "How the place is given") pick(*way, "by a landmark");
  }
  type(desk.find<QLineEdit>("injury", "/injuries/0/at/offset_mm"), "120");
  pick(desk.find<QComboBox>("injury", "/injuries/0/at/toward"), "proximal");
  type(desk.find<QComboBox>("injury", "/injuries/0/at/landmark"), "lateral epicondyle");
  pick(desk.find<QComboBox>("injury", "/injuries/0/mechanism"), "fracture or dislocation");
  pick(desk.find<QComboBox>("injury", "/injuries/0/nerve_seen"), "no");
  type(desk.find<QLineEdit>("injury", "/injuries/0/date"), "2026-06-01");
  REQUIRE(desk.wait_idle());

  desk.ask("examination");
  auto& table = *desk.window().panel("examination")->findChild<FindingTable*>();
  type(desk.find<QLineEdit>("examination", "/examination/date"), "2026-06-29");
  REQUIRE(desk.wait_idle());
  const auto row_of = [&](const std::string& name) {
    for (std::size_t i = 0; i < table.rows().size(); ++i) {
      if (table.rows()[i].name == name) return static_cast<int>(i);
    }
    FAIL("no row " << name);
    return -1;
  };
  table.setFocus();
  for (const char* muscle : {"BR", "ECRL", "ECRB", "ED"}) {
    table.setCurrentCell(row_of(muscle), 2);
    QTest::keyClick(&table, Qt::Key_0);
  }
  table.setCurrentCell(row_of("EPL"), 2);
  QTest::keyClick(&table, Qt::Key_4);
  QTest::keyClick(&table, Qt::Key_Minus);
  table.setCurrentCell(row_of("first dorsal web space"), 2);
  QTest::keyClick(&table, Qt::Key_A);
  table.setCurrentCell(row_of("wrist drop"), 2);
  QTest::keyClick(&table, Qt::Key_P);
  // A donor that the injury does not touch stands in the long list.
  for (QCheckBox* box : desk.window().panel("examination")->findChildren<QCheckBox*>())
    box->click();
  for (const char* muscle : {"FCR", "PT", "FCU"}) {
    table.setCurrentCell(row_of(muscle), 2);
    QTest::keyClick(&table, Qt::Key_5);
  }
  const QString path = desk.folder() + "/entered.json";
  REQUIRE(desk.window().save_to(path));
  return path;
}

}  // namespace endplate::ui
