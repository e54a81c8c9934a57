// Dragging a joint in the desk's view of the limb against VTK's bare drawing of the same scene, in
// turn, in one run: the same triangles, new points every frame, the same camera and samples.
//
// Usage: endplate-bench-view DATASETS [FRAMES]. Needs a display; under Xvfb Mesa's llvmpipe draws.
#include <fmt/format.h>
#include <vtkCamera.h>
#include <vtkCullerCollection.h>
#include <vtkNew.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <array>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <vector>

#include "bench.hpp"
#include "models/anatomy/anatomy.hpp"
#include "models/limb/limb_scene.hpp"
#include "ui/view/limb_view.hpp"
#include "ui/view/mesh_actor.hpp"
#include "ui/view/orbit_camera.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/scene_style.hpp"

namespace {

using namespace endplate;

constexpr int kWidth = 1280;
constexpr int kHeight = 800;
constexpr int kPoses = 60;
constexpr int kSamples = 0;

// A slider's way: the elbow bends and the forearm turns.
limb::Pose pose_at(int round) {
  const double part = static_cast<double>(round % kPoses) / kPoses;
  return limb::pose_from({{"elbow_flexion_deg", 10.0 + 110.0 * part},
                          {"forearm_pronation_deg", 140.0 * part},
                          {"shoulder_abduction_deg", 40.0 * part}});
}

// How long the interface thread was busy with one event.
class Application : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override {
    QElapsedTimer timer;
    if (depth_++ == 0) timer.start();
    const bool done = QApplication::notify(receiver, event);
    if (--depth_ == 0) {
      busy_ms.push_back(static_cast<double>(timer.nsecsElapsed()) * 1e-6);
    }
    return done;
  }
  std::vector<double> busy_ms;

 private:
  int depth_ = 0;
};

