#include "ui/view/flat_pictures.hpp"

#include <QElapsedTimer>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "ui/view/depth_grid.hpp"

namespace endplate::ui {
namespace {

// Farther away first; what may be hidden after what hides it.
constexpr std::array kSolids{Batch::bones, Batch::muscles};
constexpr std::array kOnNerves{Batch::chest_nerves,  Batch::small_nerves,  Batch::nerves,
                               Batch::branch_points, Batch::motor_entries, Batch::landmarks};
// A nerve that lies on a bone is not hidden by it, however coarse the triangles.
constexpr double kSlack_mm = 3.0;
constexpr double kGhostOpacity = 0.3;
constexpr double kSkinOpacity = 0.35;
constexpr double kValuesOpacity = 0.88;

struct Corner {
  QPointF at;
  double depth_mm = 0.0;
};
using Triangle = std::array<std::uint32_t, 3>;  // of the batch's vertices

class Sheet {
 public:
  Sheet(QPainter& painter, const PictureOrder& order)
      : painter_(painter),
        o_(order),
        style_(*order.style),
        shape_(*order.meshes->scene.shape),
        hidden_(order.pixels) {
    cut_ = cut_of(style_, order.meshes->scene);
  }

  void paint() {
    if (shows(style_, Batch::skin)) skin();
    for (const Batch batch : kSolids) {
      if (shows(style_, batch)) solids(batch);
    }
    for (const Batch batch : kOnNerves) {
      if (shows(style_, batch)) things(batch, mesh_of(batch), true);
    }
    painter_.setOpacity(kGhostOpacity);
    if (shows(style_, Batch::ghosts)) things(Batch::ghosts, mesh_of(Batch::ghosts), false);
    painter_.setOpacity(1.0);
    marks();
  }

 private:
  MeshBatch mesh_of(Batch batch) const {
    if (batch == Batch::landmarks) {
      return landmark_dots(o_.meshes->scene, style_.highlighted);
    }
    return (*o_.meshes)[batch];
  }

  std::vector<Corner> corners_of(const MeshBatch& mesh) const {
    std::vector<Corner> corners(mesh.vertices());
    for (std::size_t v = 0; v < corners.size(); ++v) {
      const Eigen::Vector3d place = place_of(mesh, v);
      corners[v] = {o_.camera.to_picture(place, QSizeF(o_.pixels)), o_.camera.depth_mm(place)};
    }
    return corners;
  }

  static Eigen::Vector3d place_of(const MeshBatch& mesh, std::size_t vertex) {
    return Eigen::Vector3f(mesh.points[3 * vertex], mesh.points[3 * vertex + 1],
                           mesh.points[3 * vertex + 2])
        .cast<double>();
  }

  bool is_kept(const MeshBatch& mesh, const Triangle& t) const {
    return !cut_ || std::ranges::all_of(t, [&](std::uint32_t v) {
      return cut_->kept.dot(place_of(mesh, v) - cut_->through_mm) >= 0.0;
    });
  }

  // The triangles that face the eye, in their order.
  std::vector<Triangle> facing(const MeshBatch& mesh, const std::vector<Corner>& corners) const {
    std::vector<Triangle> kept;
    for (std::size_t k = 0; k < mesh.corners.size(); k += 3) {
      const Triangle t{mesh.corners[k], mesh.corners[k + 1], mesh.corners[k + 2]};
      const QPointF ab = corners[t[1]].at - corners[t[0]].at;
      const QPointF ac = corners[t[2]].at - corners[t[0]].at;
      // The picture's y points down: what is seen anticlockwise has a negative area there.
      if (ab.x() * ac.y() - ab.y() * ac.x() < 0.0 && is_kept(mesh, t)) kept.push_back(t);
    }
    return kept;
  }

  static void add(QPainterPath& path, const std::vector<Corner>& corners, const Triangle& t) {
    path.moveTo(corners[t[0]].at);
    path.lineTo(corners[t[1]].at);
    path.lineTo(corners[t[2]].at);
    path.closeSubpath();
  }

  static QColor colour_at(const std::vector<std::uint8_t>& colours, std::uint32_t vertex) {
    const std::size_t first = 3 * std::size_t{vertex};
    return {colours[first], colours[first + 1], colours[first + 2]};
  }

  void skin() {
    const MeshBatch& mesh = (*o_.meshes)[Batch::skin];
    const auto corners = corners_of(mesh);
    const auto triangles = facing(mesh, corners);
    QPainterPath whole;
    whole.setFillRule(Qt::WindingFill);
    for (const Triangle& t : triangles) add(whole, corners, t);
    if (style_.skin_values.size() == mesh.vertices()) {
      const auto colours = colours_of(shape_, Batch::skin, mesh, style_);
      painter_.setRenderHint(QPainter::Antialiasing, false);
      painter_.setOpacity(kValuesOpacity);
      painter_.setPen(Qt::NoPen);
      for (const Triangle& t : triangles) {
        painter_.setBrush(colour_at(colours, t[0]));
        const std::array places{corners[t[0]].at, corners[t[1]].at, corners[t[2]].at};
        painter_.drawConvexPolygon(places.data(), 3);
      }
      painter_.setRenderHint(QPainter::Antialiasing, true);
    } else {
      painter_.setOpacity(kSkinOpacity);
      painter_.fillPath(whole, style_.colours().skin);
    }
    painter_.setOpacity(1.0);
    painter_.setPen(QPen(style_.colours().skin.darker(130), o_.scale));
    outline(triangles, corners);
  }

