#include "ui/view/limb_view.hpp"

#include <QMainWindow>
#include <QSignalSpy>
#include <QVBoxLayout>
#include <cmath>

#include "view_fixture.hpp"

namespace endplate::ui {
namespace {

// Of the pixels that are not the background.
double drawn_share(const QImage& image, const QColor& background) {
  int drawn = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      const QColor pixel = image.pixelColor(x, y);
      const int away = std::abs(pixel.red() - background.red()) +
                       std::abs(pixel.green() - background.green()) +
                       std::abs(pixel.blue() - background.blue());
      if (away > 12) ++drawn;
    }
  }
  return static_cast<double>(drawn) / (image.width() * image.height());
}

QColor background_of(PaletteKind kind = PaletteKind::light) {
  return palette_of(kind).background;
}

// Without names, scale and side.
QImage bare_picture(LimbView& view) {
  view.set_layer(Layer::labels, false);
  QTest::qWait(30);
  return grab(view);
}

Eigen::Vector3d on_nerve(const LimbView& view, const char* nerve, double share) {
  const auto scene = view.scene();
  const auto index = scene->shape->find_nerve(nerve);
  REQUIRE(index.has_value());
  return scene->place_mm({*index, share * scene->shape->nerves[*index].length_mm});
}

Eigen::Vector3d landmark(const LimbView& view, const char* name) {
  const auto scene = view.scene();
  for (std::size_t i = 0; i < scene->shape->landmarks.size(); ++i) {
    if (scene->shape->landmarks[i] == name) return scene->landmarks_mm[i];
  }
  FAIL("no landmark is called " << name);
  return {};
}

void click(LimbView& view, const QPointF& at) {
  QTest::mouseClick(&view, Qt::LeftButton, {}, at.toPoint());
}

}  // namespace

TEST_CASE("The limb is in the picture, with its nerves in their colours", "[view]") {
  Shown shown;
  const QImage picture = bare_picture(shown.view);
  const double share = drawn_share(picture, background_of());
  CHECK(share > 0.05);
  CHECK(share < 0.9);
  for (const char* nerve : {"median nerve", "ulnar nerve", "radial nerve"}) {
    // Somewhere along it the picture has its hue.
    const auto scene = shown.view.scene();
    const auto family = scene->shape->nerves[*scene->shape->find_nerve(nerve)].family;
    const QColor own = nerve_colour(palette_of(PaletteKind::light), family, limb::NerveRank::great);
    int seen = 0;
    for (int k = 1; k < 60; ++k) {
      const QPointF at = shown.view.to_widget(on_nerve(shown.view, nerve, k / 60.0)) *
                         shown.view.devicePixelRatioF();
      if (!picture.rect().contains(at.toPoint())) continue;
      const int hue = picture.pixelColor(at.toPoint()).hue();
      if (hue >= 0 && std::abs(hue - own.hue()) < 12) ++seen;
    }
    INFO(nerve);
    CHECK(seen > 15);
  }
  CHECK(shown.view.gl_errors() == 0);
  // Opaque: what lies behind the window does not shine through.
  const QImage window = shown.view.grab().toImage();
  CHECK(window.pixelColor(3, window.height() / 2).lightness() ==
        Approx(background_of().lightness()).margin(2));
  CHECK(picture.pixelColor(3, picture.height() / 2).alpha() == 255);
  CHECK(picture.pixelColor(picture.width() / 2, picture.height() / 2).alpha() == 255);
}

TEST_CASE("Names cover neither each other nor the edge, and the great nerves have theirs",
          "[view]") {
  Shown shown;
  for (const Aspect aspect :
       {Aspect::front, Aspect::back, Aspect::lateral, Aspect::medial, Aspect::proximal}) {
    shown.view.look_from(aspect);
    shown.view.set_layer(Layer::landmarks, true);
    QTest::qWait(30);
    grab(shown.view);
    const OverlayLayout& layout = shown.view.layout();
    REQUIRE(layout.labels.size() >= 5);
    for (std::size_t i = 0; i < layout.labels.size(); ++i) {
      CHECK(QRectF(shown.view.rect()).contains(layout.labels[i]));
      CHECK_FALSE(layout.labels[i].intersects(layout.side));
      CHECK_FALSE(layout.labels[i].intersects(layout.scale));
      for (std::size_t k = 0; k < i; ++k) {
        CHECK_FALSE(layout.labels[i].intersects(layout.labels[k]));
      }
    }
    if (aspect != Aspect::front) continue;
    for (const char* nerve : {"musculocutaneous nerve", "axillary nerve", "radial nerve",
                              "median nerve", "ulnar nerve"}) {
      INFO(nerve);
      CHECK(std::ranges::find(layout.texts, QString(nerve)) != layout.texts.end());
    }
  }
}

