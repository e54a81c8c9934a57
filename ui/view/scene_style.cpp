#include "ui/view/scene_style.hpp"

#include <Eigen/Geometry>
#include <cmath>

namespace endplate::ui {
namespace {

class Painter {
 public:
  Painter(const limb::SceneShape& shape, const SceneStyle& style)
      : shape_(shape), style_(style), palette_(style.colours()) {}

  QColor operator()(Batch batch, std::size_t item) const {
    switch (batch) {
      case Batch::skin:
        return palette_.skin;
      case Batch::bones:
        return solid(item, palette_.bone);
      case Batch::muscles:
        return solid(item, palette_.muscle);
      case Batch::nerves:
      case Batch::small_nerves:
      case Batch::chest_nerves:
      case Batch::ghosts:
        return nerve(item);
      case Batch::branch_points: {
        const limb::SceneBranch& branch = shape_.branches[item];
        return dim(palette_.branch_point,
                   is_highlighted(style_, branch.name) ||
                       is_highlighted(style_, shape_.nerves[branch.at.nerve].name));
      }
      case Batch::motor_entries: {
        const limb::SceneEntry& entry = shape_.entries[item];
        return dim(palette_.motor_entry,
                   is_highlighted(style_, entry.muscle) || is_highlighted(style_, entry.id));
      }
      case Batch::landmarks:
        break;
    }
    const bool asked = is_highlighted(style_, shape_.landmarks[item]);
    return asked ? palette_.highlight : dim(palette_.landmark, false);
  }

 private:
  QColor dim(const QColor& colour, bool asked) const {
    if (asked || style_.highlighted.empty()) return colour;
    return mixed(colour, palette_.background, palette_.dimmed);
  }
  QColor nerve(std::size_t item) const {
    const limb::SceneNerve& nerve = shape_.nerves[item];
    if (is_highlighted(style_, nerve.name)) {
      return palette_.nerves[static_cast<std::size_t>(nerve.family)];
    }
    return dim(nerve_colour(palette_, nerve.family, nerve.rank), false);
  }
  QColor solid(std::size_t item, const QColor& usual) const {
    if (is_highlighted(style_, shape_.solids[item])) return palette_.highlight;
    // Neighbours a little apart in lightness, so that one muscle ends where the next begins.
    const double shade = 0.05 * static_cast<double>(item * 7 % 5);
    const bool muscle = shape_.solids[item].kind == limb::SolidKind::muscle;
    return dim(muscle ? mixed(usual, palette_.text, shade) : usual, false);
  }

  const limb::SceneShape& shape_;
  const SceneStyle& style_;
  const Palette& palette_;
};

QColor value_colour(const SceneStyle& style, float value) {
  if (!std::isfinite(value)) return style.colours().skin;
  const double span = style.values_high - style.values_low;
  return scale_colour(style.colours(),
                      span > 0.0 ? (static_cast<double>(value) - style.values_low) / span : 0.0);
}

}  // namespace

std::optional<PlaneCut> cut_of(const SceneStyle& style, const limb::LimbScene& scene) {
  if (!style.clip) return std::nullopt;
  Eigen::AlignedBox3d all;
  for (const Eigen::Vector3d& p : scene.skin_mm) all.extend(p);
  const double lateral = scene.shape->side == Side::right ? 1.0 : -1.0;
  Eigen::Vector3d away = Eigen::Vector3d::UnitX();
  if (style.clip->axis == ClipAxis::proximal) away = Eigen::Vector3d::UnitY();
  if (style.clip->axis == ClipAxis::lateral) away = lateral * Eigen::Vector3d::UnitZ();
  const double reach = 0.5 * std::abs(away.dot(all.sizes()));
  return PlaneCut{all.center() + (1.0 - 2.0 * style.clip->share) * reach * away, -away};
}

bool shows(const SceneStyle& style, Batch batch) {
  switch (batch) {
    case Batch::skin:
      return style.layers.testFlag(Layer::skin);
    case Batch::bones:
      return style.layers.testFlag(Layer::bones);
    case Batch::muscles:
      return style.layers.testFlag(Layer::muscles);
    case Batch::nerves:
    case Batch::ghosts:
      return style.layers.testFlag(Layer::nerves);
    case Batch::small_nerves:
      return style.layers.testFlag(Layer::small_nerves);
    case Batch::chest_nerves:
      return style.layers.testFlag(Layer::chest_nerves);
    case Batch::branch_points:
      return style.layers.testFlag(Layer::branch_points);
    case Batch::motor_entries:
      return style.layers.testFlag(Layer::motor_entries);
    case Batch::landmarks:
      break;
  }
  return style.layers.testFlag(Layer::landmarks) || !style.highlighted.empty();
}

bool is_highlighted(const SceneStyle& style, const std::string& name) {
  return style.highlighted.contains(name);
}

bool is_highlighted(const SceneStyle& style, const limb::SceneSolid& solid) {
  if (style.highlighted.empty()) return false;
  return style.highlighted.contains(solid.name) ||
         style.highlighted.contains(solid.name.substr(0, solid.name.find(','))) ||
         (!solid.id.empty() && style.highlighted.contains(solid.id));
}

std::vector<std::uint8_t> colours_of(const limb::SceneShape& shape, Batch batch,
                                     const MeshBatch& mesh, const SceneStyle& style) {
  const Painter painter(shape, style);
  std::vector<std::uint8_t> colours;
  colours.reserve(3 * mesh.vertices());
  const auto push = [&](const QColor& colour) {
    for (const int part : {colour.red(), colour.green(), colour.blue()}) {
      colours.push_back(static_cast<std::uint8_t>(part));
    }
  };
  if (batch == Batch::skin && style.skin_values.size() == mesh.vertices()) {
    for (const float value : style.skin_values) push(value_colour(style, value));
    return colours;
  }
  std::uint32_t last = 0;
  QColor colour;
  for (std::size_t v = 0; v < mesh.vertices(); ++v) {
    if (v == 0 || mesh.items[v] != last) {
      last = mesh.items[v];
      colour = painter(batch, last);
    }
    push(colour);
  }
  return colours;
}

}  // namespace endplate::ui