  // The edges that one of the triangles has alone.
  void outline(const std::vector<Triangle>& triangles, const std::vector<Corner>& corners) {
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> edges;
    for (const Triangle& t : triangles) {
      for (std::size_t k = 0; k < 3; ++k) ++edges[std::minmax(t[k], t[(k + 1) % 3])];
    }
    QPainterPath path;
    for (const auto& [edge, count] : edges) {
      if (count != 1) continue;
      path.moveTo(corners[edge.first].at);
      path.lineTo(corners[edge.second].at);
    }
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPath(path);
  }

  // One after another, the farthest first.
  void solids(Batch batch) {
    const MeshBatch& mesh = (*o_.meshes)[batch];
    const auto corners = corners_of(mesh);
    const auto colours = colours_of(shape_, batch, mesh, style_);
    std::map<std::uint32_t, std::vector<Triangle>> of_item;
    for (const Triangle& t : facing(mesh, corners)) of_item[mesh.items[t[0]]].push_back(t);
    std::vector<std::pair<double, std::uint32_t>> order;
    for (const auto& [item, triangles] : of_item) {
      double sum = 0.0;
      for (const Triangle& t : triangles) sum += corners[t[0]].depth_mm;
      order.emplace_back(sum / static_cast<double>(triangles.size()), item);
    }
    std::ranges::sort(order, std::greater{});
    const bool opaque = batch == Batch::bones || style_.muscle_opacity >= 1.0;
    painter_.setOpacity(opaque ? 1.0 : style_.muscle_opacity);
    for (const auto& [depth_mm, item] : order) {
      const std::vector<Triangle>& triangles = of_item[item];
      QPainterPath path;
      path.setFillRule(Qt::WindingFill);
      for (const Triangle& t : triangles) {
        add(path, corners, t);
        if (opaque) hide_behind(corners, t);
      }
      const QColor colour = colour_at(colours, triangles.front()[0]);
      painter_.fillPath(path, colour);
      painter_.setPen(QPen(mixed(colour, style_.colours().text, 0.45), o_.scale));
      outline(triangles, corners);
    }
    painter_.setOpacity(1.0);
  }

  void hide_behind(const std::vector<Corner>& corners, const Triangle& t) {
    std::array<Eigen::Vector3d, 3> places;
    for (std::size_t k = 0; k < 3; ++k) {
      const Corner& corner = corners[t[k]];
      places[k] = {corner.at.x(), corner.at.y(), corner.depth_mm};
    }
    hidden_.add(places);
  }

  bool is_hidden(const Corner& corner) const {
    return hidden_.hides({corner.at.x(), corner.at.y(), corner.depth_mm}, kSlack_mm);
  }

  void things(Batch batch, const MeshBatch& mesh, bool may_be_hidden) {
    const auto corners = corners_of(mesh);
    const auto colours = colours_of(shape_, batch, mesh, style_);
    std::map<std::uint32_t, QPainterPath> of_item;
    std::map<std::uint32_t, QColor> colour_of;
    for (const Triangle& t : facing(mesh, corners)) {
      if (may_be_hidden && is_hidden(corners[t[0]])) continue;
      const std::uint32_t item = mesh.items[t[0]];
      add(of_item[item], corners, t);
      colour_of[item] = colour_at(colours, t[0]);
    }
    for (auto& [item, path] : of_item) {
      path.setFillRule(Qt::WindingFill);
      painter_.fillPath(path, colour_of[item]);
    }
  }

  void marks() {
    const SceneExtras extras = extras_of(*o_.marks, o_.meshes->scene, style_.colours());
    const auto corners = corners_of(extras.mesh);
    std::map<QRgb, QPainterPath> of_colour;
    for (const Triangle& t : facing(extras.mesh, corners)) {
      add(of_colour[colour_at(extras.colours, t[0]).rgb()], corners, t);
    }
    for (auto& [colour, path] : of_colour) {
      path.setFillRule(Qt::WindingFill);
      painter_.fillPath(path, QColor(colour));
    }
  }

  QPainter& painter_;
  const PictureOrder& o_;
  const SceneStyle& style_;
  const limb::SceneShape& shape_;
  DepthGrid hidden_;
  std::optional<PlaneCut> cut_;
};

}  // namespace

Picture FlatPictures::draw(const PictureOrder& order) {
  QElapsedTimer timer;
  timer.start();
  Picture picture;
  picture.number = order.number;
  picture.meshes = order.meshes;
  picture.image = QImage(order.pixels, QImage::Format_RGB32);
  picture.image.fill(order.style->colours().background);
  QPainter painter(&picture.image);
  painter.setRenderHint(QPainter::Antialiasing);
  Sheet(painter, order).paint();
  painter.scale(order.scale, order.scale);
  picture.layout = paint_overlay(painter, order.overlay);
  picture.drawn_ms = static_cast<double>(timer.nsecsElapsed()) * 1e-6;
  return picture;
}

}  // namespace endplate::ui
