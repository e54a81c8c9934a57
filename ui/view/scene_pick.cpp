#include "ui/view/scene_pick.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace endplate::ui {
namespace {

using Eigen::Vector3d;

constexpr double kDotReach_px = 5.0;
constexpr double kNerveReach_px = 6.0;
// A nerve behind another counts as so much farther from the point.
constexpr double kPerDepth_px_per_mm = 0.02;
constexpr double kDeepNerve_px = 0.8;
constexpr double kSmallNerve_px = 3.0;

constexpr double kFar = std::numeric_limits<double>::infinity();

struct RayHit {
  double distance_mm = kFar;
  std::size_t triangle = 0;
  std::array<double, 3> weights{};
};

Vector3d vertex(const MeshBatch& mesh, std::uint32_t v) {
  return {mesh.points[3 * v], mesh.points[3 * v + 1], mesh.points[3 * v + 2]};
}

class Search {
 public:
  Search(const SceneMeshes& meshes, const SceneStyle& style, const PictureSpot& spot)
      : meshes_(meshes),
        style_(style),
        spot_(spot),
        ray_(spot.camera.ray(spot.at, spot.size)),
        cut_(cut_of(style, meshes.scene)) {}

  // The first triangle that faces the eye.
  RayHit first_hit(Batch batch) const {
    RayHit nearest;
    const MeshBatch& mesh = meshes_[batch];
    for (std::size_t t = 0; t < mesh.triangles(); ++t) {
      const Vector3d a = vertex(mesh, mesh.corners[3 * t]);
      const Vector3d ab = vertex(mesh, mesh.corners[3 * t + 1]) - a;
      const Vector3d ac = vertex(mesh, mesh.corners[3 * t + 2]) - a;
      const Vector3d across = ray_.direction.cross(ac);
      const double area = ab.dot(across);
      if (area < 1e-12) continue;
      const Vector3d to_eye = ray_.origin_mm - a;
      const double second = to_eye.dot(across) / area;
      if (second < 0.0 || second > 1.0) continue;
      const Vector3d beside = to_eye.cross(ab);
      const double third = ray_.direction.dot(beside) / area;
      if (third < 0.0 || second + third > 1.0) continue;
      const double distance = ac.dot(beside) / area;
      if (distance <= 0.0 || distance >= nearest.distance_mm || is_cut_away(at(distance))) continue;
      nearest = {distance, t, {1.0 - second - third, second, third}};
    }
    return nearest;
  }

  Vector3d at(double distance_mm) const { return ray_.origin_mm + distance_mm * ray_.direction; }
  bool is_cut_away(const Vector3d& p) const {
    return cut_ && (p - cut_->through_mm).dot(cut_->kept) < 0.0;
  }
  // From the point of the picture; infinite for what is not in the picture.
  double away_px(const Vector3d& p) const {
    if (is_cut_away(p)) return kFar;
    const QPointF from = spot_.camera.to_picture(p, spot_.size) - spot_.at;
    return std::hypot(from.x(), from.y());
  }

  std::optional<Pick> dot() const {
    double best = kDotReach_px;
    std::optional<Pick> found;
    const limb::LimbScene& scene = meshes_.scene;
    const limb::SceneShape& shape = *scene.shape;
    const auto consider = [&](const Vector3d& place, const auto& make) {
      const double away = away_px(place);
      if (away >= best) return;
      best = away;
      found = make();
      found->place_mm = place;
    };
    const auto on_nerve = [&](PickKind kind, const std::string& name, const limb::ScenePlace& at) {
      consider(scene.place_mm(at), [&] {
        return Pick{kind,
                    QString::fromStdString(name),
                    QString::fromStdString(shape.nerves[at.nerve].name),
                    at.arc_mm,
                    {},
                    {}};
      });
    };
    if (shows(style_, Batch::landmarks)) {
      for (std::size_t i = 0; i < shape.landmarks.size(); ++i) {
        const std::string& name = shape.landmarks[i];
        if (!is_main_landmark(name) && !is_highlighted(style_, name)) continue;
        consider(scene.landmarks_mm[i], [&] {
          Pick pick;
          pick.kind = PickKind::landmark;
          pick.name = QString::fromStdString(name);
          return pick;
        });
      }
    }
    if (shows(style_, Batch::motor_entries)) {
      for (const auto& entry : shape.entries) {
        on_nerve(PickKind::motor_entry, entry.muscle, entry.at);
      }
    }
    if (shows(style_, Batch::branch_points)) {
      for (const auto& branch : shape.branches) {
        if (!shows(style_, batch_of(shape.nerves[branch.at.nerve].rank))) continue;
        on_nerve(PickKind::branch_point, branch.name, branch.at);
      }
    }
    return found;
  }

