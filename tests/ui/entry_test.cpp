// What the case file holds and is entered on the desk: each field makes its keys and nothing else,
// and undo brings the bytes back.
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>
#include <QUndoStack>
#include <catch2/catch.hpp>

#include "models/incision/incision.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/finding_table.hpp"
#include "ui/panels/incision_editor.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/ultrasound_editor.hpp"

namespace endplate::ui {
namespace {

using nlohmann::json;

void type(QLineEdit& line, const QString& words) {
  line.setFocus();
  line.selectAll();
  line.del();
  QTest::keyClicks(&line, words);
  QTest::keyClick(&line, Qt::Key_Return);
}

void type(QComboBox& box, const QString& words) {
  type(*box.lineEdit(), words);
}

void pick(QComboBox& box, const QString& words) {
  const int index = box.findText(words);
  REQUIRE(index >= 0);
  box.setCurrentIndex(index);
  Q_EMIT box.activated(index);
}

QPushButton& button(QWidget& in, const QString& words) {
  for (auto* one : in.findChildren<QPushButton*>()) {
    if (one->text() == words || one->accessibleName() == words) return *one;
  }
  throw std::runtime_error("no button " + words.toStdString());
}

json now(DeskUnderTest& desk) {
  return json::parse(desk.document().text());
}

// All that was done since is undone, to the byte.
void check_undo(DeskUnderTest& desk, const QString& path) {
  while (desk.document().steps().canUndo()) desk.document().steps().undo();
  CHECK(desk.document().text() == bytes_of(path));
}

}  // namespace

TEST_CASE("both arms are measured side by side", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("shortened-arm-after-a-growth-arrest");
  REQUIRE(desk.window().open_file(path));
  desk.ask("patient");
  auto& other = desk.find<QLineEdit>("patient", "/limb/measured_other_side/arm length");
  CHECK(other.text() == "291");
  CHECK(desk.find<QLineEdit>("patient", "/limb/measured/arm length").text() == "248");
  json expected = now(desk);
  expected["limb"]["measured_other_side"]["arm length"] = 288;
  type(other, "288");
  CHECK(now(desk) == expected);
  CHECK(desk.document().read().has_value());
  expected["limb"]["measured_other_side"].erase("arm length");
  type(other, "");
  CHECK(now(desk) == expected);
  check_undo(desk, path);
}

TEST_CASE("the stature is given in millimetres or by its percentile, not both", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("shortened-arm-after-a-growth-arrest");
  REQUIRE(desk.window().open_file(path));
  desk.ask("patient");
  auto& stature = desk.find<QLineEdit>("patient", "/limb/stature_mm");
  auto& percentile = desk.find<QLineEdit>("patient", "/limb/stature_percentile");
  CHECK(percentile.text() == "30");
  CHECK_FALSE(stature.isEnabled());
  json expected = now(desk);
  type(percentile, "");
  expected["limb"].erase("stature_percentile");
  CHECK(now(desk) == expected);
  CHECK(stature.isEnabled());
  type(stature, "1520");
  expected["limb"]["stature_mm"] = 1520;
  CHECK(now(desk) == expected);
  CHECK_FALSE(percentile.isEnabled());
  check_undo(desk, path);
}

TEST_CASE("a point found by ultrasound is entered and moves the limb's answer", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("humeral-shaft-radial-palsy");
  REQUIRE(desk.window().open_file(path));
  json expected = now(desk);
  desk.ask("patient");
  auto& editor = *desk.window().panel("patient")->findChild<UltrasoundEditor*>();
  button(editor, "Add: point found by ultrasound").click();
  type(desk.find<QComboBox>("patient", "/limb/ultrasound/0/nerve"), "radial nerve");
  auto& point = desk.find<QComboBox>("patient", "/limb/ultrasound/0/point");
  CHECK(point.findText("bifurcation") >= 0);
  CHECK(point.findText("pierces: lateral intermuscular septum") >= 0);
  type(point, "bifurcation");
  type(desk.find<QLineEdit>("patient", "/limb/ultrasound/0/at/offset_mm"), "8");
  pick(desk.find<QComboBox>("patient", "/limb/ultrasound/0/at/toward"), "proximal");
  type(desk.find<QComboBox>("patient", "/limb/ultrasound/0/at/landmark"), "lateral epicondyle");
  type(desk.find<QLineEdit>("patient", "/limb/ultrasound/0/error_mm"), "3");
  expected["limb"]["ultrasound"] = json::array(
      {{{"nerve", "radial nerve"},
        {"point", "bifurcation"},
        {"at", {{"offset_mm", 8}, {"toward", "proximal"}, {"landmark", "lateral epicondyle"}}},
        {"error_mm", 3}}});
  CHECK(now(desk) == expected);
  CHECK(desk.document().read().has_value());
  REQUIRE(desk.wait_idle());
  CHECK_FALSE(desk.answers().limb().error.has_value());
  button(editor, "Remove: point found by ultrasound").click();
  CHECK_FALSE(now(desk)["limb"].contains("ultrasound"));
  check_undo(desk, path);
}

TEST_CASE("an area has its S grade and its two-point distance beside its state", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("humeral-shaft-radial-palsy");
  REQUIRE(desk.window().open_file(path));
  desk.ask("examination");
  auto& table = *desk.window().panel("examination")->findChild<FindingTable*>();
  auto& grade = desk.find<QComboBox>("examination", "s grade");
  auto& distance = desk.find<QLineEdit>("examination", "two points");
  const auto row_of = [&](const std::string& name) {
    for (std::size_t i = 0; i < table.rows().size(); ++i) {
      if (table.rows()[i].name == name) return static_cast<int>(i);
    }
    FAIL("no row " << name);
    return -1;
  };
  table.setCurrentCell(1, 2);
  CHECK_FALSE(grade.isEnabled());
  CHECK_FALSE(distance.isEnabled());
  const std::string area = "first dorsal web space";
  table.setCurrentCell(row_of(area), 2);
  REQUIRE(grade.isEnabled());
  const auto entry = [&]() -> json {
    const json document = now(desk);
    if (!document["examination"].contains("sensation")) return {};
    for (const json& one : document["examination"]["sensation"]) {
      if (one["area"] == area) return one;
    }
    return {};
  };
  json expected = entry();
  if (expected.is_null()) expected = {{"area", area}};
  pick(grade, "S2");
  expected["s_grade"] = "S2";
  CHECK(entry() == expected);
  type(distance, "12");
  expected["two_point_mm"] = 12;
  CHECK(entry() == expected);
  CHECK(desk.document().read().has_value());
  const QString words = FindingTable::words(table.rows()[static_cast<std::size_t>(row_of(area))]);
  CHECK(words.contains("S2"));
  CHECK(words.contains("12 mm"));
  CHECK(table.currentRow() == row_of(area));
  // The grade goes, the distance stays.
  pick(grade, "S grade not known");
  expected.erase("s_grade");
  CHECK(entry() == expected);
  type(distance, "");
  expected.erase("two_point_mm");
  CHECK(entry() == (expected.size() > 1 ? expected : json()));
  check_undo(desk, path);
}

TEST_CASE("an incision is entered, judged and taken away", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("ulnar-laceration-at-wrist");
  REQUIRE(desk.window().open_file(path));
  json expected = now(desk);
  REQUIRE_FALSE(expected.contains("incisions"));
  desk.ask("incision");
  auto& editor = *desk.window().panel("incision")->findChild<IncisionEditor*>();
  button(editor, "Add: incision").click();
  type(desk.find<QLineEdit>("incision", "/incisions/0/label"), "along the ulnar nerve");
  pick(desk.find<QComboBox>("incision", "/incisions/0/kind"), "line");
  type(desk.find<QLineEdit>("incision", "/incisions/0/depth_mm"), "10");
  const auto mark = [&](int at, const QString& offset) {
    const QString point = QString("/incisions/0/points/%1").arg(at);
    type(desk.find<QLineEdit>("incision", point + "/offset_mm"), offset);
    pick(desk.find<QComboBox>("incision", point + "/toward"), "proximal");
    type(desk.find<QComboBox>("incision", point + "/landmark"), "medial epicondyle");
    pick(desk.find<QComboBox>("incision", point + "/surface"), "medial");
  };
  mark(0, "20");
  button(editor, "Add: mark").click();
  mark(1, "90");
  const auto point = [](int offset) {
    return json{{"offset_mm", offset},
                {"toward", "proximal"},
                {"landmark", "medial epicondyle"},
                {"surface", "medial"}};
  };
  expected["incisions"] = json::array({{{"kind", "line"},
                                        {"points", {point(20), point(90)}},
                                        {"label", "along the ulnar nerve"},
                                        {"depth_mm", 10}}});
  CHECK(now(desk) == expected);
  REQUIRE(desk.document().read().has_value());
  button(editor, "Judge this incision").click();
  REQUIRE(desk.wait_idle());
  const auto& held = desk.answers().incision();
  REQUIRE(held.answer != nullptr);
  CHECK(held.answer->label == "along the ulnar nerve");
  CHECK(held.answer->cut.length_mm > 50.0);
  button(editor, "Remove: incision").click();
  expected.erase("incisions");
  CHECK(now(desk) == expected);
  check_undo(desk, path);
}

}  // namespace endplate::ui
