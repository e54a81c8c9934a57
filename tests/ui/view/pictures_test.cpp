// Pictures to look at: written where ENDPLATE_PICTURES says, with the tag [.pictures].
#include <QDir>

#include "view_fixture.hpp"

namespace endplate::ui {
namespace {

void keep(LimbView& view, const char* name) {
  QTest::qWait(300);  // until edges are smooth again
  const QDir folder(qEnvironmentVariable("ENDPLATE_PICTURES", "."));
  CHECK(view.grabFramebuffer().save(folder.filePath(name)));
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
  CHECK(view.picture({1400, 1800})
            .save(QDir(qEnvironmentVariable("ENDPLATE_PICTURES", ".")).filePath("print.png")));
  CHECK(view.gl_errors() == 0);
}

TEST_CASE("Pictures of the left limb", "[.pictures]") {
  Shown shown(Side::left);
  keep(shown.view, "left.png");
  CHECK(shown.view.gl_errors() == 0);
}

}  // namespace endplate::ui
