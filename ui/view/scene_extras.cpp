#include "ui/view/scene_extras.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::ui {
namespace {

using Eigen::Vector3d;

constexpr double kLesion_mm = 7.0;
constexpr double kRoute_mm = 2.8;
constexpr double kIncision_mm = 1.8;
constexpr double kMeasure_mm = 1.5;
constexpr double kDash_mm = 6.0;

class Extras {
 public:
  explicit Extras(SceneExtras& out) : out_(out) {}

  void tube(std::span<const Vector3d> line, double radius_mm, const QColor& colour) {
    if (line.size() < 2) return;
    add_tube(out_.mesh, line, radius_mm, 6, 0);
    paint(colour);
  }
  void broken(const Vector3d& from, const Vector3d& to, double radius_mm, const QColor& colour) {
    const double length_mm = (to - from).norm();
    const int pieces = std::max(1, static_cast<int>(length_mm / kDash_mm)) | 1;
    for (int k = 0; k < pieces; k += 2) {
      const std::array line{Vector3d(from + (to - from) * k / pieces),
                            Vector3d(from + (to - from) * (k + 1) / pieces)};
      tube(line, radius_mm, colour);
    }
  }
  void dot(const Vector3d& at, double radius_mm, Dot kind, const QColor& colour) {
    add_dot(out_.mesh, at, radius_mm, kind, 0);
    paint(colour);
  }

 private:
  void paint(const QColor& colour) {
    while (out_.colours.size() < 3 * out_.mesh.vertices()) {
      for (const int part : {colour.red(), colour.green(), colour.blue()}) {
        out_.colours.push_back(static_cast<std::uint8_t>(part));
      }
    }
  }
  SceneExtras& out_;
};

}  // namespace

std::vector<Vector3d> stretch_mm(const limb::LimbScene& scene, const RouteStretch& stretch) {
  const auto nerve = scene.shape->find_nerve(stretch.nerve.toStdString());
  if (!nerve) return {};
  const auto [low, high] = std::minmax(stretch.from_mm, stretch.to_mm);
  std::vector<Vector3d> line{scene.place_mm({*nerve, low})};
  const std::vector<double>& arcs = scene.shape->nerves[*nerve].arc_mm;
  for (std::size_t k = 0; k < arcs.size(); ++k) {
    if (arcs[k] > low && arcs[k] < high) line.push_back(scene.nerves_mm[*nerve][k]);
  }
  line.push_back(scene.place_mm({*nerve, high}));
  if (stretch.from_mm > stretch.to_mm) std::ranges::reverse(line);
  return line;
}

SceneExtras extras_of(const ExtraMarks& marks, const limb::LimbScene& scene,
                      const Palette& palette) {
  SceneExtras result;
  Extras extras(result);
  for (const LesionMark& mark : marks.lesions) {
    const auto nerve = scene.shape->find_nerve(mark.nerve.toStdString());
    if (!nerve) continue;
    extras.dot(scene.place_mm({*nerve, mark.arc_mm}), kLesion_mm, Dot::ball, palette.lesion);
  }
  for (const Route& route : marks.routes) {
    const QColor colour = route.colour.isValid() ? route.colour : palette.route;
    const Vector3d* end = nullptr;
    std::vector<Vector3d> before;
    for (const RouteStretch& stretch : route.stretches) {
      std::vector<Vector3d> line = stretch_mm(scene, stretch);
      if (line.empty()) continue;
      if (end != nullptr) extras.broken(*end, line.front(), kRoute_mm, colour);
      extras.tube(line, kRoute_mm, colour);
      before = std::move(line);
      end = &before.back();
    }
    for (const auto& line : route.lines_mm) extras.tube(line, kRoute_mm, colour);
  }
  extras.tube(marks.incision_mm, kIncision_mm, palette.incision);
  for (const Vector3d& at : marks.incision_points_mm) {
    extras.dot(at, 2.0 * kIncision_mm, Dot::small_ball, palette.incision);
  }
  extras.tube(marks.measured_mm, kMeasure_mm, palette.measure);
  for (const Vector3d& at : marks.measured_ends_mm) {
    extras.dot(at, 2.5 * kMeasure_mm, Dot::small_ball, palette.measure);
  }
  return result;
}

}  // namespace endplate::ui