  std::optional<Pick> nerve() const {
    double best = kNerveReach_px;
    std::optional<Pick> found;
    const limb::SceneShape& shape = *meshes_.scene.shape;
    for (std::size_t n = 0; n < shape.nerves.size(); ++n) {
      const Batch batch = batch_of(shape.nerves[n].rank);
      if (!shows(style_, batch)) continue;
      const auto& line = meshes_.scene.nerves_mm[n];
      const double penalty = batch != Batch::nerves                           ? kSmallNerve_px
                             : shape.nerves[n].rank == limb::NerveRank::great ? 0.0
                                                                              : kDeepNerve_px;
      for (std::size_t k = 1; k < line.size(); ++k) {
        const double share = share_nearest(line[k - 1], line[k]);
        const Vector3d place = line[k - 1] + share * (line[k] - line[k - 1]);
        const double away = away_px(place);
        if (away > kNerveReach_px) continue;
        const double score = away + penalty + kPerDepth_px_per_mm * spot_.camera.depth_mm(place);
        if (found && score >= best) continue;
        best = score;
        found = Pick{PickKind::nerve,
                     QString::fromStdString(shape.nerves[n].name),
                     {},
                     std::lerp(shape.nerves[n].arc_mm[k - 1], shape.nerves[n].arc_mm[k], share),
                     place,
                     {}};
      }
    }
    return found;
  }

  // Of the way from one to the other, where it comes nearest to the point in the picture.
  double share_nearest(const Vector3d& from, const Vector3d& to) const {
    const QPointF a = spot_.camera.to_picture(from, spot_.size);
    const QPointF way = spot_.camera.to_picture(to, spot_.size) - a;
    const double length2 = QPointF::dotProduct(way, way);
    if (length2 <= 0.0) return 0.0;
    return std::clamp(QPointF::dotProduct(spot_.at - a, way) / length2, 0.0, 1.0);
  }

  std::optional<Pick> solid() const {
    RayHit nearest;
    Batch of = Batch::bones;
    for (const Batch batch : {Batch::bones, Batch::muscles}) {
      if (!shows(style_, batch)) continue;
      const RayHit hit = first_hit(batch);
      if (hit.distance_mm >= nearest.distance_mm) continue;
      nearest = hit;
      of = batch;
    }
    if (nearest.distance_mm == kFar) return std::nullopt;
    const MeshBatch& mesh = meshes_[of];
    const auto& solid = meshes_.scene.shape->solids[mesh.items[mesh.corners[3 * nearest.triangle]]];
    Pick pick;
    pick.kind = of == Batch::bones ? PickKind::bone : PickKind::muscle;
    pick.name = QString::fromStdString(solid.name);
    pick.part = QString::fromStdString(solid.part);
    pick.place_mm = at(nearest.distance_mm);
    return pick;
  }

  std::optional<Pick> skin(const limb::SceneLimb& limb) const {
    const RayHit hit = first_hit(Batch::skin);
    if (hit.distance_mm == kFar) return std::nullopt;
    Pick pick;
    pick.kind = PickKind::skin;
    pick.name = QString::fromStdString(limb.skin_name(hit.triangle, hit.weights));
    pick.place_mm = at(hit.distance_mm);
    pick.skin = SkinSpot{hit.triangle, hit.weights};
    return pick;
  }

 private:
  const SceneMeshes& meshes_;
  const SceneStyle& style_;
  const PictureSpot& spot_;
  ViewRay ray_;
  std::optional<PlaneCut> cut_;
};

}  // namespace

Pick pick_at(const SceneMeshes& meshes, const limb::SceneLimb& limb, const SceneStyle& style,
             const PictureSpot& spot) {
  const Search search(meshes, style, spot);
  const auto skin = shows(style, Batch::skin) ? search.skin(limb) : std::nullopt;
  auto pick = search.dot();
  if (!pick) pick = search.nerve();
  if (!pick) pick = search.solid();
  if (!pick) return skin.value_or(Pick{});
  if (skin) pick->skin = skin->skin;
  return *pick;
}

std::optional<Pick> pick_skin(const SceneMeshes& meshes, const limb::SceneLimb& limb,
                              const SceneStyle& style, const PictureSpot& spot) {
  return Search(meshes, style, spot).skin(limb);
}

double nearest_arc_mm(const limb::LimbScene& scene, std::size_t nerve, const PictureSpot& spot) {
  const auto& line = scene.nerves_mm[nerve];
  const auto& arcs = scene.shape->nerves[nerve].arc_mm;
  double best = kFar;
  double arc_mm = 0.0;
  for (std::size_t k = 1; k < line.size(); ++k) {
    const QPointF a = spot.camera.to_picture(line[k - 1], spot.size);
    const QPointF way = spot.camera.to_picture(line[k], spot.size) - a;
    const double length2 = QPointF::dotProduct(way, way);
    const double share =
        length2 > 0.0 ? std::clamp(QPointF::dotProduct(spot.at - a, way) / length2, 0.0, 1.0) : 0.0;
    const QPointF from = a + share * way - spot.at;
    const double away = QPointF::dotProduct(from, from);
    if (away >= best) continue;
    best = away;
    arc_mm = std::lerp(arcs[k - 1], arcs[k], share);
  }
  return arc_mm;
}

Vector3d place_mm(const limb::LimbScene& scene, const SkinSpot& spot) {
  const auto& corners = scene.shape->skin[spot.triangle];
  Vector3d place = Vector3d::Zero();
  for (std::size_t k = 0; k < 3; ++k) place += spot.weights[k] * scene.skin_mm[corners[k]];
  return place;
}

}  // namespace endplate::ui