TEST_CASE("The side stands in capitals and turns the picture round", "[view]") {
  Shown right;
  CHECK(right.view.layout().side_text == "RIGHT");
  CHECK(right.view.to_widget(landmark(right.view, "lateral epicondyle")).x() <
        right.view.to_widget(landmark(right.view, "medial epicondyle")).x());
  Shown left(Side::left);
  CHECK(left.view.layout().side_text == "LEFT");
  CHECK(left.view.to_widget(landmark(left.view, "lateral epicondyle")).x() >
        left.view.to_widget(landmark(left.view, "medial epicondyle")).x());
  // Seen from the lateral side the front of a right limb is on the right of the picture.
  right.view.look_from(Aspect::lateral);
  left.view.look_from(Aspect::lateral);
  const auto front = [](LimbView& view) {
    return view.to_widget(landmark(view, "coracoid process tip")).x() -
           view.to_widget(landmark(view, "olecranon tip")).x();
  };
  CHECK(front(right.view) > 0.0);
  CHECK(front(left.view) < 0.0);
}

TEST_CASE("A click on a nerve says which and where along it", "[view]") {
  Shown shown;
  for (const auto& [nerve, aspect, share] : {std::tuple{"ulnar nerve", Aspect::front, 0.8},
                                             {"ulnar nerve", Aspect::back, 0.45},
                                             {"median nerve", Aspect::front, 0.7},
                                             {"radial nerve", Aspect::back, 0.4}}) {
    shown.view.set_layers(Layer::nerves);
    shown.view.look_from(aspect);
    const auto scene = shown.view.scene();
    const double arc_mm = share * scene->shape->nerves[*scene->shape->find_nerve(nerve)].length_mm;
    const Pick pick = shown.view.pick(shown.view.to_widget(on_nerve(shown.view, nerve, share)));
    INFO(nerve << " at " << share);
    CHECK(pick.kind == PickKind::nerve);
    CHECK(pick.name.toStdString() == nerve);
    CHECK(pick.arc_mm == Approx(arc_mm).margin(4.0));
  }
}

TEST_CASE("Skin, bone, muscle and landmark are picked where they lie", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  const Eigen::Vector3d thigh = landmark(view, "medial epicondyle");
  view.set_layers(Layer::skin);
  CHECK(view.pick(view.to_widget(thigh)).kind == PickKind::skin);
  view.set_layers(Layer::bones);
  CHECK(view.pick(view.to_widget(thigh + Eigen::Vector3d(0.0, 0.0, 6.0))).name == "humerus");
  view.set_layers(Layers(Layer::bones) | Layer::landmarks);
  CHECK(view.pick(view.to_widget(thigh)).name == "medial epicondyle");
  view.set_layers(Layers(Layer::bones) | Layer::muscles);
  wait_for_limb(view);
  const Eigen::Vector3d biceps = 0.5 * (thigh + landmark(view, "acromion, lateral edge"));
  const Pick muscle = view.pick(view.to_widget(biceps + Eigen::Vector3d(0.0, 0.0, 8.0)));
  CHECK(muscle.kind == PickKind::muscle);
  CHECK(muscle.name.startsWith("biceps"));
  CHECK(view.pick({2.0, 2.0}).kind == PickKind::nothing);
}

TEST_CASE("An injury is dragged along its nerve and no other", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  const auto scene = view.scene();
  const double length_mm =
      scene->shape->nerves[*scene->shape->find_nerve("median nerve")].length_mm;
  view.set_lesion_marks({{"median nerve", 0.5 * length_mm, "injury"}});
  QTest::qWait(30);
  std::vector<double> dragged;
  double dropped = 0.0;
  QObject::connect(&view, &LimbView::lesion_dragged,
                   [&](int, const QString&, double arc_mm) { dragged.push_back(arc_mm); });
  QObject::connect(&view, &LimbView::lesion_dropped,
                   [&](int mark, const QString& nerve, double arc_mm) {
                     CHECK(mark == 0);
                     CHECK(nerve == "median nerve");
                     dropped = arc_mm;
                   });
  const QPoint from = view.to_widget(on_nerve(view, "median nerve", 0.5)).toPoint();
  const QPoint to = view.to_widget(on_nerve(view, "median nerve", 0.75)).toPoint();
  QTest::mousePress(&view, Qt::LeftButton, {}, from);
  for (int k = 1; k <= 5; ++k) QTest::mouseMove(&view, from + (to - from) * k / 5, 20);
  QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
  REQUIRE(dragged.size() >= 3);
  CHECK(dragged.back() > dragged.front());
  CHECK(dropped == Approx(0.75 * length_mm).margin(8.0));
}

