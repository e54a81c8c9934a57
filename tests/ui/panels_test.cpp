// One case is entered from nothing through the panels, saved, and asked of the command line; every
// figure on the panels is then held against its JSON. Words for figures are made here anew.
#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QUndoStack>
#include <catch2/catch.hpp>
#include <cmath>

#include "tests/ui/desk_support.hpp"
#include "tests/ui/hand_entry.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/document/case_document.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"

template <>
struct Catch::StringMaker<QString> {
  static std::string convert(const QString& text) { return '"' + text.toStdString() + '"'; }
};

namespace endplate::ui {
namespace {

using nlohmann::json;

QString whole(double value) {
  const QString text = QString::number(value, 'f', 0);
  return text == "-0" ? "0" : text;
}

QString months(double days) {
  const double value = days / (365.25 / 12.0);
  return QString::number(value, 'f', value < 2.95 ? 1 : 0);
}

QString months(const json& days) {
  if (days.is_null()) return "-";
  return QString("%1 (%2-%3)")
      .arg(months(days["p50"].get<double>()), months(days["p05"].get<double>()),
           months(days["p95"].get<double>()));
}

QString chance(double share) {
  if (share <= 0.0) return "0 %";
  if (share < 0.025) return "under 5 %";
  if (share > 0.975) return "over 95 %";
  return QString("%1 %").arg(std::round(share * 20.0) * 5.0);
}

QString text(const json& value) {
  return value.is_null() ? QString() : QString::fromStdString(value.get<std::string>());
}

QStringList today_arguments(const QString& command, const QString& path) {
  return {command, path, "--today", "2026-10-01"};
}

TEST_CASE("a case entered through the panels is the case that is saved", "[panels]") {
  DeskUnderTest desk;
  const QString path = enter_a_case(desk);
  const json saved = json::parse(bytes_of(path));
  CHECK(saved["limb"]["side"] == "left");
  CHECK(saved["limb"]["age_years"] == 34);
  const json& injury = saved["injuries"][0];
  CHECK(injury["nerve"] == "radial nerve");
  CHECK(injury["at"] ==
        json{{"landmark", "lateral epicondyle"}, {"offset_mm", 120}, {"toward", "proximal"}});
  CHECK(injury["mechanism"] == "fracture or dislocation");
  CHECK(injury["nerve_seen"] == false);
  CHECK(injury["date"] == "2026-06-01");
  const json& muscles = saved["examination"]["muscles"];
  CHECK(muscles.size() == 8);
  CHECK(muscles[0] == json{{"muscle", "BR"}, {"mrc", 0}});
  CHECK(muscles[4] == json{{"muscle", "EPL"}, {"mrc", "4-"}});
  CHECK(saved["examination"]["sensation"][0] ==
        json{{"area", "first dorsal web space"}, {"state", "absent"}});
  CHECK(saved["examination"]["signs"][0] == json{{"sign", "wrist drop"}, {"state", "present"}});
  // All of it can be undone, to the bytes of an empty case.
  while (desk.document().steps().canUndo()) desk.document().steps().undo();
  CHECK(json::parse(desk.document().text()) == json{{"endplate_case", 1}});
}

void check_limb(DeskUnderTest& desk, const QString& path) {
  const json limb = program_json(today_arguments("limb", path));
  desk.ask("patient");
  const auto& sizes = desk.find<RowTable>("patient", "Size of the limb");
  const std::size_t count =
      limb["segments"].size() + limb["breadths"].size() + limb["girths"].size();
  REQUIRE(sizes.rows().rowCount() == static_cast<int>(count));
  for (std::size_t i = 0; i < limb["segments"].size(); ++i) {
    const json& size = limb["segments"][i]["length_mm"];
    CHECK(sizes.shown(static_cast<int>(i), 1) == whole(size["mean"]));
    CHECK(sizes.shown(static_cast<int>(i), 2) == whole(size["p05"]) + " to " + whole(size["p95"]));
  }
}

void check_injury(DeskUnderTest& desk, const QString& path) {
  const json check = program_json(today_arguments("check", path));
  desk.ask("injury");
  const QString echo = desk.find<QLabel>("injury", "echo").text();
  CHECK(echo.contains(text(check["injuries"][0]["place"])));
}

void check_decision(DeskUnderTest& desk, const QString& path) {
  const json recovery = program_json(today_arguments("recovery", path));
  desk.ask("decision");
  // After later visits the course that they show decides.
  const bool visited = json::parse(bytes_of(path)).contains("observations");
  const json followup = program_json(today_arguments("followup", path));
  const json& decision = visited ? followup["decision"] : recovery["decision"];
  CHECK(desk.find<QLabel>("decision", "next").text() == text(decision["next"]) + '.');
  if (!decision["by_date"].is_null() &&
      !(decision["by_from"] == "today" && decision["by_days"] == 0.0)) {
    CHECK(desk.find<QLabel>("decision", "by").text().startsWith(text(decision["by_date"])));
  }
  const json plan = program_json(today_arguments("plan", path));
  const auto& changes = desk.find<RowTable>("decision", "What would change the decision");
  REQUIRE(changes.rows().rowCount() == static_cast<int>(plan["would_change"].size()));
  if (visited) return;
  const auto& dates = desk.find<RowTable>("decision", "Dates");
  const json& appointments = recovery["schedule"]["appointments"];
  REQUIRE(dates.rows().rowCount() == static_cast<int>(appointments.size()));
  for (std::size_t i = 0; i < appointments.size(); ++i) {
    CHECK(dates.shown(static_cast<int>(i), 0) == text(appointments[i]["date"]));
    CHECK(dates.shown(static_cast<int>(i), 2) == text(appointments[i]["what"]));
  }
}

void check_recovery(DeskUnderTest& desk, const QString& path) {
  const json recovery = program_json(today_arguments("recovery", path));
  desk.ask("recovery");
  const auto& targets = desk.find<RowTable>("recovery", "Order of return");
  REQUIRE(targets.rows().rowCount() == static_cast<int>(recovery["targets"].size()));
  for (int row = 0; row < targets.rows().rowCount(); ++row) {
    const json& target = recovery["targets"][static_cast<std::size_t>(row)];
    CHECK(targets.shown(row, 0).contains(text(target["target"])));
    CHECK(targets.shown(row, 1) == whole(target["distance_mm"]["p50"]));
    CHECK(targets.shown(row, 2) == months(target["axons_arrive_days"]));
    CHECK(targets.shown(row, 3) == months(target["first_movement_days"]));
    CHECK(targets.shown(row, 4) == months(target["useful_days"]));
    CHECK(targets.shown(row, 5) == chance(target["chance_axons_in_time"]));
    const json& useful = target["chance_useful"];
    CHECK(targets.shown(row, 6) == (useful.is_null()
                                        ? QString("not said")
                                        : chance(useful["chance"]) + ' ' + text(useful["scale"])));
  }
  const auto& by_date = desk.find<RowTable>("recovery", "Chance by date of operation");
  const json& timing = recovery["operation_timing"]["chance_by_date"];
  REQUIRE(by_date.rows().rowCount() == static_cast<int>(timing.size()));
  for (int row = 0; row < by_date.rows().rowCount(); ++row) {
    const json& point = timing[static_cast<std::size_t>(row)];
    CHECK(by_date.shown(row, 0) == text(point["date"]));
    CHECK(by_date.shown(row, 2) == chance(point["chance"]));
  }
  const auto& tinel = desk.find<RowTable>("recovery", "Tinel schedule");
  const json& steps = recovery["tinel_schedule"]["steps"];
  REQUIRE(tinel.rows().rowCount() == static_cast<int>(steps.size()));
  for (int row = 0; row < tinel.rows().rowCount(); ++row) {
    const json& step = steps[static_cast<std::size_t>(row)];
    CHECK(tinel.shown(row, 0) == text(step["date"]));
    CHECK(tinel.shown(row, 1) == whole(step["advance_mm"]["p50"]));
  }
  const auto& sheet = desk.find<RowTable>("recovery", "What to look for");
  const json& lines = recovery["schedule"]["sheet"];
  REQUIRE(sheet.rows().rowCount() == static_cast<int>(lines.size()));
  for (int row = 0; row < sheet.rows().rowCount(); ++row) {
    const json& window = lines[static_cast<std::size_t>(row)]["window"];
    CHECK(sheet.shown(row, 2) == text(window["early"]));
    CHECK(sheet.shown(row, 4) == text(window["late"]));
  }
}

void check_deficit(DeskUnderTest& desk, const QString& path) {
  const json deficit = program_json(today_arguments("deficit", path));
  desk.ask("deficit");
  for (QCheckBox* box : desk.window().panel("deficit")->findChildren<QCheckBox*>()) {
    if (!box->isChecked()) box->click();
  }
  const auto& muscles = desk.find<RowTable>("deficit", "Muscles");
  REQUIRE(muscles.rows().rowCount() == static_cast<int>(deficit["muscles"].size()));
  for (const json& muscle : deficit["muscles"]) {
    bool found = false;
    for (int row = 0; row < muscles.rows().rowCount() && !found; ++row) {
      if (!muscles.shown(row, 1).startsWith(text(muscle["muscle"]) + "  ")) continue;
      found = true;
      CHECK(muscles.shown(row, 0) == text(muscle["state"]));
      CHECK(muscles.shown(row, 2) == text(muscle["examined"]));
      CHECK(muscles.shown(row, 3) == text(muscle["nerve"]));
    }
    CHECK(found);
  }
  const auto& areas = desk.find<RowTable>("deficit", "Skin areas");
  REQUIRE(areas.rows().rowCount() == static_cast<int>(deficit["areas"].size()));
  std::size_t movements = 0;
  for (const char* key : {"movements_lost", "movements_weakened", "movements_kept_by_others"}) {
    movements += deficit[key].size();
  }
  CHECK(desk.find<RowTable>("deficit", "Movements").rows().rowCount() ==
        static_cast<int>(movements));
}

void check_transfer(DeskUnderTest& desk, const QString& path) {
  const json transfer = program_json(today_arguments("transfer", path));
  desk.ask("transfer");
  const auto& table = desk.find<RowTable>("transfer", "Transfers side by side");
  REQUIRE(table.rows().rowCount() == static_cast<int>(transfer["candidates"].size()));
  for (int row = 0; row < table.rows().rowCount(); ++row) {
    const json& candidate = transfer["candidates"][static_cast<std::size_t>(row)];
    CHECK(table.shown(row, 1) == text(candidate["verdict"]));
    CHECK(table.shown(row, 2) == text(candidate["donor_state"]));
    const json& reach = candidate["reach"];
    const bool reckoned = !reach.is_null() && !reach["slack_mm"].is_null();
    CHECK(table.shown(row, 4) == (reckoned ? whole(reach["slack_mm"]["p50"]) : QString("-")));
    if (reckoned) {
      CHECK(table.shown(row, 3).contains(chance(reach["chance_without_graft"])));
    }
    const json& days = candidate["axons_arrive_days"];
    CHECK(table.shown(row, 5) ==
          (days.is_null() ? QString("-") : months(days["p50"].get<double>())));
  }
  CHECK(desk.find<RowTable>("transfer", "Rejected transfers").rows().rowCount() ==
        static_cast<int>(transfer["rejected"].size()));
  CHECK(desk.find<RowTable>("transfer", "Transfers that go together").rows().rowCount() ==
        static_cast<int>(transfer["combination"].size() + transfer["combination_if_shown"].size()));
}

void check_plan(DeskUnderTest& desk, const QString& path) {
  const json plan = program_json(today_arguments("plan", path));
  desk.ask("plan");
  const auto& table = desk.find<RowTable>("plan", "Options side by side");
  REQUIRE(table.rows().rowCount() == static_cast<int>(plan["options"].size()));
  for (int row = 0; row < table.rows().rowCount(); ++row) {
    const json& option = plan["options"][static_cast<std::size_t>(row)];
    CHECK(table.shown(row, 0).toLower() == text(option["option"]).toLower());
    if (option["state"] == "not an option" || plan.contains("not_run")) continue;
    const json& model = option["model_chance_useful"];
    CHECK(table.shown(row, 3) ==
          (model.is_null() ? QString("-") : chance(model["chance"]) + ' ' + text(model["scale"])));
    CHECK(table.shown(row, 4) == months(option["first_movement_days"]));
  }
}

TEST_CASE("every figure of the panels is the command line's", "[panels]") {
  DeskUnderTest desk;
  const QString path = enter_a_case(desk);
  check_limb(desk, path);
  check_injury(desk, path);
  check_deficit(desk, path);
  check_recovery(desk, path);
  check_decision(desk, path);
  check_transfer(desk, path);
  check_plan(desk, path);
}

TEST_CASE("the figures of an upper trunk lesion are the command line's", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("upper-trunk-injury");
  REQUIRE(desk.window().open_file(path));
  check_deficit(desk, path);
  check_recovery(desk, path);
  check_decision(desk, path);
  check_transfer(desk, path);
  check_plan(desk, path);
}

TEST_CASE("after later visits the decision is that of the follow-up", "[panels]") {
  DeskUnderTest desk;
  for (const char* name : {"humeral-shaft-radial-palsy", "median-repair-without-advance"}) {
    REQUIRE(desk.window().open_file(example(name)));
    check_decision(desk, example(name));
  }
}

TEST_CASE("the cut of a case and a named approach are the command line's", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("humeral-shaft-radial-palsy");
  REQUIRE(desk.window().open_file(path));
  desk.ask("incision");
  const auto& table = desk.find<RowTable>("incision", "Nerves near the cut");
  const auto check = [&](const json& incision) {
    int row = 0;
    for (const json& nerve : incision["nerves"]) {
      if (nerve["nearest_mm"]["p50"] > 40.0) continue;
      REQUIRE(row < table.rows().rowCount());
      CHECK(table.shown(row, 0) == text(nerve["nerve"]));
      const json& mm = nerve["nearest_mm"];
      CHECK(table.shown(row, 1) ==
            QString("%1 (%2-%3)").arg(whole(mm["p50"]), whole(mm["p05"]), whole(mm["p95"])));
      for (int k = 0; k < 4; ++k) {
        QString shown = table.shown(row, 4 + k);
        shown.replace("<", "under ").replace(">", "over ");
        CHECK(shown == chance(nerve["chance_within"][static_cast<std::size_t>(k)]["chance"]));
      }
      ++row;
    }
    CHECK(row == table.rows().rowCount());
    CHECK(row > 0);
  };
  check(program_json(today_arguments("incision", path)));
  IncisionRequest request;
  request.approach = "posterior humerus";
  desk.answers().set_incision(request);
  REQUIRE(desk.wait_idle());
  check(program_json(today_arguments("incision", path) << "--approach"
                                                       << "posterior humerus"));
}

TEST_CASE("the evidence is the command line's", "[panels]") {
  DeskUnderTest desk;
  desk.ask("evidence");
  desk.answers().set_evidence({"posterior interosseous", "", ""});
  REQUIRE(desk.wait_idle());
  const json evidence = program_json({"evidence", "posterior", "interosseous"});
  const auto& table = desk.find<RowTable>("evidence", "Quantities");
  const std::size_t quantities = evidence["quantities"].size();
  const std::size_t count = quantities + evidence["proportions"].size() + evidence["rows"].size();
  REQUIRE(table.rows().rowCount() == static_cast<int>(count));
  std::size_t pooled_ones = 0;
  for (std::size_t i = 0; i < quantities; ++i) {
    const json& quantity = evidence["quantities"][i];
    const int row = static_cast<int>(i);
    CHECK(table.shown(row, 0) == text(quantity["quantity"]));
    const json& pooled = quantity["pooled"];
    if (pooled.is_null()) {
      CHECK(table.shown(row, 2) == "not pooled");
      continue;
    }
    ++pooled_ones;
    // Shown toward the side on which the mean lies.
    const double mean = pooled["pooled_mean_mm"]["mean"];
    const QString shown = table.shown(row, 2).section(' ', 0, 0);
    CHECK((shown == whole(mean) || shown == whole(-mean)));
    CHECK(table.shown(row, 1).toInt() == static_cast<int>(pooled["studies"].size()));
  }
  CHECK(pooled_ones > 5);
}

TEST_CASE("every example case is shown, with its side in capitals", "[panels]") {
  DeskUnderTest desk;
  for (const QFileInfo& file :
       QDir(ENDPLATE_SOURCE_DIR "/datasets/cases").entryInfoList({"*.json"}, QDir::Files)) {
    INFO(file.fileName().toStdString());
    REQUIRE(desk.window().open_file(file.filePath()));
    const json given = json::parse(bytes_of(file.filePath()));
    const bool left = given["limb"].value("side", "right") == "left";
    for (const char* question : {"decision", "deficit", "recovery"}) {
      Panel& panel = desk.ask(question);
      CHECK(panel.head_text().contains(left ? "LEFT LIMB" : "RIGHT LIMB"));
      CHECK(panel.findChild<QLabel*>("caution") != nullptr);
    }
  }
}

TEST_CASE("a table is saved as it is shown", "[panels]") {
  RowTable table("Test");
  table.set({{"Name"}, {"mm", true}}, {{{"a \"b\""}, {"10", 10.0}}, {{"c, d"}, {"9", 9.0}}});
  CHECK(table.csv() == "\"Name\",\"mm\"\r\n\"a \"\"b\"\"\",\"10\"\r\n\"c, d\",\"9\"\r\n");
  table.sortByColumn(1, Qt::AscendingOrder);
  CHECK(table.csv().startsWith("\"Name\",\"mm\"\r\n\"c, d\",\"9\""));
}

}  // namespace
}  // namespace endplate::ui
