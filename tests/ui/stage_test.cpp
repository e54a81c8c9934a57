// What is done on the limb becomes an edit of the case or a question.
#include <QCheckBox>
#include <QUndoStack>
#include <catch2/catch.hpp>

#include "models/incision/incision.hpp"
#include "tests/ui/desk_support.hpp"
#include "ui/answers/answer_runner.hpp"
#include "ui/app/limb_stage.hpp"
#include "ui/app/risk_bar.hpp"
#include "ui/app/risk_layer.hpp"
#include "ui/document/case_document.hpp"
#include "ui/view/limb_view.hpp"

namespace endplate::ui {
namespace {

LimbView& shown_limb(DeskUnderTest& desk, const char* name) {
  REQUIRE(desk.window().open_file(example(name)));
  LimbView* view = desk.window().stage().view();
  REQUIRE(view != nullptr);
  REQUIRE(wait_until([&] { return view->scene() != nullptr; }));
  return *view;
}

}  // namespace

TEST_CASE("the limb of a left arm is a left one", "[stage]") {
  DeskUnderTest desk;
  LimbView& view = shown_limb(desk, "ulnar-laceration-at-wrist");
  CHECK(wait_until([&] { return view.scene()->shape->side == Side::left; }));
}

TEST_CASE("the limb is drawn in a picture of another size", "[stage]") {
  DeskUnderTest desk;
  LimbView& view = shown_limb(desk, "humeral-shaft-radial-palsy");
  for (const int less : {0, 40, 80}) {
    view.resize(view.size() - QSize(0, less));
    REQUIRE(wait_until([&] {
      const QSize wanted = view.size() * view.devicePixelRatioF();
      return view.is_up_to_date() && view.shown().size() == wanted;
    }));
    // Nothing of the limb and its ground is quite black.
    const QImage picture = view.shown().convertToFormat(QImage::Format_RGB32);
    int black = 0;
    for (int y = 0; y < picture.height(); ++y) {
      for (int x = 0; x < picture.width(); ++x) {
        if (picture.pixel(x, y) == qRgb(0, 0, 0)) ++black;
      }
    }
    CHECK(black < picture.width() * picture.height() / 100);
  }
}

TEST_CASE("a mark that was dragged moves the injury, and undo brings it back", "[stage]") {
  DeskUnderTest desk;
  LimbView& view = shown_limb(desk, "humeral-shaft-radial-palsy");
  const std::string before = desk.document().text();
  Q_EMIT view.lesion_dropped(0, "radial nerve", 130.4);
  CHECK(desk.document().text_at("/injuries/0/at/branch") == "radial nerve");
  CHECK(desk.document().number_at("/injuries/0/at/from_origin_mm") == 130.0);
  CHECK(desk.document().read().has_value());
  desk.document().steps().undo();
  CHECK(desk.document().text() == before);
}

TEST_CASE("a line drawn on the skin is judged", "[stage]") {
  DeskUnderTest desk;
  LimbView& view = shown_limb(desk, "humeral-shaft-radial-palsy");
  // Two places of the skin some way apart, wherever they are.
  const SkinSpot from{view.scene()->shape->skin.size() / 2, {1.0, 0.0, 0.0}};
  const SkinSpot to{view.scene()->shape->skin.size() / 2 + 40, {1.0, 0.0, 0.0}};
  Q_EMIT view.incision_drawn({from, to}, {from, to});
  REQUIRE(desk.answers().incision_request().picked_mm.size() == 2);
  REQUIRE(wait_until([&] {
    const auto& held = desk.answers().incision();
    return !held.stale && (held.answer != nullptr || held.error.has_value());
  }));
  const auto& held = desk.answers().incision();
  REQUIRE(held.answer != nullptr);
  CHECK(held.answer->label == "drawn on the limb");
  const Eigen::Vector3d first = held.answer->cut.stations.front().skin.position_mm;
  const auto& picked = desk.answers().incision_request().picked_mm.front();
  CHECK((first - Eigen::Vector3d(picked[0], picked[1], picked[2])).norm() < 1.0);
}

TEST_CASE("the map of risk colours the skin with chances", "[stage]") {
  DeskUnderTest desk;
  shown_limb(desk, "humeral-shaft-radial-palsy");
  desk.ask("incision");
  LimbStage& stage = desk.window().stage();
  auto* layer = stage.findChild<RiskLayer*>();
  auto* bar = stage.findChild<RiskBar*>();
  REQUIRE((layer != nullptr && bar != nullptr));
  std::vector<float> map;
  QObject::connect(layer, &RiskLayer::ready, &stage,
                   [&](const std::vector<float>& chances, const RiskWish&) { map = chances; });
  bar->findChild<QCheckBox*>()->setChecked(true);
  REQUIRE(wait_until([&] { return !map.empty(); }));
  CHECK(map.size() == stage.view()->scene()->skin_mm.size());
  const auto [least, most] = std::ranges::minmax(map);
  CHECK(least >= 0.0F);
  CHECK(most <= 1.0F);
  CHECK(most > 0.9F);
  CHECK(least < 0.1F);
}

}  // namespace endplate::ui
