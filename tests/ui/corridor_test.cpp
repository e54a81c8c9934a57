// The line of least risk beside a cut: asked of the panel, the command line's figures, on the limb.
#include <QCheckBox>
#include <QLabel>
#include <QSpinBox>
#include <catch2/catch.hpp>
#include <cmath>

#include "models/incision/incision.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/panels/corridor_page.hpp"
#include "ui/panels/panel.hpp"
#include "ui/panels/row_table.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

using nlohmann::json;

QString chance(double share) {
  if (share <= 0.0) return "0 %";
  if (share < 0.025) return "under 5 %";
  if (share > 0.975) return "over 95 %";
  return QString("%1 %").arg(std::round(share * 20.0) * 5.0);
}

QSpinBox& spin(QWidget& in, const QString& name) {
  for (auto* box : in.findChildren<QSpinBox*>()) {
    if (box->accessibleName() == name) return *box;
  }
  throw std::runtime_error("no field " + name.toStdString());
}

}  // namespace

TEST_CASE("the corridor of the panel is the command line's and lies on the limb", "[panels]") {
  DeskUnderTest desk;
  const QString path = example("humeral-shaft-radial-palsy");
  REQUIRE(desk.window().open_file(path));
  desk.ask("incision");
  LimbView* view = desk.window().stage().view();
  REQUIRE(wait_until([&] { return view->scene() != nullptr; }));
  auto& page = *desk.window().panel("incision")->findChild<CorridorPage*>();
  auto& words = desk.find<QLabel>("incision", "corridor");
  CHECK(words.text().isEmpty());
  REQUIRE(desk.answers().incision().answer != nullptr);
  CHECK_FALSE(desk.answers().incision().answer->corridor.has_value());
  QStringList asked{"incision", path, "--today", "2026-10-01"};

  page.findChild<QCheckBox*>()->click();
  REQUIRE(desk.wait_idle());
  const auto check = [&](const char* beside, const char* within) {
    const json document =
        program_json(QStringList(asked) << "--corridor" << beside << "--within" << within);
    const json& corridor = document["corridor"];
    CHECK(words.text().contains(QString("within %1 mm").arg(within)));
    CHECK(words.text().contains(chance(corridor["wanted_chance"])));
    if (corridor["moved"].get<bool>()) CHECK(words.text().contains(chance(corridor["chance"])));
    const auto& held = desk.answers().incision().answer;
    REQUIRE((held != nullptr && held->corridor.has_value()));
    CHECK(held->corridor->moved == corridor["moved"].get<bool>());
    const auto& table = desk.find<RowTable>("incision", "Line of least risk");
    REQUIRE(table.rows().rowCount() > 1);
    CHECK(table.shown(table.rows().rowCount() - 1, 1) == "on the cut");
    return corridor["moved"].get<bool>();
  };
  // Along this cut no line has less.
  CHECK_FALSE(check("20", "5"));
  const auto lies_on_limb = [&] {
    REQUIRE(wait_until([&] { return view->is_up_to_date(); }));
    return std::ranges::count(view->layout().texts, QString("least risk")) == 1;
  };
  CHECK_FALSE(lies_on_limb());
  CHECK(words.text().contains("No line beside it has less."));

  spin(page, "How near a nerve counts, mm").setValue(10);
  spin(page, "How far beside the cut, mm").setValue(30);
  REQUIRE(desk.wait_idle());
  check("30", "10");

  SECTION("a cut that a nerve crosses is led beside it") {
    const QString marks =
        "lateral epicondyle, 10 proximal, on lateral; lateral epicondyle, 80 proximal, on lateral";
    asked << "--line" << marks << "--depth"
          << "10";
    IncisionRequest request = desk.answers().incision_request();
    request.marks = marks.toStdString();
    request.depth_mm = 10.0;
    request.corridor_mm = 20.0;
    request.corridor_within_mm = 5.0;
    desk.answers().set_incision(request);
    REQUIRE(desk.wait_idle());
    CHECK(check("20", "5"));
    CHECK(words.text().contains("On the line of least risk: "));
    CHECK(lies_on_limb());
    // What is drawn is what was answered.
    const auto& held = desk.answers().incision().answer;
    const auto& places = held->corridor->places;
    const auto farthest =
        std::ranges::max(places, {}, [](const auto& place) { return std::abs(place.offset_mm); });
    CHECK(words.text().contains(
        QString("by up to %1 mm").arg(std::lround(std::abs(farthest.offset_mm)))));
  }
  SECTION("a portal has none") {
    IncisionRequest request = desk.answers().incision_request();
    request.marks = "lateral epicondyle, 20 proximal";
    request.kind = "portal";
    desk.answers().set_incision(request);
    REQUIRE(desk.wait_idle());
    REQUIRE(desk.answers().incision().answer != nullptr);
    CHECK_FALSE(desk.answers().incision().answer->corridor.has_value());
    CHECK(words.text() == "Nothing but a line over the skin has one.");
  }
  SECTION("another case is not asked for one") {
    REQUIRE(desk.window().open_file(example("high-median-injury")));
    CHECK_FALSE(page.findChild<QCheckBox*>()->isChecked());
    CHECK_FALSE(desk.answers().incision_request().corridor_mm.has_value());
  }
}

}  // namespace endplate::ui
