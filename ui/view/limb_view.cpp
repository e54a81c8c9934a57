#include "ui/view/limb_view.hpp"

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFramebufferObject>
#include <QOpenGLFunctions>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "ui/view/limb_view_parts.hpp"
#include "ui/view/surface_format.hpp"

namespace endplate::ui {
namespace {

QSize physical(const QWidget& widget) {
  const double ratio = widget.devicePixelRatioF();
  return {std::max(1, qRound(widget.width() * ratio)),
          std::max(1, qRound(widget.height() * ratio))};
}

int errors_of(QOpenGLFunctions* gl) {
  int errors = 0;
  // A lost context reports for ever.
  while (errors < 16 && gl->glGetError() != GL_NO_ERROR) ++errors;
  return errors;
}

}  // namespace

LimbView::LimbView(QWidget* parent)
    : QOpenGLWidget(parent), parts_(std::make_unique<Parts>(*this)) {
  setFormat(surface_format());
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setMinimumSize(240, 240);
  setAccessibleName(tr("View of the limb"));
  setAccessibleDescription(
      tr("Skin, bones, muscles and nerves of the limb. Keys 1 to 5 look from the front, the back, "
         "the lateral and medial side and from above; the arrows turn it."));
}

LimbView::~LimbView() {
  release_gl();
}

bool LimbView::opengl_available(QString* why) {
  QOffscreenSurface surface;
  surface.setFormat(surface_format());
  surface.create();
  QOpenGLContext context;
  context.setFormat(surface_format());
  if (!context.create() || !surface.isValid() || !context.makeCurrent(&surface)) {
    if (why != nullptr) *why = tr("This screen offers no OpenGL.");
    return false;
  }
  const QSurfaceFormat got = context.format();
  context.doneCurrent();
  if (got.majorVersion() > 3 || (got.majorVersion() == 3 && got.minorVersion() >= 2)) return true;
  if (why != nullptr) {
    *why = tr("This screen offers OpenGL %1.%2; 3.2 is needed.")
               .arg(got.majorVersion())
               .arg(got.minorVersion());
  }
  return false;
}

void LimbView::initializeGL() {
  Parts& p = *parts_;
  p.gl_ready = p.stage.initialise();
  // A context goes when the view moves to another window.
  p.context_going = connect(
      context(), &QOpenGLContext::aboutToBeDestroyed, this, [this] { release_gl(); },
      Qt::DirectConnection);
}

void LimbView::release_gl() {
  Parts& p = *parts_;
  disconnect(p.context_going);
  if (!p.gl_ready) return;
  p.gl_ready = false;
  makeCurrent();
  p.stage.release();
  doneCurrent();
}

void LimbView::paintGL() {
  Parts& p = *parts_;
  QElapsedTimer timer;
  timer.start();
  QOpenGLFunctions* gl = context()->functions();
  if (!p.gl_ready) {
    gl->glClearColor(0.5f, 0.5f, 0.5f, 1.0f);
    gl->glClear(GL_COLOR_BUFFER_BIT);
    return;
  }
  p.begin_next_pose();
  p.stage.set_size(physical(*this));
  p.stage.paint(defaultFramebufferObject());
  p.gl_errors += errors_of(gl);
  if (p.meshes) {
    QPainter painter(this);
    p.layout = paint_overlay(painter, p.overlay(p.style, p.camera, size()));
  }
  p.gl_errors += errors_of(gl);
  Q_EMIT frame_drawn(static_cast<double>(timer.nsecsElapsed()) * 1e-6);
}

void LimbView::show_limb(std::shared_ptr<const limb::SceneLimb> limb, const limb::Pose& pose) {
  parts_->limb = std::move(limb);
  parts_->ask_pose(pose);
}

void LimbView::set_pose(const limb::Pose& pose) {
  if (parts_->limb) parts_->ask_pose(pose);
}

std::shared_ptr<const limb::LimbScene> LimbView::scene() const {
  if (!parts_->meshes) return nullptr;
  return {parts_->meshes, &parts_->meshes->scene};
}

void LimbView::Parts::restyle() {
  stage.set_style(style);
  // They are not moved along while they are hidden.
  if (limb && meshes && wants_muscles() && !meshes->with_muscles) ask_pose(pose);
  view.update();
}

void LimbView::Parts::remark() {
  if (!meshes) return;
  const limb::LimbScene& scene = meshes->scene;
  ExtraMarks marks{lesions, routes, {}, {}, {}, {}};
  for (const SkinSpot& each : incision_line) marks.incision_mm.push_back(place_mm(scene, each));
  for (const SkinSpot& each : incision_marks) {
    marks.incision_points_mm.push_back(place_mm(scene, each));
  }
  for (const Pick& end : measured_ends) marks.measured_ends_mm.push_back(end.place_mm);
  marks.measured_mm =
      tape_mm.empty() && measured_ends.size() == 2 ? marks.measured_ends_mm : tape_mm;
  stage.set_extras(extras_of(marks, scene, style.colours()));
  view.update();
}

void LimbView::Parts::move_camera() {
  stage.set_camera(camera);
  move();
  view.update();
}

void LimbView::set_palette_kind(PaletteKind kind) {
  parts_->style.palette = kind;
  parts_->restyle();
  parts_->remark();
}

void LimbView::set_layers(Layers layers) {
  parts_->style.layers = layers;
  parts_->restyle();
}

void LimbView::set_layer(Layer layer, bool on) {
  set_layers(on ? layers() | layer : layers() & ~Layers(layer));
}

Layers LimbView::layers() const {
  return parts_->style.layers;
}

void LimbView::set_muscle_opacity(double opacity) {
  parts_->style.muscle_opacity = std::clamp(opacity, 0.05, 1.0);
  parts_->restyle();
}

void LimbView::highlight(const QStringList& names) {
  parts_->style.highlighted.clear();
  for (const QString& name : names) parts_->style.highlighted.insert(name.toStdString());
  parts_->restyle();
}

void LimbView::set_namer(Namer namer) {
  parts_->namer = std::move(namer);
  update();
}

Eigen::AlignedBox3d LimbView::Parts::box() const {
  Eigen::AlignedBox3d all;
  for (const Eigen::Vector3d& p : meshes->scene.skin_mm) all.extend(p);
  const auto& nerves = meshes->scene.shape->nerves;
  for (std::size_t n = 0; n < nerves.size(); ++n) {
    if (nerves[n].rank != limb::NerveRank::girdle || !style.layers.testFlag(Layer::nerves))
      continue;
    for (const Eigen::Vector3d& p : meshes->scene.nerves_mm[n]) all.extend(p);
  }
  return all;
}

void LimbView::Parts::fit() {
  fitted = true;
  camera.fit(box(), view.size());
  move_camera();
}

void LimbView::look_from(Aspect aspect) {
  Parts& p = *parts_;
  p.camera.look_from(aspect, p.limb ? p.limb->shape()->side : Side::right);
  if (p.meshes) p.fit();
  p.move_camera();
}

void LimbView::reset_view() {
  parts_->touched = false;
  if (parts_->meshes) parts_->fit();
}

void LimbView::look_at(const std::vector<Eigen::Vector3d>& places_mm) {
  Eigen::AlignedBox3d box;
  for (const Eigen::Vector3d& place : places_mm) box.extend(place);
  if (box.isEmpty()) return;
  Parts& p = *parts_;
  p.touched = true;
  p.camera.fit(box, size());
  p.move_camera();
}

void LimbView::set_lesion_marks(std::vector<LesionMark> marks) {
  parts_->lesions = std::move(marks);
  parts_->remark();
}

void LimbView::set_routes(std::vector<Route> routes) {
  parts_->routes = std::move(routes);
  parts_->remark();
}

void LimbView::set_incision(std::vector<SkinSpot> line, std::vector<SkinSpot> marks) {
  parts_->incision_line = std::move(line);
  parts_->incision_marks = std::move(marks);
  parts_->line_at_mark.clear();
  parts_->remark();
}

void LimbView::clear_incision() {
  set_incision({}, {});
}

void LimbView::clear_measurement() {
  parts_->measured_ends.clear();
  parts_->measurement.reset();
  parts_->tape_mm.clear();
  parts_->remark();
}

void LimbView::set_skin_values(std::span<const float> values, const SkinLegend& legend) {
  parts_->style.skin_values.assign(values.begin(), values.end());
  parts_->style.values_low = legend.low;
  parts_->style.values_high = legend.high;
  parts_->legend = legend;
  parts_->restyle();
}

void LimbView::clear_skin_values() {
  parts_->style.skin_values.clear();
  parts_->legend.reset();
  parts_->restyle();
}

void LimbView::set_clip(std::optional<ClipPlane> clip) {
  parts_->style.clip = clip;
  parts_->restyle();
}

Overlay LimbView::Parts::overlay(const SceneStyle& in, const OrbitCamera& seen_from,
                                 const QSizeF& size) const {
  const Palette& palette = in.colours();
  const limb::LimbScene& scene = meshes->scene;
  Overlay result;
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
    if (route.stretches.empty()) continue;
    const auto line = stretch_mm(scene, route.stretches.back());
    if (line.empty()) continue;
    add(route.label, line.front(), route.colour.isValid() ? route.colour : palette.route);
  }
  result.outline_mm = outline_of(scene, in);
  result.legend = legend;
  result.banner = banner();
  return result;
}

