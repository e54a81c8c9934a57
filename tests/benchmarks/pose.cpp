// What a change of pose costs against drawing it: the skin, all nerves and all landmarks of one
// limb recomputed on one core, and the same scene drawn by VTK, in turn, in one run.
//
// Usage: endplate-bench-pose DATASETS [ROUNDS]. Needs a display; under Xvfb Mesa's llvmpipe draws.
// Each mesh is drawn with the skin opaque and translucent: the one is VTK at its quickest.
#include <fmt/format.h>
#include <vtkActor.h>
#include <vtkCamera.h>
#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkOpenGLRenderWindow.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkPolyDataNormals.h>
#include <vtkProperty.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>
#include <vtkTubeFilter.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <span>
#include <string>
#include <vector>

#include "models/limb/atlas.hpp"
#include "models/limb/nerve_line.hpp"
#include "models/limb/skin_mesh.hpp"

namespace {

using namespace endplate;
using Clock = std::chrono::steady_clock;
using Eigen::Vector3d;

constexpr double kNerveStep_mm = 3.0;
constexpr int kWidth = 1280;
constexpr int kHeight = 800;

double since_ms(Clock::time_point start) {
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

double median(std::vector<double> values) {
  std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
  return values[values.size() / 2];
}

struct Limb {
  limb::Atlas atlas;
  limb::LimbJoints joints;
  limb::BodyEnvelope envelope;
};

struct Posed {
  std::vector<Vector3d> skin;
  std::vector<std::vector<Vector3d>> nerves;
  std::vector<Vector3d> landmarks;
};

// A slider's way: the elbow bends and the forearm turns.
limb::Pose pose_at(int round) {
  const double part = static_cast<double>(round % 60) / 60.0;
  return limb::pose_from({{"elbow_flexion_deg", 10.0 + 110.0 * part},
                          {"forearm_pronation_deg", 140.0 * part},
                          {"wrist_extension_deg", 50.0 * part - 20.0},
                          {"shoulder_abduction_deg", 60.0 * part},
                          {"fingers_flexion_deg", 70.0 * part}});
}

Posed posed(const Limb& l, const limb::SegmentFrames& frames, const limb::SkinMesh& skin,
            const std::vector<limb::NerveLine>& lines, const limb::Pose& pose) {
  const limb::PosedSpace space(frames, l.joints, pose);
  const limb::PosedNerves nerves(l.atlas.landmarks(), l.envelope, frames, space);
  Posed result;
  result.skin = limb::posed_vertices_mm(skin, space);
  for (const limb::NerveLine& line : lines) result.nerves.push_back(nerves(line));
  for (const limb::Landmark& landmark : l.atlas.landmarks().landmarks()) {
    result.landmarks.push_back(space.flesh(limb::LandmarkSet::position_mm(landmark, frames)));
  }
  return result;
}

void set_points(vtkPolyData* data, std::span<const Vector3d> places) {
  vtkNew<vtkFloatArray> array;
  array->SetNumberOfComponents(3);
  array->SetNumberOfTuples(static_cast<vtkIdType>(places.size()));
  float* out = array->GetPointer(0);
  for (const Vector3d& p : places) {
    for (int axis = 0; axis < 3; ++axis) *out++ = static_cast<float>(p[axis]);
  }
  vtkNew<vtkPoints> points;
  points->SetData(array);
  data->SetPoints(points);
}

// The bare drawing of what was computed: translucent skin, nerves as tubes, landmarks as points.
class Scene {
 public:
  Scene(const limb::SkinMesh& skin, const Posed& first, double opacity) {
    vtkNew<vtkCellArray> triangles;
    for (const auto& t : skin.mesh.triangles) {
      const vtkIdType ids[3] = {t[0], t[1], t[2]};
      triangles->InsertNextCell(3, ids);
    }
    skin_->SetPolys(triangles);
    vtkNew<vtkCellArray> lines;
    vtkIdType next = 0;
    for (const auto& nerve : first.nerves) {
      lines->InsertNextCell(static_cast<int>(nerve.size()));
      for (std::size_t i = 0; i < nerve.size(); ++i) lines->InsertCellPoint(next++);
    }
    nerves_->SetLines(lines);
    vtkNew<vtkCellArray> dots;
    for (vtkIdType i = 0; i < static_cast<vtkIdType>(first.landmarks.size()); ++i) {
      dots->InsertNextCell(1, &i);
    }
    landmarks_->SetVerts(dots);
    normals_->SetInputData(skin_);
    normals_->SplittingOff();
    normals_->ConsistencyOff();
    tubes_->SetInputData(nerves_);
    tubes_->SetRadius(1.2);
    tubes_->SetNumberOfSides(8);
    add(normals_->GetOutputPort(), opacity);
    add(tubes_->GetOutputPort(), 1.0);
    vtkNew<vtkPolyDataMapper> mapper;
    mapper->SetInputData(landmarks_);
    vtkNew<vtkActor> actor;
    actor->SetMapper(mapper);
    actor->GetProperty()->SetPointSize(5.0);
    renderer_->AddActor(actor);
    window_->SetOffScreenRendering(1);
    window_->SetMultiSamples(4);
    window_->SetSize(kWidth, kHeight);
    window_->AddRenderer(renderer_);
    show(first);
    renderer_->ResetCamera();
    window_->Render();
  }

  void show(const Posed& posed) {
    set_points(skin_, posed.skin);
    std::vector<Vector3d> all;
    for (const auto& nerve : posed.nerves) all.insert(all.end(), nerve.begin(), nerve.end());
    set_points(nerves_, all);
    set_points(landmarks_, posed.landmarks);
  }
  void draw() {
    window_->Render();
    window_->WaitForCompletion();
  }
  std::string drawn_by() const {
    const std::string all = window_->ReportCapabilities();
    const std::size_t at = all.find("OpenGL renderer string:");
    return at == std::string::npos ? "unknown" : all.substr(at + 24, all.find('\n', at) - at - 24);
  }

 private:
  void add(vtkAlgorithmOutput* output, double opacity) {
    vtkNew<vtkPolyDataMapper> mapper;
    mapper->SetInputConnection(output);
    vtkNew<vtkActor> actor;
    actor->SetMapper(mapper);
    actor->GetProperty()->SetOpacity(opacity);
    renderer_->AddActor(actor);
  }

  vtkNew<vtkPolyData> skin_;
  vtkNew<vtkPolyData> nerves_;
  vtkNew<vtkPolyData> landmarks_;
  vtkNew<vtkPolyDataNormals> normals_;
  vtkNew<vtkTubeFilter> tubes_;
  vtkNew<vtkRenderer> renderer_;
  vtkNew<vtkRenderWindow> window_;
};

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::cerr << "usage: endplate-bench-pose DATASETS [ROUNDS]\n";
    return 2;
  }
  const int rounds = argc > 2 ? std::atoi(argv[2]) : 120;
  const auto package = evidence::DataPackage::read(argv[1]);
  if (!package) {
    std::cerr << "error: the tables cannot be read\n";
    return 2;
  }
  const Limb l{limb::Atlas::fitted(*package).value(), limb::LimbJoints::from(*package).value(),
               limb::BodyEnvelope::from(*package).value()};
  const limb::SegmentFrames frames;
  std::vector<limb::NerveLine> lines;
  std::size_t nerve_places = 0;
  for (std::size_t c = 0; c < l.atlas.courses().size(); ++c) {
    lines.push_back(limb::nerve_line(l.atlas, c, frames, l.envelope, kNerveStep_mm));
    nerve_places += lines.back().places.size();
  }
  std::cout << "| skin triangles | skin | nerve places | landmarks | pose, ms | drawing, ms | "
               "drawing with "
               "new normals and tubes, ms |\n| ---: | --- | ---: | ---: | ---: | ---: | ---: |\n";
  std::string drawn_by;
  for (const auto& [fineness, opacity] :
       {std::pair{1, 1.0}, {1, 0.35}, {2, 1.0}, {2, 0.35}, {3, 1.0}, {3, 0.35}}) {
    const limb::SkinMesh skin = limb::make_skin(frames, l.envelope, l.joints, fineness);
    Posed now = posed(l, frames, skin, lines, pose_at(0));
    Scene scene(skin, now, opacity);
    drawn_by = scene.drawn_by();
    std::vector<double> pose_ms;
    std::vector<double> draw_ms;
    std::vector<double> frame_ms;
    for (int round = 0; round < rounds; ++round) {
      auto start = Clock::now();
      now = posed(l, frames, skin, lines, pose_at(round));
      pose_ms.push_back(since_ms(start));
      scene.show(now);
      // The first drawing of a pose also sends it to the graphics card and makes tubes and normals;
      // the second is the drawing alone.
      start = Clock::now();
      scene.draw();
      frame_ms.push_back(since_ms(start));
      start = Clock::now();
      scene.draw();
      draw_ms.push_back(since_ms(start));
    }
    std::cout << fmt::format("| {} | {} | {} | {} | {:.2f} | {:.2f} | {:.2f} |\n",
                             skin.mesh.triangles.size(), opacity < 1.0 ? "translucent" : "opaque",
                             nerve_places, now.landmarks.size(), median(pose_ms), median(draw_ms),
                             median(frame_ms));
  }
  std::cout << fmt::format("\nMedians of {} rounds, {} by {} pixels, drawn by {}.\n", rounds,
                           kWidth, kHeight, drawn_by);
  return 0;
}