TEST_CASE("Two clicks measure straight, along the nerve and over the skin", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_layers(Layer::nerves);
  view.set_tool(Tool::measure);
  std::vector<Measurement> taken;
  QObject::connect(&view, &LimbView::measured,
                   [&](const Measurement& measurement) { taken.push_back(measurement); });
  click(view, view.to_widget(on_nerve(view, "ulnar nerve", 0.6)));
  click(view, view.to_widget(on_nerve(view, "ulnar nerve", 0.8)));
  REQUIRE(QTest::qWaitFor([&] { return taken.size() == 2; }, 20000));
  CHECK(taken[0].straight_mm > 50.0);
  REQUIRE(taken[0].along_nerve_mm.has_value());
  CHECK(*taken[0].along_nerve_mm >= taken[0].straight_mm - 1.0);
  CHECK_FALSE(taken[0].over_skin_mm.has_value());
  REQUIRE(taken[1].over_skin_mm.has_value());
  CHECK(*taken[1].over_skin_mm > 0.8 * taken[1].straight_mm);
  CHECK(*taken[1].over_skin_mm < 1.5 * taken[1].straight_mm);
  QTest::qWait(30);
  grab(view);
  CHECK(view.layout().banner.isValid());
}

TEST_CASE("An incision is drawn on the skin, mark by mark, and moves with it", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_tool(Tool::draw_incision);
  std::vector<SkinSpot> marks;
  std::vector<SkinSpot> line;
  QObject::connect(&view, &LimbView::incision_drawn,
                   [&](const std::vector<SkinSpot>& of_marks, const std::vector<SkinSpot>& whole) {
                     marks = of_marks;
                     line = whole;
                   });
  const Eigen::Vector3d wrist = landmark(view, "distal wrist crease");
  for (const double up_mm : {20.0, 60.0, 100.0, 140.0}) {
    click(view, view.to_widget(wrist + Eigen::Vector3d(0.0, up_mm, 0.0)));
  }
  QTest::keyClick(&view, Qt::Key_Backspace);
  QTest::keyClick(&view, Qt::Key_Return);
  REQUIRE(marks.size() == 3);
  CHECK(line.size() > 2 * marks.size());  // places between them too
  CHECK(view.tool() == Tool::look);
  const Eigen::Vector3d before = place_mm(*view.scene(), marks.front());
  view.set_incision(line, marks);
  view.set_pose(limb::pose_from({{"elbow_flexion_deg", 60.0}}));
  wait_for_limb(view);
  CHECK((place_mm(*view.scene(), marks.front()) - before).norm() > 50.0);
  CHECK(view.gl_errors() == 0);
}

TEST_CASE("Values colour the skin and have a key", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_layers(Layer::skin);
  std::vector<float> values(view.scene()->skin_mm.size());
  for (std::size_t v = 0; v < values.size(); ++v) {
    values[v] = static_cast<float>(v) / static_cast<float>(values.size());
  }
  QTest::qWait(300);  // until edges are smooth
  const QImage plain = grab(view);
  view.set_skin_values(values, {"chance of a nerve", "0 %", "100 %", 0.0, 1.0});
  QTest::qWait(30);
  const QImage coloured = grab(view);
  CHECK(view.layout().legend.isValid());
  CHECK(coloured != plain);
  view.clear_skin_values();
  QTest::qWait(30);
  CHECK(grab(view) == plain);
}

TEST_CASE("A clip cuts the picture and the pick alike", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_layers(Layers(Layer::skin) | Layer::bones);
  const double whole = drawn_share(grab(view), background_of());
  view.set_clip(ClipPlane{ClipAxis::proximal, 0.5});
  QTest::qWait(30);
  const double half = drawn_share(grab(view), background_of());
  CHECK(half < 0.8 * whole);
  CHECK(half > 0.1 * whole);
  CHECK(view.pick(view.to_widget(landmark(view, "deltoid insertion"))).kind == PickKind::nothing);
}

