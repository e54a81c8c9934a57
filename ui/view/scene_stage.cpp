#include "ui/view/scene_stage.hpp"

#include <vtkActor.h>
#include <vtkCallbackCommand.h>
#include <vtkCamera.h>
#include <vtkCullerCollection.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkLight.h>
#include <vtkNew.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLState.h>
#include <vtkPlane.h>
#include <vtkRenderer.h>

#include <QOpenGLContext>
#include <QOpenGLExtraFunctions>
#include <QOpenGLFramebufferObject>
#include <QRect>
#include <cstdint>
#include <utility>
#include <vector>

#include "ui/view/mesh_actor.hpp"

namespace endplate::ui {
namespace {

constexpr double kGhost = 0.3;
constexpr double kValuesOpacity = 0.88;
constexpr double kEye_mm = 2500.0;

// In this order: what is seen through comes last.
constexpr std::array kDrawOrder{Batch::bones,        Batch::nerves,        Batch::small_nerves,
                                Batch::chest_nerves, Batch::branch_points, Batch::motor_entries,
                                Batch::landmarks,    Batch::muscles,       Batch::skin,
                                Batch::ghosts};

}  // namespace

// Lives as long as the context: made anew in each, so that nothing of an old one is left.
struct Drawing {
  vtkNew<vtkGenericOpenGLRenderWindow> window;
  vtkNew<vtkRenderer> renderer;
  std::array<MeshActor, kBatches> actors;
  std::array<bool, kBatches> points_stale{};
  std::array<bool, kBatches> colours_stale{};
  MeshActor extras;
  MeshActor extra_ghosts;
  vtkNew<vtkPlane> plane;
  vtkNew<vtkCallbackCommand> make_current;
  vtkNew<vtkCallbackCommand> is_current;
  // Whose triangles each actor holds.
  std::array<std::shared_ptr<const limb::SceneShape>, kBatches> shapes;
  // Where several samples become one pixel.
  std::unique_ptr<QOpenGLFramebufferObject> resolved;
};

struct SceneStage::Parts {
  Context context;
  int samples = 0;
  QSize pixels{16, 16};
  std::shared_ptr<const SceneMeshes> meshes;
  std::shared_ptr<const SceneStyle> given_style = std::make_shared<const SceneStyle>();
  SceneExtras extras;
  OrbitCamera camera;
  std::unique_ptr<Drawing> drawing;
  std::vector<std::uint8_t> rows;  // of the picture, from below
  bool dirty = true;
  bool style_stale = true;
  bool extras_stale = true;

