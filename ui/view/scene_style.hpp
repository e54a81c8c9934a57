#pragma once
// How a scene is coloured: palette, layers, what stands out, values on the skin.
#include <QStringList>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "ui/view/palette.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/view_types.hpp"

namespace endplate::ui {

struct SceneStyle {
  PaletteKind palette = PaletteKind::light;
  Layers layers = kUsualLayers;
  double muscle_opacity = 1.0;
  std::set<std::string> highlighted;  // none: nothing is dimmed
  std::vector<float> skin_values;     // by vertex of the skin; empty: none
  double values_low = 0.0;
  double values_high = 1.0;
  std::optional<ClipPlane> clip;

  const Palette& colours() const { return palette_of(palette); }
};

// The plane of a clip on one scene.
struct PlaneCut {
  Eigen::Vector3d through_mm;
  Eigen::Vector3d kept;  // unit, towards what is left
};
std::optional<PlaneCut> cut_of(const SceneStyle& style, const limb::LimbScene& scene);

// Whether the layers show a batch. Ghosts go with the nerves.
bool shows(const SceneStyle& style, Batch batch);

// A solid answers to its whole name, to the part before the comma and to its id.
bool is_highlighted(const SceneStyle& style, const limb::SceneSolid& solid);
bool is_highlighted(const SceneStyle& style, const std::string& name);

// Red, green and blue of each vertex of `mesh`, which holds what `batch` does of that shape.
std::vector<std::uint8_t> colours_of(const limb::SceneShape& shape, Batch batch,
                                     const MeshBatch& mesh, const SceneStyle& style);

}  // namespace endplate::ui
