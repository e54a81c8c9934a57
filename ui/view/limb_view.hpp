#pragma once
// The living limb: a picture of one limb in one pose that is turned, asked and drawn upon.
//
// The interface thread listens and shows pictures; drawing them, posing, settling against the skin
// and measuring over the skin are done on threads of their own, of which the latest request wins.
// Everything may be set before the widget is shown. Keys: 1 to 5 front, back, lateral, medial,
// proximal; arrows turn; plus and minus; Home shows all; Escape lays a tool down, Return ends an
// incision, Backspace takes its last point away. The left button turns and picks, the right or
// middle one shifts.
#include <QImage>
#include <QStringList>
#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "models/limb/limb_scene.hpp"
#include "ui/view/overlay.hpp"
#include "ui/view/palette.hpp"
#include "ui/view/view_types.hpp"

namespace endplate::ui {

class LimbView : public QWidget {
  Q_OBJECT

 public:
  explicit LimbView(QWidget* parent = nullptr);
  ~LimbView() override;
  Q_DISABLE_COPY_MOVE(LimbView)

  // Whether this screen has what VTK draws with; `why`: what is missing, for the reader. Needs a
  // QGuiApplication. Without it the view is a flat drawing.
  static bool opengl_available(QString* why = nullptr);

  // Another limb (size, side, operations); marks on nerves stay where their nerves are.
  void show_limb(std::shared_ptr<const limb::SceneLimb> limb, const limb::Pose& pose = {});
  // While joints are dragged and after; the limb soon settles where its skin holds the joints.
  void set_pose(const limb::Pose& pose);
  // What is on the screen; null before the first picture.
  std::shared_ptr<const limb::LimbScene> scene() const;

  void set_palette_kind(PaletteKind kind);
  void set_layers(Layers layers);
  void set_layer(Layer layer, bool on);
  Layers layers() const;
  void set_muscle_opacity(double opacity);
  // Nerves, muscles (by name, part or id), bones and landmarks that stand out while all else is
  // dimmed; none: nothing is dimmed.
  void highlight(const QStringList& names);
  // The terms that the reader wants, for those of the tables; absent: these themselves.
  void set_namer(Namer namer);

  void look_from(Aspect aspect);
  void reset_view();
  // A part of the limb fills the picture, until it is looked at otherwise.
  void look_at(const std::vector<Eigen::Vector3d>& places_mm);

  void set_tool(Tool tool);
  Tool tool() const;

  void set_lesion_marks(std::vector<LesionMark> marks);
  void set_routes(std::vector<Route> routes);
  // A line over the skin that moves with it, and the marks on it.
  void set_incision(std::vector<SkinSpot> line, std::vector<SkinSpot> marks);
  void clear_incision();
  void finish_incision();  // as Return
  void clear_measurement();

  // One value for each vertex of the scene's skin, NaN where there is none.
  void set_skin_values(std::span<const float> values, const SkinLegend& legend);
  void clear_skin_values();
  void set_clip(std::optional<ClipPlane> clip);

  // As it is looked at, with names and side, of any size. Drawn aside; `taken` is called on the
  // interface thread, with a null picture if there is nothing to draw, and not at all when the view
  // has gone.
  void take_picture(const QSize& pixels, std::function<void(const QImage&)> taken,
                    PaletteKind kind = PaletteKind::print);
  // What is on the screen, in its pixels; null before the first picture.
  const QImage& shown() const;
  // Whether that is what was last asked for, with smooth edges.
  bool is_up_to_date() const;

  // For a place of the scene: where it is in the widget, logical pixels.
  QPointF to_widget(const Eigen::Vector3d& place_mm) const;
  // And what lies there.
  Pick pick(const QPointF& at) const;
  // Where things stood on the last picture.
  const OverlayLayout& layout() const;
  // Since the widget was made; 0 when all is well.
  int gl_errors() const;

 Q_SIGNALS:
  void picked(const endplate::ui::Pick& pick);
  void hovered(const endplate::ui::Pick& pick);
  void lesion_dragged(int mark, const QString& nerve, double arc_mm);
  void lesion_dropped(int mark, const QString& nerve, double arc_mm);
  // At once, and again when the tape over the skin has been laid.
  void measured(const endplate::ui::Measurement& measurement);
  // The marks in the order of the clicks, and the whole line.
  void incision_drawn(const std::vector<endplate::ui::SkinSpot>& marks,
                      const std::vector<endplate::ui::SkinSpot>& line);
  void tool_changed(endplate::ui::Tool tool);
  // Another pose is on the screen, the one last asked for or, while joints are dragged, one before
  // it; `held`: the last one, as the skin lets it.
  void pose_shown(bool held);
  // Another picture is on the screen; how long it took to draw.
  void picture_shown(double milliseconds);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Parts;
  friend struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace endplate::ui
