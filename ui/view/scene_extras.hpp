#pragma once
// What a panel lays over the limb: injuries, routes, an incision, a measured line.
#include <cstdint>
#include <vector>

#include "ui/view/mesh_batch.hpp"
#include "ui/view/scene_style.hpp"
#include "ui/view/view_types.hpp"

namespace endplate::ui {

struct SceneExtras {
  MeshBatch mesh;
  std::vector<std::uint8_t> colours;  // red, green and blue by vertex
};

// Places are already those of the pose.
struct ExtraMarks {
  std::vector<LesionMark> lesions;
  std::vector<Route> routes;
  std::vector<Eigen::Vector3d> incision_mm;
  std::vector<Eigen::Vector3d> incision_points_mm;
  std::vector<Eigen::Vector3d> measured_mm;  // the line
  std::vector<Eigen::Vector3d> measured_ends_mm;
};

SceneExtras extras_of(const ExtraMarks& marks, const limb::LimbScene& scene,
                      const Palette& palette);

// The part of a nerve's line between two arc lengths, in that order; empty for an unknown nerve.
std::vector<Eigen::Vector3d> stretch_mm(const limb::LimbScene& scene, const RouteStretch& stretch);

}  // namespace endplate::ui