  void sync();
  void sync_batch(Batch batch);
  void sync_style();
  void sync_camera();
  bool is_seen_through(Batch batch) const;
  const SceneStyle& style() const { return *given_style; }
  QRect drawn() const;
  void read(const QRect& part, QImage& image);
};

namespace {

std::size_t number(Batch batch) {
  return static_cast<std::size_t>(batch);
}

void set_colour(vtkRenderer* renderer, const QColor& colour) {
  renderer->SetBackground(colour.redF(), colour.greenF(), colour.blueF());
  renderer->SetBackgroundAlpha(1.0);
}

}  // namespace

void SceneStage::Parts::sync_batch(Batch batch) {
  MeshActor& actor = drawing->actors[number(batch)];
  bool& points_stale = drawing->points_stale[number(batch)];
  bool& colours_stale = drawing->colours_stale[number(batch)];
  const bool shown = meshes && shows(style(), batch) && (*meshes)[batch].triangles() > 0;
  actor.set_visible(shown);
  if (!shown || (!points_stale && !colours_stale)) return;
  auto& shape = drawing->shapes[number(batch)];
  const SceneMeshes* from = meshes.get();
  SceneMeshes with_asked;
  if (batch == Batch::landmarks) {
    with_asked.scene = meshes->scene;
    with_asked.batches[number(batch)] = landmark_dots(meshes->scene, style().highlighted);
    from = &with_asked;
  }
  const bool same = shape == meshes->scene.shape && batch != Batch::landmarks;
  if (points_stale || !same) actor.set_mesh((*from)[batch], same);
  if (colours_stale || !same) actor.set_colours(colours_of(*from, batch, style()));
  shape = meshes->scene.shape;
  points_stale = colours_stale = false;
}

void SceneStage::Parts::sync_style() {
  const Palette& palette = style().colours();
  set_colour(drawing->renderer, palette.background);
  const bool values = !style().skin_values.empty();
  MeshActor& skin = drawing->actors[number(Batch::skin)];
  skin.set_opacity(values ? kValuesOpacity : palette.skin_opacity);
  skin.set_rim(values ? kValuesOpacity : palette.skin_rim);
  MeshActor& muscles = drawing->actors[number(Batch::muscles)];
  muscles.set_opacity(style().muscle_opacity);
}

bool SceneStage::Parts::is_seen_through(Batch batch) const {
  return batch == Batch::skin || batch == Batch::ghosts ||
         (batch == Batch::muscles && style().muscle_opacity < 1.0);
}

void SceneStage::Parts::sync_camera() {
  vtkCamera* view = drawing->renderer->GetActiveCamera();
  const Eigen::Vector3d& focus = camera.focus_mm();
  const Eigen::Vector3d eye = focus + kEye_mm * camera.eye_direction();
  const Eigen::Vector3d up = camera.up();
  view->ParallelProjectionOn();
  view->SetParallelScale(0.5 * camera.height_mm());
  view->SetPosition(eye.data());
  view->SetFocalPoint(focus.data());
  view->SetViewUp(up.data());
  view->SetClippingRange(1.0, 2.0 * kEye_mm);

  const auto cut = meshes ? cut_of(style(), meshes->scene) : std::nullopt;
  if (cut) {
    drawing->plane->SetOrigin(cut->through_mm.data());
    drawing->plane->SetNormal(cut->kept.data());
  }
  // Of what is closed no back is seen until it is cut open.
  for (const Batch batch : kDrawOrder) {
    MeshActor& actor = drawing->actors[number(batch)];
    actor.set_clip(cut ? drawing->plane.Get() : nullptr);
    actor.show_front_only(!cut || is_seen_through(batch));
  }
}

// The part of the picture that anything is drawn in, from its upper left corner.
QRect SceneStage::Parts::drawn() const {
  QRectF all;
  const auto add = [&](const Eigen::AlignedBox3d& box) {
    if (box.isEmpty()) return;
    for (int corner = 0; corner < 8; ++corner) {
      const QPointF at = camera.to_picture(
          box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(corner)), QSizeF(pixels));
      all = all.isNull() ? QRectF(at, QSizeF(1.0, 1.0)) : all.united(QRectF(at, QSizeF(1.0, 1.0)));
    }
  };
  for (const Batch batch : kDrawOrder) {
    if (meshes && shows(style(), batch)) add(meshes->boxes[number(batch)]);
  }
  Eigen::AlignedBox3d marks;
  for (std::size_t k = 0; k < extras.mesh.points.size(); k += 3) {
    marks.extend(
        Eigen::Vector3f(extras.mesh.points[k], extras.mesh.points[k + 1], extras.mesh.points[k + 2])
            .cast<double>());
  }
  add(marks);
  constexpr int kEdge = 8;  // landmarks asked for may stand out of the box by as much
  return all.toAlignedRect().adjusted(-kEdge, -kEdge, kEdge, kEdge) & QRect(QPoint(0, 0), pixels);
}

void SceneStage::Parts::sync() {
  if (style_stale) {
    sync_style();
    drawing->colours_stale.fill(true);
  }
  for (const Batch batch : kDrawOrder) sync_batch(batch);
  if (extras_stale) {
    for (MeshActor* actor : {&drawing->extras, &drawing->extra_ghosts}) {
      actor->set_visible(extras.mesh.triangles() > 0);
      actor->set_mesh(extras.mesh, false);
      actor->set_colours(extras.colours);
    }
  }
  sync_camera();
  style_stale = extras_stale = false;
}

