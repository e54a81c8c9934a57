// Pictures of the limb: ordered on the interface thread, drawn beside it, shown when they are
// there.
#include <QApplication>
#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "ui/view/flat_pictures.hpp"
#include "ui/view/gl_pictures.hpp"
#include "ui/view/limb_view_parts.hpp"
#include "ui/view/surface_format.hpp"

namespace endplate::ui {
namespace {

constexpr int kSettle_ms = 200;
constexpr int kStill_ms = 180;
constexpr int kSamples = 4;

QSize physical(const QWidget& widget) {
  const double ratio = widget.devicePixelRatioF();
  return {std::max(1, qRound(widget.width() * ratio)),
          std::max(1, qRound(widget.height() * ratio))};
}

}  // namespace

LimbView::Parts::Parts(LimbView& of)
    : view(of),
      flat(!opengl_available()),
      drawing({[this] { return make_pictures(); }, [this] { call([this] { note_begun(); }); },
               [this](Picture made) {
                 call([this, made = std::move(made)] { show_picture(made); });
               }}) {
  if (!flat) {
    surface.setFormat(surface_format());
    surface.create();
  }
  stand_still_soon.setSingleShot(true);
  stand_still_soon.setInterval(kStill_ms);
  QObject::connect(&stand_still_soon, &QTimer::timeout, &view, [this] {
    samples = kSamples;
    redraw();
  });
  settle_soon.setSingleShot(true);
  settle_soon.setInterval(kSettle_ms);
  QObject::connect(&settle_soon, &QTimer::timeout, &view, [this] { ask_settle(); });
  order_soon.setSingleShot(true);
  order_soon.setInterval(0);
  QObject::connect(&order_soon, &QTimer::timeout, &view, [this] { order_picture(); });
}

std::unique_ptr<PictureMaker> LimbView::Parts::make_pictures() {
  if (!flat) {
    auto by_vtk = std::make_unique<GlPictures>(surface);
    if (by_vtk->is_ready()) return by_vtk;
  }
  return std::make_unique<FlatPictures>();
}

void LimbView::Parts::note_begun() {
  if (std::exchange(pose_to_draw, false)) begin_next_pose();
}

// While things move, edges may be jagged: smooth ones cost as much as all else.
void LimbView::Parts::move() {
  samples = 0;
  stand_still_soon.start();
}

void LimbView::Parts::redraw() {
  if (meshes && view.isVisible()) order_soon.start();
}

void LimbView::Parts::order_picture() {
  if (!meshes || !view.isVisible()) return;
  if (!ordered_style) ordered_style = std::make_shared<const SceneStyle>(style);
  if (!ordered_marks) ordered_marks = std::make_shared<const ExtraMarks>(extra_marks());
  PictureOrder wanted = order(style, camera, view.size());
  wanted.number = ++ordered;
  wanted.style = ordered_style;
  wanted.marks = ordered_marks;
  wanted.pixels = physical(view);
  wanted.samples = samples;
  wanted.scale = view.devicePixelRatioF();
  drawing.order(std::move(wanted));
}

// All but what depends on the pixels.
PictureOrder LimbView::Parts::order(const SceneStyle& in, const OrbitCamera& seen_from,
                                    const QSizeF& size) const {
  PictureOrder wanted;
  wanted.meshes = meshes;
  wanted.camera = seen_from;
  wanted.overlay = overlay(in, seen_from, size);
  return wanted;
}

ExtraMarks LimbView::Parts::extra_marks() const {
  const limb::LimbScene& scene = meshes->scene;
  ExtraMarks marks{lesions, routes, {}, {}, {}, {}};
  for (const SkinSpot& each : incision_line) marks.incision_mm.push_back(place_mm(scene, each));
  for (const SkinSpot& each : incision_marks) {
    marks.incision_points_mm.push_back(place_mm(scene, each));
  }
  for (const Pick& end : measured_ends) marks.measured_ends_mm.push_back(end.place_mm);
  marks.measured_mm =
      tape_mm.empty() && measured_ends.size() == 2 ? marks.measured_ends_mm : tape_mm;
  return marks;
}

Overlay LimbView::Parts::overlay(const SceneStyle& in, const OrbitCamera& seen_from,
                                 const QSizeF& size) const {
  const Palette& palette = in.colours();
  const limb::LimbScene& scene = meshes->scene;
  Overlay result;
  result.font = QApplication::font();
  result.palette = palette;
  result.camera = seen_from;
  result.size = size;
  result.side = scene.shape->side == Side::right ? LimbView::tr("RIGHT") : LimbView::tr("LEFT");
  result.labels = labels_of(scene, in, seen_from, size, namer);
  const auto add = [&](const QString& text, const Eigen::Vector3d& place, const QColor& colour) {
    if (!text.isEmpty()) result.labels.push_back({text, place, colour, -1, true});
  };
  for (const LesionMark& mark : lesions) {
    const auto nerve = scene.shape->find_nerve(mark.nerve.toStdString());
    if (nerve) add(mark.label, scene.place_mm({*nerve, mark.arc_mm}), palette.lesion);
  }
  for (const Route& route : routes) {
    const QColor colour = route.colour.isValid() ? route.colour : palette.route;
    if (!route.stretches.empty()) {
      const auto line = stretch_mm(scene, route.stretches.back());
      if (!line.empty()) add(route.label, line.front(), colour);
    } else if (!route.lines_mm.empty() && !route.lines_mm.front().empty()) {
      const auto& line = route.lines_mm.front();
      add(route.label, line[line.size() / 2], colour);
    }
  }
  result.outline_mm = outline_of(scene, in);
  result.legend = legend;
  result.banner = banner();
  return result;
}

void LimbView::Parts::show_picture(Picture made) {
  gl_errors += made.gl_errors;
  if (made.image.isNull()) return;
  picture = std::move(made);
  view.update();
  tell_pose(picture.meshes);
  Q_EMIT view.picture_shown(picture.drawn_ms);
}

// Poses that no picture was made of are passed over.
void LimbView::Parts::tell_pose(const std::shared_ptr<const SceneMeshes>& in_picture) {
  const auto shown =
      std::ranges::find(poses_to_tell, in_picture, &decltype(poses_to_tell)::value_type::first);
  if (shown == poses_to_tell.end()) return;
  const bool held = shown->second;
  poses_to_tell.erase(poses_to_tell.begin(), std::next(shown));
  Q_EMIT view.pose_shown(held);
}

void LimbView::paintEvent(QPaintEvent* event) {
  const Parts& p = *parts_;
  QPainter painter(this);
  if (p.picture.image.isNull()) {
    painter.fillRect(event->rect(), p.style.colours().background);
    return;
  }
  // Of another size only until the next one is there.
  if (p.picture.image.size() == physical(*this)) {
    painter.scale(1.0 / devicePixelRatioF(), 1.0 / devicePixelRatioF());
    painter.drawImage(0, 0, p.picture.image);
  } else {
    painter.drawImage(rect(), p.picture.image);
  }
}

void LimbView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  parts_->redraw();
}

