#pragma once
// A posed limb as triangles, layer by layer. Made off the interface thread.
#include <Eigen/Geometry>
#include <array>
#include <cstddef>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "models/limb/limb_scene.hpp"
#include "ui/view/mesh_batch.hpp"

namespace endplate::ui {

// What is drawn in one call each. Items are numbered as in the scene's shape: solids, nerves,
// branches, entries, landmarks; of the skin there is one.
enum class Batch {
  skin,
  bones,
  muscles,
  nerves,
  small_nerves,
  chest_nerves,
  ghosts,  // of the nerves, to be seen faintly through what hides them
  branch_points,
  motor_entries,
  landmarks,
};
inline constexpr std::size_t kBatches = 10;

struct SceneMeshes {
  limb::LimbScene scene;
  std::array<MeshBatch, kBatches> batches;
  std::array<Eigen::AlignedBox3d, kBatches> boxes;
  bool with_muscles = true;

  const MeshBatch& operator[](Batch batch) const {
    return batches[static_cast<std::size_t>(batch)];
  }
};

// Without muscles where the scene has none of their points. `like`: an earlier pose of the same
// limb, whose sizes are known; may be null.
SceneMeshes mesh_scene(limb::LimbScene scene, const SceneMeshes* like = nullptr);

// Landmarks that a hand finds on the limb or a surgeon steers by; the others are shown only where
// they are asked for.
bool is_main_landmark(std::string_view name);
// Those and the ones of that name.
MeshBatch landmark_dots(const limb::LimbScene& scene, const std::set<std::string>& also);

// Which nerves a batch holds.
Batch batch_of(limb::NerveRank rank);
// Drawn, not true to scale.
double drawn_radius_mm(limb::NerveRank rank);

}  // namespace endplate::ui
