#pragma once
// One limb in a window of the size of the desk's view, and waiting for what it does.
#include <QImage>
#include <QTest>
#include <catch2/catch.hpp>
#include <memory>
#include <optional>

#include "models/anatomy/anatomy.hpp"
#include "models/evidence/data_package.hpp"
#include "models/limb/limb_scene.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/view/scene_pick.hpp"

namespace endplate::ui {

inline const evidence::DataPackage& own_tables() {
  static const auto package = evidence::DataPackage::read(ENDPLATE_SOURCE_DIR "/datasets");
  REQUIRE(package.has_value());
  return *package;
}

inline const anatomy::Anatomy& own_anatomy() {
  static const auto anatomy = anatomy::Anatomy::from(own_tables());
  REQUIRE(anatomy.has_value());
  return *anatomy;
}

inline std::shared_ptr<const limb::SceneLimb> limb_of(Side side) {
  const auto make = [](Side of) {
    casefile::Limb limb;
    limb.side = of;
    limb.side_given = true;
    const auto made = limb::SceneLimb::from(own_tables(), own_anatomy(), limb);
    REQUIRE(made.has_value());
    return std::make_shared<const limb::SceneLimb>(*made);
  };
  static const auto right = make(Side::right);
  static const auto left = make(Side::left);
  return side == Side::right ? right : left;
}

// Until the limb in the pose last asked for has settled and is on the screen.
inline void wait_for_limb(LimbView& view) {
  bool held = false;
  const auto connection =
      QObject::connect(&view, &LimbView::pose_shown, &view, [&](bool by_skin) { held = by_skin; });
  REQUIRE(QTest::qWaitFor([&] { return held; }, 20000));
  QObject::disconnect(connection);
  QTest::qWait(50);
}

// What is on the screen once all that was asked for is.
inline QImage grab(LimbView& view) {
  REQUIRE(QTest::qWaitFor([&] { return view.is_up_to_date(); }, 20000));
  return view.shown();
}

inline QImage taken(LimbView& view, const QSize& size, PaletteKind kind = PaletteKind::print) {
  std::optional<QImage> picture;
  view.take_picture(
      size, [&](const QImage& made) { picture = made; }, kind);
  REQUIRE(QTest::qWaitFor([&] { return picture.has_value(); }, 20000));
  return *picture;
}

struct Shown {
  explicit Shown(Side side = Side::right, const limb::Pose& pose = {}) {
    // The screen's pixels stay the same at every scale.
    const double ratio = view.devicePixelRatioF();
    view.resize(qRound(1000.0 / ratio), qRound(780.0 / ratio));
    view.show();
    REQUIRE(QTest::qWaitForWindowExposed(&view));
    view.show_limb(limb_of(side), pose);
    wait_for_limb(view);
  }
  LimbView view;
};

}  // namespace endplate::ui
