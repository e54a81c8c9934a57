#pragma once
// The inside of LimbView, for the limb_view*.cpp files.
#include <QElapsedTimer>
#include <QOffscreenSurface>
#include <QPointF>
#include <QTimer>
#include <atomic>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

#include "models/limb/skin_tape.hpp"
#include "ui/view/latest_task.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/view/picture_thread.hpp"
#include "ui/view/scene_extras.hpp"
#include "ui/view/scene_pick.hpp"

namespace endplate::ui {

struct LimbView::Parts {
  explicit Parts(LimbView& of);

  // Posing.
  void ask_pose(const limb::Pose& pose);
  void begin_pose(const limb::Pose& pose);
  void begin_next_pose();
  void ask_settle();
  bool wants_muscles() const;
  struct Delivered {
    std::shared_ptr<const SceneMeshes> meshes;
    limb::Pose pose;
    quint64 request = 0;
    bool held = false;  // as the skin lets it
  };
  void deliver(Delivered what);  // from any thread
  void take_delivered();

  // What changed, to be drawn.
  void restyle();
  void remark();
  void move_camera();
  void move();  // something is moving

  // Drawing. What changes together is ordered together, once the event is over.
  void redraw();
  void order_picture();
  std::unique_ptr<PictureMaker> make_pictures();  // on the drawing thread
  void note_begun();
  PictureOrder order(const SceneStyle& in, const OrbitCamera& seen_from, const QSizeF& size) const;
  ExtraMarks extra_marks() const;
  void show_picture(Picture made);
  void tell_pose(const std::shared_ptr<const SceneMeshes>& in_picture);
  void call(std::function<void()> what);  // on the interface thread, while the view is there

  // Pointing.
  PictureSpot spot(const QPointF& at) const;
  Pick pick(const QPointF& at) const;
  std::optional<Pick> pick_skin(const QPointF& at) const;
  std::optional<std::size_t> lesion_at(const QPointF& at) const;
  void drag_lesion(const QPointF& at);
  void click(const QPointF& at);

  // Tools.
  void add_measured(const Pick& pick);
  void measure_over_skin();
  void add_incision_mark(const QPointF& at);
  void take_last_mark_away();
  QString banner() const;

  Overlay overlay(const SceneStyle& in, const OrbitCamera& seen_from, const QSizeF& size) const;
  Eigen::AlignedBox3d box() const;
  void fit();

  LimbView& view;
  std::shared_ptr<const limb::SceneLimb> limb;
  limb::Pose pose;  // asked for
  limb::Pose shown_pose;
  std::shared_ptr<const SceneMeshes> meshes;
  OrbitCamera camera;
  bool fitted = false;
  bool touched = false;  // the camera was moved by hand
  SceneStyle style;
  std::optional<SkinLegend> legend;
  Namer namer;
  std::vector<LesionMark> lesions;
  std::vector<Route> routes;

  Tool tool = Tool::look;
  std::vector<SkinSpot> incision_line;
  std::vector<SkinSpot> incision_marks;
  std::vector<std::size_t> line_at_mark;  // how long the line was at each mark
  std::vector<Pick> measured_ends;
  std::optional<Measurement> measurement;
  std::vector<Eigen::Vector3d> tape_mm;

  QPointF pressed_at;
  QPointF last_at;
  bool moved = false;
  std::optional<std::size_t> dragged_lesion;
  QElapsedTimer since_hover;

  int samples = 4;
  std::shared_ptr<const SceneStyle> ordered_style;  // null: `style` has changed
  std::shared_ptr<const ExtraMarks> ordered_marks;  // null: the marks or the pose have
  quint64 ordered = 0;                              // the latest order
  Picture picture;                                  // on the screen
  int gl_errors = 0;
  QTimer order_soon;

  std::mutex delivered_mutex;
  std::optional<Delivered> delivered;
  std::atomic<quint64> request = 0;  // the latest
  // One pose a picture: more would take the cores from the drawing. The next one begins as the
  // picture of the last is taken up.
  bool pose_under_way = false;
  bool pose_to_draw = false;  // it has come, and no picture of it was taken up yet
  std::optional<limb::Pose> next_pose;
  // Poses whose picture has not been shown, in their order, and whether the skin held them.
  std::deque<std::pair<std::shared_ptr<const SceneMeshes>, bool>> poses_to_tell;
  QTimer settle_soon;
  QTimer stand_still_soon;

  // Of the measuring thread alone.
  struct Tape {
    std::shared_ptr<const SceneMeshes> of;
    std::unique_ptr<limb::SkinTape> tape;
  };
  Tape tape;

  const bool flat;  // no OpenGL
  QOffscreenSurface surface;

  // Last, so that they end first: what runs on them uses what stands above.
  LatestTask settling;
  LatestTask measuring;
  LatestTask posing;
  PictureThread drawing;
};

}  // namespace endplate::ui
