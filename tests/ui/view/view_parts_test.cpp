// The parts of the view that need no screen.
#include <QLineF>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "ui/view/label_placer.hpp"
#include "ui/view/mesh_batch.hpp"
#include "ui/view/orbit_camera.hpp"
#include "ui/view/palette.hpp"
#include "view_fixture.hpp"

namespace endplate::ui {
namespace {

using Eigen::Vector3d;

Vector3d vertex(const MeshBatch& mesh, std::uint32_t v) {
  return {mesh.points[3 * v], mesh.points[3 * v + 1], mesh.points[3 * v + 2]};
}

double volume(const MeshBatch& mesh) {
  double sum = 0.0;
  for (std::size_t t = 0; t < mesh.triangles(); ++t) {
    const Vector3d a = vertex(mesh, mesh.corners[3 * t]);
    const Vector3d b = vertex(mesh, mesh.corners[3 * t + 1]);
    const Vector3d c = vertex(mesh, mesh.corners[3 * t + 2]);
    sum += a.dot(b.cross(c)) / 6.0;
  }
  return sum;
}

// CIE L*a*b* of a colour as an eye without one kind of cone sees it (Machado, Oliveira and
// Fernandes, IEEE Trans Vis Comput Graph 2009;15:1291, severity 1).
enum class Eye { all, no_red, no_green };
Vector3d lab(const QColor& colour, Eye eye) {
  const auto linear = [](double s) {
    return s <= 0.04045 ? s / 12.92 : std::pow((s + 0.055) / 1.055, 2.4);
  };
  Vector3d rgb(linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF()));
  Eigen::Matrix3d cones = Eigen::Matrix3d::Identity();
  if (eye == Eye::no_red) {
    cones << 0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116,
        1.051998;
  } else if (eye == Eye::no_green) {
    cones << 0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940,
        0.968881;
  }
  rgb = (cones * rgb).cwiseMax(0.0).cwiseMin(1.0);
  Eigen::Matrix3d to_xyz;
  to_xyz << 0.4124, 0.3576, 0.1805, 0.2126, 0.7152, 0.0722, 0.0193, 0.1192, 0.9505;
  const Vector3d xyz = (to_xyz * rgb).cwiseQuotient(Vector3d(0.9505, 1.0, 1.089));
  const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116.0; };
  return {116.0 * f(xyz.y()) - 16.0, 500.0 * (f(xyz.x()) - f(xyz.y())),
          200.0 * (f(xyz.y()) - f(xyz.z()))};
}

}  // namespace

TEST_CASE("A tube is closed, faces outward and is as thick as asked", "[view][mesh]") {
  MeshBatch mesh;
  const std::vector<Vector3d> line{{0, 0, 0}, {0, 50, 0}, {0, 100, 0}};
  add_tube(mesh, line, 2.0, 24, 7);
  CHECK(volume(mesh) == Approx(std::numbers::pi * 4.0 * 100.0).epsilon(0.03));
  std::map<std::pair<std::uint32_t, std::uint32_t>, int> edges;
  for (std::size_t t = 0; t < mesh.triangles(); ++t) {
    for (std::size_t k = 0; k < 3; ++k) {
      ++edges[{mesh.corners[3 * t + k], mesh.corners[3 * t + (k + 1) % 3]}];
    }
  }
  for (const auto& [edge, count] : edges) {
    CHECK(count == 1);
    CHECK(edges.contains({edge.second, edge.first}));
  }
  CHECK(std::ranges::all_of(mesh.items, [](std::uint32_t item) { return item == 7; }));
}

TEST_CASE("Dots face outward", "[view][mesh]") {
  for (const Dot dot : {Dot::ball, Dot::small_ball, Dot::diamond}) {
    MeshBatch mesh;
    add_dot(mesh, {3.0, 4.0, 5.0}, 1.0, dot, 0);
    CHECK(volume(mesh) > 1.2);
    CHECK(volume(mesh) < 4.2);
  }
}

TEST_CASE("What the camera shows at a point its ray meets again", "[view][camera]") {
  OrbitCamera camera;
  const QSizeF size(1000.0, 700.0);
  camera.fit({Vector3d(-50, -400, -60), Vector3d(50, 300, 60)}, size);
  camera.turn({120.0, 40.0});
  camera.shift({30.0, -12.0}, size);
  const Vector3d place(12.0, -130.0, 25.0);
  const QPointF at = camera.to_picture(place, size);
  const ViewRay ray = camera.ray(at, size);
  const Vector3d away = place - ray.origin_mm;
  CHECK((away - away.dot(ray.direction) * ray.direction).norm() < 1e-9);
  camera.zoom(3.0, at, size);
  const QPointF after = camera.to_picture(place, size);
  CHECK(QLineF(after, at).length() < 1e-6);
}

