#include "ui/view/scene_meshes.hpp"

#include <algorithm>
#include <utility>

namespace endplate::ui {
namespace {

constexpr std::array<std::string_view, 13> kMainLandmarks{
    "acromion, lateral edge", "coracoid process tip",
    "deltoid insertion",      "lateral epicondyle",
    "medial epicondyle",      "olecranon tip",
    "Lister tubercle",        "radial styloid",
    "ulnar styloid",          "pisiform",
    "hook of hamate",         "scaphoid tubercle",
    "distal wrist crease"};

constexpr double kLandmark_mm = 3.2;
constexpr double kBranchPoint_mm = 2.4;
constexpr double kSmallBranchPoint_mm = 1.5;
constexpr double kMotorEntry_mm = 2.8;
constexpr double kGhost_mm = 0.8;  // of the nerve's own radius

// A tube needs no more places than show: on a screen where the whole limb is seen a pixel is about
// a millimetre, and triangles smaller than that cost a software renderer most of its time.
constexpr std::size_t kEvery = 2;  // of the places of a line
constexpr std::size_t kGhostEvery = 4;
constexpr int kSides = 6;
constexpr int kSmallSides = 4;
constexpr int kGhostSides = 3;

void thin_out(const std::vector<Eigen::Vector3d>& line, std::size_t every,
              std::vector<Eigen::Vector3d>& thinned) {
  thinned.clear();
  for (std::size_t k = 0; k + 1 < line.size(); k += every) thinned.push_back(line[k]);
  thinned.push_back(line.back());
}

bool is_small(limb::NerveRank rank) {
  return rank == limb::NerveRank::small || rank == limb::NerveRank::chest;
}

}  // namespace

bool is_main_landmark(std::string_view name) {
  return std::ranges::find(kMainLandmarks, name) != kMainLandmarks.end();
}

Batch batch_of(limb::NerveRank rank) {
  switch (rank) {
    case limb::NerveRank::small:
      return Batch::small_nerves;
    case limb::NerveRank::chest:
      return Batch::chest_nerves;
    default:
      return Batch::nerves;
  }
}

double drawn_radius_mm(limb::NerveRank rank) {
  switch (rank) {
    case limb::NerveRank::great:
      return 2.3;
    case limb::NerveRank::deep:
      return 1.5;
    case limb::NerveRank::girdle:
      return 1.6;
    default:
      return 0.8;
  }
}

MeshBatch landmark_dots(const limb::LimbScene& scene, const std::set<std::string>& also) {
  MeshBatch dots;
  for (std::size_t i = 0; i < scene.landmarks_mm.size(); ++i) {
    const std::string& name = scene.shape->landmarks[i];
    if (!is_main_landmark(name) && !also.contains(name)) continue;
    add_dot(dots, scene.landmarks_mm[i], kLandmark_mm, Dot::ball, static_cast<std::uint32_t>(i));
  }
  return dots;
}

SceneMeshes mesh_scene(limb::LimbScene scene, const SceneMeshes* like) {
  SceneMeshes meshes;
  for (std::size_t b = 0; like != nullptr && b < kBatches; ++b) {
    meshes.batches[b].points.reserve(like->batches[b].points.size());
    meshes.batches[b].normals.reserve(like->batches[b].normals.size());
    meshes.batches[b].corners.reserve(like->batches[b].corners.size());
    meshes.batches[b].items.reserve(like->batches[b].items.size());
  }
  const limb::SceneShape& shape = *scene.shape;
  const auto batch = [&](Batch of) -> MeshBatch& {
    return meshes.batches[static_cast<std::size_t>(of)];
  };
  add_mesh(batch(Batch::skin), scene.skin_mm, shape.skin, 0);
  for (std::size_t i = 0; i < shape.solids.size(); ++i) {
    const bool bone = shape.solids[i].kind == limb::SolidKind::bone;
    if (scene.solids_mm[i].empty()) {
      meshes.with_muscles = false;
      continue;
    }
    add_mesh(batch(bone ? Batch::bones : Batch::muscles), scene.solids_mm[i],
             shape.solids[i].triangles, static_cast<std::uint32_t>(i));
  }
  std::vector<Eigen::Vector3d> line;
  for (std::size_t i = 0; i < shape.nerves.size(); ++i) {
    const limb::NerveRank rank = shape.nerves[i].rank;
    const auto item = static_cast<std::uint32_t>(i);
    const double radius_mm = drawn_radius_mm(rank);
    thin_out(scene.nerves_mm[i], kEvery, line);
    add_tube(batch(batch_of(rank)), line, radius_mm, is_small(rank) ? kSmallSides : kSides, item);
    if (!is_small(rank)) {
      thin_out(scene.nerves_mm[i], kGhostEvery, line);
      add_tube(batch(Batch::ghosts), line, kGhost_mm * radius_mm, kGhostSides, item);
    }
  }
  for (std::size_t i = 0; i < shape.branches.size(); ++i) {
    const limb::ScenePlace& at = shape.branches[i].at;
    const limb::NerveRank rank = shape.nerves[at.nerve].rank;
    if (rank == limb::NerveRank::chest) continue;
    add_dot(batch(Batch::branch_points), scene.place_mm(at),
            is_small(rank) ? kSmallBranchPoint_mm : kBranchPoint_mm, Dot::diamond,
            static_cast<std::uint32_t>(i));
  }
  for (std::size_t i = 0; i < shape.entries.size(); ++i) {
    add_dot(batch(Batch::motor_entries), scene.place_mm(shape.entries[i].at), kMotorEntry_mm,
            Dot::diamond, static_cast<std::uint32_t>(i));
  }
  batch(Batch::landmarks) = landmark_dots(scene, {});
  for (std::size_t b = 0; b < kBatches; ++b) {
    const std::vector<float>& points = meshes.batches[b].points;
    Eigen::AlignedBox3f box;
    for (std::size_t k = 0; k < points.size(); k += 3) {
      box.extend(Eigen::Vector3f(points[k], points[k + 1], points[k + 2]));
    }
    if (!box.isEmpty()) meshes.boxes[b] = box.cast<double>();
  }
  meshes.scene = std::move(scene);
  return meshes;
}

}  // namespace endplate::ui
