#pragma once
// What of a scene lies under a point of the picture. Plain search over all that is shown: a
// millisecond or two for the full limb, and never another scene than the one on the screen.
#include <QPointF>
#include <QSizeF>
#include <optional>

#include "ui/view/orbit_camera.hpp"
#include "ui/view/scene_meshes.hpp"
#include "ui/view/scene_style.hpp"
#include "ui/view/view_types.hpp"

namespace endplate::ui {

struct PictureSpot {
  OrbitCamera camera;
  QSizeF size;  // logical pixels
  QPointF at;
};

// Points on nerves before nerves, those before the first muscle or bone, the skin last. `limb`
// names the skin; it is the one of the scene.
Pick pick_at(const SceneMeshes& meshes, const limb::SceneLimb& limb, const SceneStyle& style,
             const PictureSpot& spot);

// The skin alone, whether or not it is shown.
std::optional<Pick> pick_skin(const SceneMeshes& meshes, const limb::SceneLimb& limb,
                              const SceneStyle& style, const PictureSpot& spot);

// The arc length of the place of one nerve that is drawn nearest to the point.
double nearest_arc_mm(const limb::LimbScene& scene, std::size_t nerve, const PictureSpot& spot);

Eigen::Vector3d place_mm(const limb::LimbScene& scene, const SkinSpot& spot);

}  // namespace endplate::ui