QImage LimbView::picture(const QSize& pixels, PaletteKind kind) const {
  const Parts& p = *parts_;
  if (!p.meshes || pixels.isEmpty()) return {};
  QOffscreenSurface surface;
  surface.setFormat(surface_format());
  surface.create();
  QOpenGLContext context;
  context.setFormat(surface_format());
  if (!context.create() || !context.makeCurrent(&surface)) return {};

  // As much of the limb as on the screen, and names as large against it.
  const double scale = std::min(static_cast<double>(pixels.height()) / height(),
                                static_cast<double>(pixels.width()) / width());
  const QSizeF logical(pixels.width() / scale, pixels.height() / scale);
  OrbitCamera seen_from = p.camera;
  seen_from.set_mm_per_pixel(p.camera.mm_per_pixel(size()), logical);
  SceneStyle style = p.style;
  style.palette = kind;
  QImage image;
  {
    SceneStage stage({[&] { context.makeCurrent(&surface); },
                      [&] { return QOpenGLContext::currentContext() == &context; }});
    if (!stage.initialise()) return {};
    stage.set_size(pixels);
    stage.set_style(style);
    stage.set_meshes(p.meshes);
    stage.set_camera(seen_from);
    ExtraMarks marks{p.lesions, p.routes, {}, {}, p.tape_mm, {}};
    for (const SkinSpot& each : p.incision_line) {
      marks.incision_mm.push_back(place_mm(p.meshes->scene, each));
    }
    stage.set_extras(extras_of(marks, p.meshes->scene, style.colours()));
    QOpenGLFramebufferObject target(pixels);
    stage.paint(target.handle());
    image = target.toImage().convertToFormat(QImage::Format_RGB32);
    stage.release();
  }
  context.doneCurrent();
  QPainter painter(&image);
  painter.scale(scale, scale);
  Overlay overlay = p.overlay(style, seen_from, logical);
  if (p.tool != Tool::look && !p.measurement) overlay.banner.clear();
  paint_overlay(painter, overlay);
  return image;
}

QPointF LimbView::to_widget(const Eigen::Vector3d& place_mm) const {
  return parts_->camera.to_picture(place_mm, size());
}

const OverlayLayout& LimbView::layout() const {
  return parts_->layout;
}

int LimbView::gl_errors() const {
  return parts_->gl_errors;
}

void LimbView::resizeEvent(QResizeEvent* event) {
  QOpenGLWidget::resizeEvent(event);
  Parts& p = *parts_;
  // A view that was made small and not yet turned to by hand shows the whole limb.
  if (p.meshes && !p.touched) p.fit();
}

}  // namespace endplate::ui