SceneStage::SceneStage(Context context, int samples) : parts_(std::make_unique<Parts>()) {
  parts_->context = std::move(context);
  parts_->samples = samples;
}

SceneStage::~SceneStage() = default;

bool SceneStage::initialise() {
  Parts& p = *parts_;
  p.drawing = std::make_unique<Drawing>();
  Drawing& d = *p.drawing;
  d.window->SetReadyForRendering(false);
  d.window->SetOwnContext(0);
  d.window->SetFrameBlitModeToNoBlit();
  // Or each picture's colours and depths would be copied once more, all over, to a framebuffer that
  // nobody looks at: paint() takes what it needs from the one that is drawn in.
  d.window->SwapBuffersOff();
  d.window->SetMultiSamples(p.samples);
  d.make_current->SetClientData(&p);
  d.make_current->SetCallback([](vtkObject*, unsigned long, void* parts, void*) {
    static_cast<Parts*>(parts)->context.make_current();
  });
  d.is_current->SetClientData(&p);
  d.is_current->SetCallback([](vtkObject*, unsigned long, void* parts, void* answer) {
    *static_cast<bool*>(answer) = static_cast<Parts*>(parts)->context.is_current();
  });
  d.window->AddObserver(vtkCommand::WindowMakeCurrentEvent, d.make_current);
  d.window->AddObserver(vtkCommand::WindowIsCurrentEvent, d.is_current);
  d.window->SetReadyForRendering(true);
  // Qt's contexts are of the core profile, where wide lines are none of the driver's.
  d.window->SetForceMaximumHardwareLineWidth(1.0f);
  if (!d.window->InitializeFromCurrentContext()) {
    release();
    return false;
  }
  d.window->SetSize(p.pixels.width(), p.pixels.height());

  d.window->AddRenderer(d.renderer);
  d.renderer->GetCullers()->RemoveAllItems();
  d.renderer->SetAutomaticLightCreation(false);
  d.renderer->SetTwoSidedLighting(true);
  vtkNew<vtkLight> light;
  light->SetLightTypeToCameraLight();
  light->SetPosition(-0.35, 0.45, 1.0);
  light->SetFocalPoint(0.0, 0.0, 0.0);
  d.renderer->AddLight(light);
  for (const Batch batch : kDrawOrder) d.renderer->AddActor(d.actors[number(batch)].actor());
  d.renderer->AddActor(d.extras.actor());
  d.renderer->AddActor(d.extra_ghosts.actor());
  d.actors[number(Batch::bones)].set_shine(0.08);
  d.actors[number(Batch::nerves)].set_shine(0.25);
  d.extras.set_shine(0.2);
  for (MeshActor* ghost : {&d.actors[number(Batch::ghosts)], &d.extra_ghosts}) {
    ghost->pull_to_front();
    ghost->set_unlit();
  }
  d.extras.show_front_only(true);
  d.extra_ghosts.show_front_only(true);
  d.actors[number(Batch::ghosts)].set_opacity(kGhost);
  d.extra_ghosts.set_opacity(0.5);
  d.points_stale.fill(true);
  p.style_stale = p.extras_stale = p.dirty = true;
  return true;
}

void SceneStage::release() {
  if (!parts_->drawing) return;
  Drawing& d = *parts_->drawing;
  d.window->Finalize();
  d.window->RemoveObserver(d.make_current);
  d.window->RemoveObserver(d.is_current);
  d.window->RemoveRenderer(d.renderer);
  parts_->drawing.reset();
}

void SceneStage::set_size(const QSize& pixels) {
  Parts& p = *parts_;
  if (pixels == p.pixels) return;
  p.pixels = pixels;
  if (p.drawing) p.drawing->window->SetSize(pixels.width(), pixels.height());
  p.dirty = true;
}

