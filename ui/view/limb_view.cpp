#include "ui/view/limb_view.hpp"

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <algorithm>
#include <cmath>
#include <utility>

#include "ui/view/limb_view_parts.hpp"
#include "ui/view/surface_format.hpp"

namespace endplate::ui {
LimbView::LimbView(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>(*this)) {
  setAttribute(Qt::WA_OpaquePaintEvent);
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setMinimumSize(240, 240);
  setAccessibleName(tr("View of the limb"));
  setAccessibleDescription(
      tr("Skin, bones, muscles and nerves of the limb. Keys 1 to 5 look from the front, the back, "
         "the lateral and medial side and from above; the arrows turn it."));
}

LimbView::~LimbView() = default;

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
  ordered_style.reset();
  // They are not moved along while they are hidden.
  if (limb && meshes && wants_muscles() && !meshes->with_muscles) ask_pose(pose);
  redraw();
}

void LimbView::Parts::remark() {
  ordered_marks.reset();
  redraw();
}

void LimbView::Parts::move_camera() {
  move();
  redraw();
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
  parts_->redraw();
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

QPointF LimbView::to_widget(const Eigen::Vector3d& place_mm) const {
  return parts_->camera.to_picture(place_mm, size());
}

const OverlayLayout& LimbView::layout() const {
  return parts_->picture.layout;
}

int LimbView::gl_errors() const {
  return parts_->gl_errors;
}

void LimbView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  Parts& p = *parts_;
  // A view that was made small and not yet turned to by hand shows the whole limb.
  if (p.meshes && !p.touched) p.fit();
  p.redraw();
}

}  // namespace endplate::ui