void LimbView::take_picture(const QSize& pixels, std::function<void(const QImage&)> taken,
                            PaletteKind kind) {
  Parts& p = *parts_;
  if (!p.meshes || pixels.isEmpty()) {
    p.call([taken = std::move(taken)] { taken({}); });
    return;
  }
  // As much of the limb as on the screen, and names as large against it.
  const double scale = std::min(static_cast<double>(pixels.height()) / height(),
                                static_cast<double>(pixels.width()) / width());
  const QSizeF logical(pixels.width() / scale, pixels.height() / scale);
  OrbitCamera seen_from = p.camera;
  seen_from.set_mm_per_pixel(p.camera.mm_per_pixel(size()), logical);
  SceneStyle style = p.style;
  style.palette = kind;
  PictureOrder wanted = p.order(style, seen_from, logical);
  wanted.style = std::make_shared<const SceneStyle>(style);
  // Without what leads the hand.
  ExtraMarks marks = p.extra_marks();
  marks.incision_points_mm.clear();
  marks.measured_ends_mm.clear();
  wanted.marks = std::make_shared<const ExtraMarks>(std::move(marks));
  if (p.tool != Tool::look && !p.measurement) wanted.overlay.banner.clear();
  wanted.pixels = pixels;
  wanted.samples = kSamples;
  wanted.scale = scale;
  p.drawing.take(std::move(wanted), [&p, taken = std::move(taken)](Picture made) {
    p.call([&p, taken, made = std::move(made)] {
      p.gl_errors += made.gl_errors;
      taken(made.image);
    });
  });
}

const QImage& LimbView::shown() const {
  return parts_->picture.image;
}

bool LimbView::is_up_to_date() const {
  const Parts& p = *parts_;
  return !p.picture.image.isNull() && p.picture.number == p.ordered && !p.order_soon.isActive() &&
         !p.stand_still_soon.isActive();
}

}  // namespace endplate::ui