TEST_CASE("What is asked for stands out and the rest steps back", "[view]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_layers(Layer::nerves);
  const QPointF median =
      view.to_widget(on_nerve(view, "median nerve", 0.65)) * view.devicePixelRatioF();
  const auto saturation = [&] {
    QTest::qWait(30);
    return grab(view).pixelColor(median.toPoint()).saturation();
  };
  const int usual = saturation();
  view.highlight({"ulnar nerve"});
  CHECK(saturation() < usual / 2);
  view.highlight({"median nerve"});
  CHECK(saturation() > usual / 2);
}

TEST_CASE("The last of many poses wins", "[view]") {
  Shown shown;
  for (int k = 1; k <= 40; ++k) {
    shown.view.set_pose(limb::pose_from({{"elbow_flexion_deg", 2.0 * k}}));
    QTest::qWait(3);
  }
  wait_for_limb(shown.view);
  const auto limb = limb_of(Side::right);
  const auto wanted = limb->in_pose(limb->held(limb::pose_from({{"elbow_flexion_deg", 80.0}})));
  CHECK((shown.view.scene()->skin_mm.back() - wanted.skin_mm.back()).norm() < 1e-9);
}

TEST_CASE("The view survives another window and its own end", "[view]") {
  auto view = std::make_unique<LimbView>();
  QMainWindow first;
  QMainWindow second;
  first.resize(500, 400);
  second.resize(500, 400);
  first.setCentralWidget(view.get());
  first.show();
  REQUIRE(QTest::qWaitForWindowExposed(&first));
  view->show_limb(limb_of(Side::right));
  wait_for_limb(*view);
  for (QMainWindow* window : {&second, &first, &second}) {
    window->setCentralWidget(view.get());
    window->show();
    view->show();
    REQUIRE(QTest::qWaitForWindowExposed(window));
    QTest::qWait(50);
    CHECK(drawn_share(grab(*view), background_of()) > 0.02);
  }
  CHECK(view->gl_errors() == 0);
  view->setParent(nullptr);
  view.reset();
  for (int k = 0; k < 5; ++k) {
    LimbView brief;
    brief.resize(300, 300);
    brief.show();
    brief.show_limb(limb_of(Side::left), limb::pose_from({{"elbow_flexion_deg", 30.0 + k}}));
    QTest::qWait(10 * k);
  }
}

TEST_CASE("A picture has the size that was asked for, and the names", "[view]") {
  Shown shown;
  for (const QSize size : {QSize(2400, 1800), QSize(900, 1600)}) {
    const QImage picture = taken(shown.view, size);
    REQUIRE(picture.size() == size);
    const double share = drawn_share(picture, palette_of(PaletteKind::print).background);
    CHECK(share > 0.03);
    CHECK(share < 0.6);
  }
  QTest::qWait(30);
  CHECK(drawn_share(grab(shown.view), background_of()) > 0.05);
  CHECK(shown.view.gl_errors() == 0);
}

TEST_CASE("A screen with OpenGL is found to have it", "[view]") {
  QString why;
  CHECK(LimbView::opengl_available(&why));
  CHECK(why.isEmpty());
}

TEST_CASE("A screen without OpenGL is told so, and the limb is drawn flat", "[.without]") {
  QString why;
  CHECK_FALSE(LimbView::opengl_available(&why));
  CHECK_FALSE(why.isEmpty());
  Shown shown;
  LimbView& view = shown.view;
  const double usual = drawn_share(grab(view), background_of());
  CHECK(usual > 0.05);
  CHECK(usual < 0.9);
  CHECK(view.layout().side_text == "RIGHT");
  CHECK(view.layout().labels.size() >= 5);
  // In front of the wrist the median nerve is seen, and the picture answers there.
  view.set_layers(Layers(Layer::bones) | Layer::nerves);
  const QPointF at = view.to_widget(on_nerve(view, "median nerve", 0.7));
  CHECK(view.pick(at).name == "median nerve");
  const QColor own = nerve_colour(palette_of(PaletteKind::light), limb::NerveFamily::median,
                                  limb::NerveRank::great);
  const QColor seen = grab(view).pixelColor((at * view.devicePixelRatioF()).toPoint());
  CHECK(std::abs(seen.hue() - own.hue()) < 12);
  view.set_layer(Layer::muscles, true);
  wait_for_limb(view);
  CHECK(grab(view) != taken(view, {600, 900}));
  if (const QString folder = qEnvironmentVariable("ENDPLATE_PICTURES"); !folder.isEmpty()) {
    grab(view).save(folder + "/flat_muscles.png");
    view.set_layers(kUsualLayers);
    grab(view).save(folder + "/flat.png");
    view.look_from(Aspect::back);
    grab(view).save(folder + "/flat_back.png");
  }
}

}  // namespace endplate::ui
