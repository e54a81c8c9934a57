// Which names stand on the picture.
#include <algorithm>
#include <array>
#include <string_view>

#include "ui/view/overlay.hpp"

namespace endplate::ui {
namespace {

using Eigen::Vector3d;

// How near one must be for the lesser names, mm a pixel.
constexpr double kNearDeep = 0.7;
constexpr double kNearPlexus = 0.7;
constexpr double kNearSmall = 0.4;
constexpr double kNearPoints = 0.25;

// Named from afar beside the five great ones.
constexpr std::array<std::string_view, 4> kMainDeep{
    "superficial branch of radial nerve", "posterior interosseous nerve",
    "anterior interosseous nerve", "deep branch of ulnar nerve"};

// Roots, trunks and cords; the others of the girdle are as small as any.
bool is_plexus(std::string_view name) {
  return name.ends_with(" root") || name.ends_with(" trunk") || name.ends_with(" cord");
}

enum Priority { kAsked, kGreat, kLandmark, kDeep, kSolid, kSmall, kPoint };

class Names {
 public:
  Names(const limb::LimbScene& scene, const SceneStyle& style, const OrbitCamera& camera,
        const QSizeF& size, const Namer& namer)
      : scene_(scene),
        style_(style),
        camera_(camera),
        size_(size),
        namer_(namer),
        per_px_(camera.mm_per_pixel(size)),
        picture_(QRectF(QPointF(0.0, 0.0), size).adjusted(8.0, 8.0, -8.0, -8.0)),
        cut_(cut_of(style, scene)) {}

  std::vector<OverlayLabel> all() {
    nerves();
    solids();
    points();
    return std::move(labels_);
  }

 private:
  bool seen(const Vector3d& p) const {
    if (cut_ && (p - cut_->through_mm).dot(cut_->kept) < 0.0) return false;
    return picture_.contains(camera_.to_picture(p, size_));
  }
  void add(const std::string& name, const Vector3d& place, const QColor& colour, int priority) {
    const QString term = QString::fromStdString(name);
    labels_.push_back({namer_ ? namer_(term) : term, place, colour, priority,
                       priority == kAsked || (priority == kGreat && style_.highlighted.empty())});
  }

  // In the middle of the longest piece that is in the picture.
  std::optional<Vector3d> place_on(const std::vector<Vector3d>& line) const {
    std::size_t best_from = 0;
    std::size_t best = 0;
    std::size_t from = 0;
    for (std::size_t k = 0; k <= line.size(); ++k) {
      if (k < line.size() && seen(line[k])) continue;
      if (k - from > best) {
        best = k - from;
        best_from = from;
      }
      from = k + 1;
    }
    if (best == 0) return std::nullopt;
    return line[best_from + best / 2];
  }

  // The farthest from which a nerve is named.
  static double least_mm_per_px(const limb::SceneNerve& nerve) {
    constexpr double kAlways = 1e9;
    switch (nerve.rank) {
      case limb::NerveRank::great:
        return kAlways;
      case limb::NerveRank::deep:
        return std::ranges::find(kMainDeep, nerve.name) != kMainDeep.end() ? kAlways : kNearDeep;
      case limb::NerveRank::girdle:
        return is_plexus(nerve.name) && !nerve.name.starts_with("anterior division") &&
                       !nerve.name.starts_with("posterior division")
                   ? kNearPlexus
                   : kNearSmall;
      default:
        return kNearSmall;
    }
  }

  void nerves() {
    const limb::SceneShape& shape = *scene_.shape;
    for (std::size_t n = 0; n < shape.nerves.size(); ++n) {
      const limb::SceneNerve& nerve = shape.nerves[n];
      const bool asked = is_highlighted(style_, nerve.name);
      if (!shows(style_, batch_of(nerve.rank)) && !asked) continue;
      const bool small =
          nerve.rank == limb::NerveRank::small || nerve.rank == limb::NerveRank::chest;
      if (!asked) {
        // With something asked for, the rest is there for orientation.
        if (!style_.highlighted.empty() && nerve.rank != limb::NerveRank::great) continue;
        if (per_px_ > least_mm_per_px(nerve)) continue;
      }
      const auto place = place_on(scene_.nerves_mm[n]);
      if (!place) continue;
      const int priority = asked                                  ? kAsked
                           : nerve.rank == limb::NerveRank::great ? kGreat
                           : small                                ? kSmall
                                                                  : kDeep;
      add(nerve.name, *place, nerve_colour(style_.colours(), nerve.family, nerve.rank), priority);
    }
  }

