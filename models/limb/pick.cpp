#include "models/limb/pick.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <utility>

#include "geometry/triangle_tree.hpp"
#include "geometry/winding_number.hpp"
#include "models/limb/skin_region.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;
using geometry::TriangleMesh;
using geometry::TriangleTree;

struct Named {
  PickKind kind;
  std::string name;
  std::string part;
};

TriangleMesh with_vertices(const TriangleMesh& mesh, std::vector<Vector3d> vertices_mm) {
  return {std::move(vertices_mm), mesh.triangles};
}

Eigen::AlignedBox3d box_of(const TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const Vector3d& p : mesh.vertices_mm) box.extend(p);
  return box;
}

// Shares of a triangle's corners in a point of it.
Vector3d corner_shares(const TriangleMesh& mesh, std::size_t triangle, const Vector3d& p) {
  const auto& [i, j, k] = mesh.triangles[triangle];
  const Vector3d& a = mesh.vertices_mm[i];
  const Vector3d ab = mesh.vertices_mm[j] - a;
  const Vector3d ac = mesh.vertices_mm[k] - a;
  const Vector3d normal = ab.cross(ac);
  const double area = normal.squaredNorm();
  const double second = (p - a).cross(ac).dot(normal) / area;
  const double third = ab.cross(p - a).dot(normal) / area;
  return {1.0 - second - third, second, third};
}

}  // namespace

struct PickScene::Parts {
  Parts(const SegmentFrames& of_frames, const LimbJoints& of_joints, const SkinMesh& neutral,
        const PosedSpace& space)
      : frames(of_frames),
        joints(of_joints),
        skin(neutral),
        posed_skin(with_vertices(neutral.mesh, posed_vertices_mm(neutral, space))),
        skin_tree(posed_skin) {}

  // All bones and muscles as one mesh, so that a ray asks one tree.
  void add(const LimbSolid& solid, const PosedSpace& space) {
    named.push_back({solid.kind == SolidKind::bone ? PickKind::bone : PickKind::muscle, solid.name,
                     solid.part});
    meshes.push_back(with_vertices(solid.mesh, posed_vertices_mm(solid, space)));
    boxes.push_back(box_of(meshes.back()));
    const auto first = static_cast<std::uint32_t>(all.vertices_mm.size());
    all.vertices_mm.insert(all.vertices_mm.end(), meshes.back().vertices_mm.begin(),
                           meshes.back().vertices_mm.end());
    for (const auto& [a, b, c] : solid.mesh.triangles) {
      all.triangles.push_back({first + a, first + b, first + c});
      solid_of.push_back(named.size() - 1);
    }
  }

  PickHit skin_hit(std::size_t triangle, const Vector3d& p, double depth_mm) const {
    const Vector3d shares = corner_shares(posed_skin, triangle, p);
    Vector3d neutral = Vector3d::Zero();
    FingerShares digits;
    for (std::size_t corner = 0; corner < 3; ++corner) {
      const double share = shares(static_cast<Eigen::Index>(corner));
      const std::uint32_t v = skin.mesh.triangles[triangle][corner];
      neutral += share * skin.mesh.vertices_mm[v];
      digits.thumb += share * skin.fingers[v].thumb;
      for (std::size_t f = 0; f < digits.share.size(); ++f) {
        digits.share[f] += share * skin.fingers[v].share[f];
      }
    }
    return {PickKind::skin, skin_region(frames, joints, neutral, digits), "", depth_mm, p};
  }
  PickHit solid_hit(std::size_t solid, const Vector3d& p, double depth_mm) const {
    return {named[solid].kind, named[solid].name, named[solid].part, depth_mm, p};
  }

  SegmentFrames frames;
  LimbJoints joints;
  SkinMesh skin;  // in the anatomical position
  TriangleMesh posed_skin;
  TriangleTree skin_tree;
  std::vector<Named> named;  // by solid, as the next two
  std::vector<TriangleMesh> meshes;
  std::vector<Eigen::AlignedBox3d> boxes;
  TriangleMesh all;
  std::vector<std::size_t> solid_of;  // by triangle of all of them
  std::unique_ptr<TriangleTree> tree;
};

PickScene::PickScene(const SegmentFrames& frames, const LimbJoints& joints, const SkinMesh& skin,
                     const std::vector<LimbSolid>& solids, const PosedSpace& space)
    : parts_(std::make_unique<Parts>(frames, joints, skin, space)) {
  for (const LimbSolid& solid : solids) parts_->add(solid, space);
  if (!solids.empty()) parts_->tree = std::make_unique<TriangleTree>(parts_->all);
}

PickScene::~PickScene() = default;
PickScene::PickScene(PickScene&&) noexcept = default;
PickScene& PickScene::operator=(PickScene&&) noexcept = default;

std::vector<PickHit> PickScene::along(const Vector3d& origin_mm, const Vector3d& direction) const {
  std::vector<PickHit> hits;
  for (const auto& hit : parts_->skin_tree.along(origin_mm, direction)) {
    hits.push_back(parts_->skin_hit(hit.triangle, hit.point_mm, hit.distance_mm));
  }
  if (parts_->tree) {
    for (const auto& hit : parts_->tree->along(origin_mm, direction)) {
      hits.push_back(
          parts_->solid_hit(parts_->solid_of[hit.triangle], hit.point_mm, hit.distance_mm));
    }
  }
  std::ranges::stable_sort(hits, {}, &PickHit::depth_mm);
  std::vector<PickHit> first;
  for (PickHit& hit : hits) {
    const bool known = std::ranges::any_of(first, [&](const PickHit& other) {
      return other.kind == hit.kind && other.name == hit.name;
    });
    if (!known) first.push_back(std::move(hit));
  }
  return first;
}

std::vector<PickHit> PickScene::at(const Vector3d& point_mm) const {
  std::vector<PickHit> hits;
  const auto inside = [&](const TriangleMesh& mesh) {
    return geometry::winding_number(mesh.vertices_mm, mesh.triangles, point_mm) > 0.5;
  };
  if (inside(parts_->posed_skin)) {
    const auto nearest = parts_->skin_tree.nearest(point_mm);
    hits.push_back(parts_->skin_hit(nearest.triangle, nearest.point_mm, nearest.distance_mm));
  }
  for (const PickKind kind : {PickKind::muscle, PickKind::bone}) {
    for (std::size_t i = 0; i < parts_->named.size(); ++i) {
      if (parts_->named[i].kind != kind || !parts_->boxes[i].contains(point_mm)) continue;
      if (!inside(parts_->meshes[i])) continue;
      const auto nearest = TriangleTree(parts_->meshes[i]).nearest(point_mm);
      hits.push_back(parts_->solid_hit(i, nearest.point_mm, nearest.distance_mm));
    }
  }
  return hits;
}

}  // namespace endplate::limb
