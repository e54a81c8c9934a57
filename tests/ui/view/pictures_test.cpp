// Pictures to look at: written where ENDPLATE_PICTURES says, with the tag [.pictures].
#include <QDir>
#include <algorithm>

#include "view_fixture.hpp"

namespace endplate::ui {
namespace {

void keep(LimbView& view, const char* name) {
  const QDir folder(qEnvironmentVariable("ENDPLATE_PICTURES", "."));
  CHECK(grab(view).save(folder.filePath(name)));
}

}  // namespace

TEST_CASE("Pictures of the view", "[.pictures]") {
  Shown shown;
  LimbView& view = shown.view;
  keep(view, "front.png");
  view.look_from(Aspect::back);
  keep(view, "back.png");
  view.look_from(Aspect::lateral);
  keep(view, "lateral.png");
  view.look_from(Aspect::medial);
  keep(view, "medial.png");
  view.look_from(Aspect::front);
  view.set_layer(Layer::muscles, true);
  wait_for_limb(view);
  QTest::qWait(300);
  keep(view, "muscles.png");
  view.set_layer(Layer::muscles, false);
  view.set_layer(Layer::landmarks, true);
  view.set_palette_kind(PaletteKind::dark);
  view.set_pose(limb::pose_from({{"elbow_flexion_deg", 90.0}}));
  wait_for_limb(view);
  view.look_from(Aspect::lateral);
  keep(view, "elbow_dark.png");
  CHECK(taken(view, {1400, 1800})
            .save(QDir(qEnvironmentVariable("ENDPLATE_PICTURES", ".")).filePath("print.png")));
  CHECK(view.gl_errors() == 0);
}

TEST_CASE("Pictures of sections", "[.pictures]") {
  Shown shown;
  LimbView& view = shown.view;
  view.set_layer(Layer::muscles, true);
  wait_for_limb(view);
  view.set_clip(ClipPlane{ClipAxis::front, 0.5});
  keep(view, "section_front.png");
  view.set_clip(ClipPlane{ClipAxis::proximal, 0.33});
  view.look_from(Aspect::proximal);
  keep(view, "section_proximal.png");
  CHECK(view.gl_errors() == 0);
}

TEST_CASE("Pictures of the left limb", "[.pictures]") {
  Shown shown(Side::left);
  keep(shown.view, "left.png");
  CHECK(shown.view.gl_errors() == 0);
}

TEST_CASE("Pictures of what panels lay over the limb", "[.pictures]") {
  Shown shown;
  LimbView& view = shown.view;
  const auto scene = view.scene();
  const auto at = [&](const char* nerve, double arc_mm) {
    return view.to_widget(scene->place_mm({*scene->shape->find_nerve(nerve), arc_mm}));
  };
  view.set_lesion_marks({{"radial nerve", 150.0, "injury, radial nerve"}});
  view.set_routes({{"branch to pronator teres to posterior interosseous nerve",
                    {},
                    {{"median nerve", 250.0, 300.0}, {"posterior interosseous nerve", 0.0, 60.0}},
                    {}}});
  view.set_tool(Tool::measure);
  QTest::mouseClick(&view, Qt::LeftButton, {}, at("ulnar nerve", 330.0).toPoint());
  QTest::mouseClick(&view, Qt::LeftButton, {}, at("ulnar nerve", 430.0).toPoint());
  QTest::qWait(3000);
  keep(view, "marks.png");
  view.clear_measurement();
  view.set_tool(Tool::look);
  view.set_lesion_marks({});
  view.set_routes({});
  std::vector<float> values;
  const std::size_t median = *scene->shape->find_nerve("median nerve");
  for (const Eigen::Vector3d& p : scene->skin_mm) {
    double nearest = 1e9;
    for (const Eigen::Vector3d& q : scene->nerves_mm[median])
      nearest = std::min(nearest, (p - q).norm());
    values.push_back(static_cast<float>(std::max(0.0, 1.0 - nearest / 40.0)));
  }
  view.set_skin_values(values, {"a made-up share, for the picture", "0 %", "100 %", 0.0, 1.0});
  view.set_tool(Tool::draw_incision);
  for (const double arc_mm : {330.0, 400.0, 460.0}) {
    QTest::mouseClick(&view, Qt::LeftButton, {}, at("median nerve", arc_mm).toPoint());
  }
  keep(view, "risk.png");
  view.clear_skin_values();
  view.set_tool(Tool::look);
  view.highlight({"ulnar nerve", "FCU", "medial epicondyle"});
  keep(view, "highlight.png");
  CHECK(view.gl_errors() == 0);
}

}  // namespace endplate::ui