  void solids() {
    if (style_.highlighted.empty()) return;
    const limb::SceneShape& shape = *scene_.shape;
    std::set<std::string> named;
    for (std::size_t s = 0; s < shape.solids.size(); ++s) {
      if (!is_highlighted(style_, shape.solids[s])) continue;
      const bool bone = shape.solids[s].kind == limb::SolidKind::bone;
      if (!shows(style_, bone ? Batch::bones : Batch::muscles)) continue;
      if (scene_.solids_mm[s].empty()) continue;
      Vector3d sum = Vector3d::Zero();
      for (const Vector3d& p : scene_.solids_mm[s]) sum += p;
      const Vector3d middle = sum / static_cast<double>(scene_.solids_mm[s].size());
      if (!seen(middle) || !named.insert(shape.solids[s].name).second) continue;
      add(shape.solids[s].name, middle, style_.colours().highlight, kAsked);
    }
  }

  void points() {
    const limb::SceneShape& shape = *scene_.shape;
    for (std::size_t i = 0; i < shape.landmarks.size(); ++i) {
      const std::string& name = shape.landmarks[i];
      const bool asked = is_highlighted(style_, name);
      const bool main = style_.layers.testFlag(Layer::landmarks) && is_main_landmark(name);
      if ((!asked && !main) || !seen(scene_.landmarks_mm[i])) continue;
      add(name, scene_.landmarks_mm[i], style_.colours().landmark, asked ? kAsked : kLandmark);
    }
    if (!shows(style_, Batch::motor_entries) || per_px_ > kNearPoints) return;
    for (const limb::SceneEntry& entry : shape.entries) {
      const Vector3d place = scene_.place_mm(entry.at);
      if (seen(place)) add(entry.muscle, place, style_.colours().motor_entry, kPoint);
    }
  }

  const limb::LimbScene& scene_;
  const SceneStyle& style_;
  const OrbitCamera& camera_;
  QSizeF size_;
  const Namer& namer_;
  double per_px_;
  QRectF picture_;
  std::optional<PlaneCut> cut_;
  std::vector<OverlayLabel> labels_;
};

}  // namespace

std::vector<OverlayLabel> labels_of(const limb::LimbScene& scene, const SceneStyle& style,
                                    const OrbitCamera& camera, const QSizeF& size,
                                    const Namer& namer) {
  if (!style.layers.testFlag(Layer::labels)) return {};
  return Names(scene, style, camera, size, namer).all();
}

std::vector<Vector3d> outline_of(const limb::LimbScene& scene, const SceneStyle& style) {
  std::vector<Vector3d> outline;
  const auto take = [&](const std::vector<Vector3d>& from, std::size_t every) {
    for (std::size_t k = 0; k < from.size(); k += every) outline.push_back(from[k]);
  };
  take(scene.skin_mm, 5);
  const limb::SceneShape& shape = *scene.shape;
  for (std::size_t s = 0; s < shape.solids.size(); ++s) {
    const bool bone = shape.solids[s].kind == limb::SolidKind::bone;
    if (shows(style, bone ? Batch::bones : Batch::muscles)) take(scene.solids_mm[s], 9);
  }
  for (std::size_t n = 0; n < shape.nerves.size(); ++n) {
    if (shape.nerves[n].rank != limb::NerveRank::girdle || !shows(style, Batch::nerves)) continue;
    take(scene.nerves_mm[n], 2);
  }
  return outline;
}

}  // namespace endplate::ui