TEST_CASE("Aspects are named by the body, not by the screen", "[view][camera]") {
  OrbitCamera camera;
  for (const Side side : {Side::right, Side::left}) {
    const double lateral = side == Side::right ? 1.0 : -1.0;
    camera.look_from(Aspect::front, side);
    CHECK((camera.eye_direction() - Vector3d::UnitX()).norm() < 1e-12);
    camera.look_from(Aspect::lateral, side);
    CHECK((camera.eye_direction() - lateral * Vector3d::UnitZ()).norm() < 1e-12);
    camera.look_from(Aspect::medial, side);
    CHECK((camera.eye_direction() + lateral * Vector3d::UnitZ()).norm() < 1e-12);
    camera.look_from(Aspect::proximal, side);
    CHECK((camera.eye_direction() - Vector3d::UnitY()).norm() < 1e-12);
    CHECK((camera.up() - Vector3d::UnitX()).norm() < 1e-12);
  }
}

TEST_CASE("Labels never cover one another, the wanted ones come first", "[view][labels]") {
  std::mt19937 random(7);  // NOLINT(cert-msc51-cpp): the same labels each time
  std::uniform_real_distribution<double> share(0.0, 1.0);
  for (int round = 0; round < 20; ++round) {
    LabelRoom room;
    room.area = QRectF(0.0, 0.0, 900.0, 700.0);
    room.taken = {QRectF(10.0, 10.0, 90.0, 30.0)};
    for (int k = 0; k < 400; ++k) {
      room.subject.emplace_back(400.0 + 100.0 * share(random), 700.0 * share(random));
    }
    std::vector<LabelWish> wishes;
    for (int k = 0; k < 40; ++k) {
      wishes.push_back({QSizeF(60.0 + 120.0 * share(random), 18.0),
                        QPointF(400.0 + 100.0 * share(random), 700.0 * share(random)),
                        k < 5 ? 0 : 1});
    }
    const auto placed = place_labels(wishes, room);
    CHECK(placed.size() > 20);
    for (std::size_t wanted = 0; wanted < 5; ++wanted) {
      CHECK(std::ranges::find(placed, wanted, &PlacedLabel::wish) != placed.end());
    }
    for (std::size_t i = 0; i < placed.size(); ++i) {
      CHECK(room.area.contains(placed[i].box));
      CHECK_FALSE(placed[i].box.intersects(room.taken.front()));
      for (std::size_t k = 0; k < i; ++k) CHECK_FALSE(placed[i].box.intersects(placed[k].box));
    }
  }
}

TEST_CASE("Every palette tells the great nerves apart, for eyes without red or green too",
          "[view][palette]") {
  for (const PaletteKind kind :
       {PaletteKind::light, PaletteKind::dark, PaletteKind::print, PaletteKind::contrast}) {
    const Palette& palette = palette_of(kind);
    for (const Eye eye : {Eye::all, Eye::no_red, Eye::no_green}) {
      for (std::size_t a = 0; a < 5; ++a) {
        CHECK((lab(palette.nerves[a], eye) - lab(palette.background, eye)).norm() > 25.0);
        for (std::size_t b = 0; b < a; ++b) {
          INFO("palette " << static_cast<int>(kind) << ", eye " << static_cast<int>(eye)
                          << ", nerves " << a << " and " << b);
          CHECK((lab(palette.nerves[a], eye) - lab(palette.nerves[b], eye)).norm() > 15.0);
        }
      }
    }
    // The scale climbs or falls all the way, so that it reads without hue.
    std::vector<double> steps;
    for (std::size_t k = 1; k < palette.scale.size(); ++k) {
      steps.push_back(lab(palette.scale[k], Eye::all)[0] - lab(palette.scale[k - 1], Eye::all)[0]);
    }
    const bool falls = std::ranges::all_of(steps, [](double step) { return step < -8.0; });
    const bool climbs = std::ranges::all_of(steps, [](double step) { return step > 8.0; });
    CHECK((falls || climbs));
    // Text stands out from its ground.
    CHECK(std::abs(lab(palette.text, Eye::all)[0] - lab(palette.label, Eye::all)[0]) > 60.0);
  }
}

}  // namespace endplate::ui