double at_share(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  std::ranges::sort(values);
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

// VTK alone.
class Bare {
 public:
  Bare(const ui::SceneMeshes& first, const ui::SceneStyle& style) : style_(style) {
    window_->SetOffScreenRendering(1);
    window_->SetMultiSamples(kSamples);
    window_->SetSize(kWidth, kHeight);
    window_->AddRenderer(renderer_);
    renderer_->GetCullers()->RemoveAllItems();
    const ui::Palette& palette = style.colours();
    for (std::size_t b = 0; b < ui::kBatches; ++b) {
      const auto batch = static_cast<ui::Batch>(b);
      if (!ui::shows(style, batch)) continue;
      actors_[b].set_mesh(first[batch], false);
      actors_[b].set_colours(ui::colours_of(*first.scene.shape, batch, first[batch], style));
      actors_[b].show_front_only(true);
      renderer_->AddActor(actors_[b].actor());
    }
    actors_[static_cast<std::size_t>(ui::Batch::skin)].set_opacity(palette.skin_opacity);
    actors_[static_cast<std::size_t>(ui::Batch::ghosts)].set_opacity(0.3);
    Eigen::AlignedBox3d box;
    for (const auto& p : first.scene.skin_mm) box.extend(p);
    ui::OrbitCamera camera;
    camera.fit(box, {kWidth, kHeight});
    vtkCamera* view = renderer_->GetActiveCamera();
    const Eigen::Vector3d eye = camera.focus_mm() + 2500.0 * camera.eye_direction();
    view->ParallelProjectionOn();
    view->SetParallelScale(0.5 * camera.height_mm());
    view->SetPosition(eye.data());
    view->SetFocalPoint(camera.focus_mm().data());
    view->SetViewUp(0.0, 1.0, 0.0);
    view->SetClippingRange(1.0, 5000.0);
  }
  void draw(const ui::SceneMeshes& meshes) {
    for (std::size_t b = 0; b < ui::kBatches; ++b) {
      const auto batch = static_cast<ui::Batch>(b);
      if (ui::shows(style_, batch)) actors_[b].set_mesh(meshes[batch], true);
    }
    window_->Render();
    window_->WaitForCompletion();
  }

 private:
  ui::SceneStyle style_;
  vtkNew<vtkRenderWindow> window_;
  vtkNew<vtkRenderer> renderer_;
  std::array<ui::MeshActor, ui::kBatches> actors_;
};

// Until the signal comes.
template <class Signal>
void wait_for(ui::LimbView& view, Signal signal) {
  QEventLoop loop;
  QObject::connect(&view, signal, &loop, &QEventLoop::quit);
  QTimer::singleShot(5000, &loop, &QEventLoop::quit);
  loop.exec();
}

void run(Application& application, const std::shared_ptr<const limb::SceneLimb>& limb,
         ui::Layers layers, const char* name, int frames) {
  ui::SceneStyle style;
  style.layers = layers;
  std::vector<ui::SceneMeshes> poses;
  QElapsedTimer timer;
  timer.start();
  for (int k = 0; k < kPoses; ++k) poses.push_back(ui::mesh_scene(limb->in_pose(pose_at(k))));
  const double posing_ms = static_cast<double>(timer.nsecsElapsed()) * 1e-6 / kPoses;
  std::size_t triangles = 0;
  for (std::size_t b = 0; b < ui::kBatches; ++b) {
    const auto batch = static_cast<ui::Batch>(b);
    if (ui::shows(style, batch)) triangles += poses.front()[batch].triangles();
  }
  std::vector<double> bare_ms;
  std::vector<double> bare_cpu_ms;
  {
    Bare bare(poses.front(), style);
    for (int k = 0; k < frames; ++k) {
      timer.restart();
      const double processor = benchmarks::processor_seconds();
      bare.draw(poses[static_cast<std::size_t>(k % kPoses)]);
      if (k < 10) continue;
      bare_ms.push_back(static_cast<double>(timer.nsecsElapsed()) * 1e-6);
      bare_cpu_ms.push_back(1e3 * (benchmarks::processor_seconds() - processor));
    }
  }

  ui::LimbView view;
  view.resize(kWidth, kHeight);
  view.set_layers(layers);
  view.show();
  view.show_limb(limb, pose_at(0));
  wait_for(view, &ui::LimbView::pose_shown);
  // A mouse tells of its way every 8 ms; what the view cannot follow it leaves out.
  std::vector<double> drawn_ms;
  std::vector<double> between_ms;
  std::vector<double> cpu_ms;
  double processor = benchmarks::processor_seconds();
  int shown = 0;
  QEventLoop loop;
  QObject::connect(&view, &ui::LimbView::picture_shown, &view,
                   [&](double ms) { drawn_ms.push_back(ms); });
  // Of each picture of another pose, not of each picture.
  QObject::connect(&view, &ui::LimbView::pose_shown, &view, [&] {
    view.repaint();  // onto the screen, within this picture's time
    between_ms.push_back(static_cast<double>(timer.nsecsElapsed()) * 1e-6);
    timer.restart();
    const double now = benchmarks::processor_seconds();
    cpu_ms.push_back(1e3 * (now - processor));
    processor = now;
    if (++shown >= frames) loop.quit();
  });
  QTimer mouse;
  mouse.setTimerType(Qt::PreciseTimer);
  int step = 0;
  QObject::connect(&mouse, &QTimer::timeout, [&] { view.set_pose(pose_at(++step / 3)); });
  application.busy_ms.clear();
  mouse.start(8);
  timer.restart();
  loop.exec();
  between_ms.erase(between_ms.begin(),
                   between_ms.begin() + std::min<std::ptrdiff_t>(std::ssize(between_ms), 10));
  const double bare = at_share(bare_ms, 0.5);
  const double whole = at_share(between_ms, 0.5);
  std::cout << fmt::format(
      "| {} | {} | {:.1f} | {:.1f} | {:.1f} | {:.1f} | {:.1f} | {:.1f} | {:.1f} | {:.2f} | {:.0f} "
      "| "
      "{:.1f} |\n",
      name, triangles, posing_ms, bare, at_share(bare_cpu_ms, 0.5), at_share(drawn_ms, 0.5), whole,
      at_share(between_ms, 0.95), at_share(cpu_ms, 0.5), whole / bare, 1000.0 / whole,
      at_share(application.busy_ms, 1.0));
}

}  // namespace

int main(int argc, char** argv) {
  Application application(argc, argv);
  if (argc < 2) {
    std::cerr << "usage: endplate-bench-view DATASETS [FRAMES]\n";
    return 2;
  }
  const int frames = argc > 2 ? std::atoi(argv[2]) : 240;
  const auto package = benchmarks::need(evidence::DataPackage::read(argv[1]));
  const auto anatomy = benchmarks::need(anatomy::Anatomy::from(package));
  const auto limb = std::make_shared<const limb::SceneLimb>(
      benchmarks::need(limb::SceneLimb::from(package, anatomy, {})));
  std::cout
      << "| layers | triangles | posing, ms | bare drawing, ms | on all cores | drawing for "
         "the view, ms | whole frame, ms | 95 in 100 | on all cores | to bare | frames/s | "
         "longest event, ms |\n"
         "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |\n";
  run(application, limb, ui::kUsualLayers, "usual", frames);
  run(application, limb,
      ui::kUsualLayers | ui::Layer::muscles | ui::Layer::landmarks | ui::Layer::motor_entries,
      "all", frames);
  std::cout << fmt::format(
      "\nMedians of {} frames, {} by {} pixels, {} samples. The whole frame "
      "waits for the next pose, for Qt and for the screen.\n",
      frames, kWidth, kHeight, kSamples);
  return 0;
}