void SceneStage::set_samples(int samples) {
  Parts& p = *parts_;
  if (samples == p.samples) return;
  p.samples = samples;
  if (p.drawing) p.drawing->window->SetMultiSamples(samples);
  p.dirty = true;
}

void SceneStage::set_meshes(std::shared_ptr<const SceneMeshes> meshes) {
  parts_->meshes = std::move(meshes);
  if (parts_->drawing) parts_->drawing->points_stale.fill(true);
  parts_->dirty = true;
}

void SceneStage::set_style(std::shared_ptr<const SceneStyle> style) {
  parts_->given_style = std::move(style);
  parts_->style_stale = parts_->dirty = true;
}

void SceneStage::set_extras(SceneExtras extras) {
  parts_->extras = std::move(extras);
  parts_->extras_stale = parts_->dirty = true;
}

void SceneStage::set_camera(const OrbitCamera& camera) {
  parts_->camera = camera;
  parts_->dirty = true;
}

// A part of what VTK has drawn, whose rows come from below, into the picture at the same place.
void SceneStage::Parts::read(const QRect& part, QImage& image) {
  QOpenGLExtraFunctions* gl = QOpenGLContext::currentContext()->extraFunctions();
  const int bottom = pixels.height() - part.y() - part.height();
  vtkOpenGLFramebufferObject* from = drawing->window->GetRenderFramebuffer();
  from->Bind(GL_READ_FRAMEBUFFER);
  from->ActivateReadBuffer(0);
  if (samples > 0) {
    auto& resolved = drawing->resolved;
    if (!resolved || resolved->size() != pixels) {
      resolved = std::make_unique<QOpenGLFramebufferObject>(pixels);
      // Qt has bound its own behind VTK's back, which would take it for bound still.
      gl->glBindFramebuffer(GL_READ_FRAMEBUFFER, from->GetFBOIndex());
    }
    const int right = part.x() + part.width();
    const int top = bottom + part.height();
    gl->glBindFramebuffer(GL_DRAW_FRAMEBUFFER, resolved->handle());
    gl->glBlitFramebuffer(part.x(), bottom, right, top, part.x(), bottom, right, top,
                          GL_COLOR_BUFFER_BIT, GL_NEAREST);
    gl->glBindFramebuffer(GL_READ_FRAMEBUFFER, resolved->handle());
  }
  const auto width = static_cast<std::size_t>(part.width());
  rows.resize(4 * width * static_cast<std::size_t>(part.height()));
  gl->glPixelStorei(GL_PACK_ALIGNMENT, 4);
  gl->glReadPixels(part.x(), bottom, part.width(), part.height(), GL_RGBA, GL_UNSIGNED_BYTE,
                   rows.data());
  for (int y = 0; y < part.height(); ++y) {
    const std::uint8_t* in =
        rows.data() + 4 * width * static_cast<std::size_t>(part.height() - 1 - y);
    auto* out = reinterpret_cast<QRgb*>(image.scanLine(part.y() + y)) + part.x();
    for (std::size_t x = 0; x < width; ++x, in += 4) {
      out[x] = 0xff000000U | (QRgb{in[0]} << 16) | (QRgb{in[1]} << 8) | QRgb{in[2]};
    }
  }
}

QImage SceneStage::paint() {
  Parts& p = *parts_;
  if (!p.drawing) return {};
  Drawing& d = *p.drawing;
  vtkOpenGLState* state = d.window->GetState();
  // What read() left bound is not what VTK believes to know.
  state->Reset();
  state->Push();
  state->vtkglDepthFunc(GL_LEQUAL);
  if (p.dirty) {
    p.dirty = false;
    p.sync();
    d.window->Render();
  }
  QImage image(p.pixels, QImage::Format_RGB32);
  image.fill(p.style().colours().background);
  // Only what is drawn is read: under a software renderer every pixel counts.
  const QRect drawn = p.drawn();
  if (!drawn.isEmpty()) p.read(drawn, image);
  state->Pop();
  return image;
}

}  // namespace endplate::ui
