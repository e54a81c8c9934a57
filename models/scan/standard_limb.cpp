#include "models/scan/standard_limb.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <map>
#include <utility>

#include "models/limb/nerve_line.hpp"

namespace endplate::scan {
namespace {

using Eigen::Vector3d;
using limb::SegmentScale;

constexpr int kFineness = 1;

}  // namespace

PlacedLimb::PlacedLimb(const limb::LimbJoints& joints, Side side, const LimbState& state)
    : frames(state.scale, side),
      space(frames, joints, state.pose),
      to_scan(state.humerus_to_scan * space.of_bone(limb::Bone::humerus).inverse()) {}

Expected<StandardLimb> StandardLimb::from(const evidence::DataPackage& package, Side side) {
  auto joints = limb::LimbJoints::from(package);
  if (!joints) return std::unexpected(joints.error());
  auto envelope = limb::BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(envelope.error());
  auto atlas = limb::Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  auto landmarks = ScanLandmarks::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());

  StandardLimb standard;
  standard.side_ = side;
  standard.joints_ = std::move(*joints);
  standard.envelope_ = std::move(*envelope);
  standard.atlas_ = std::move(*atlas);
  standard.landmarks_ = std::move(*landmarks);
  std::map<std::string, std::pair<std::string, std::string>, std::less<>> names;
  for (const evidence::Row row : package.table("course_points")) {
    std::string nerve(row.text("tree_node"));
    for (std::size_t at = 0; (at = nerve.find(';', at)) != std::string::npos; at += 2) {
      nerve.replace(at, 1, "; ");
    }
    names.emplace(row.text("point"),
                  std::pair(std::move(nerve), std::string(row.text("point_std"))));
  }
  const auto& courses = standard.atlas_.courses();
  for (std::size_t c = 0; c < courses.size(); ++c) {
    for (std::size_t p = 0; p < courses[c].points.size(); ++p) {
      const limb::CoursePoint& point = courses[c].points[p];
      const auto& [nerve, name] = names.at(point.id);
      standard.nerve_points_.push_back({point.id, nerve, name, point.segment, {c, p}});
    }
  }
  return standard;
}

limb::SkinMesh StandardLimb::skin(const SegmentScale& scale) const {
  return limb::make_skin(limb::SegmentFrames(scale, side_), envelope_, joints_, kFineness);
}

std::vector<Vector3d> StandardLimb::nerve_points_mm(const LimbState& state) const {
  const PlacedLimb placed = place(state);
  std::vector<geometry::CubicSpline> curves;
  for (std::size_t c = 0; c < atlas_.courses().size(); ++c) {
    curves.push_back(atlas_.curve(c, placed.frames));
  }
  const limb::PosedNerves nerves(atlas_.landmarks(), envelope_, placed.frames, placed.space);
  std::vector<Vector3d> points;
  for (const NervePoint& point : nerve_points_) {
    const auto& [course, index] = point.ref;
    const limb::Course& of = atlas_.courses()[course];
    const Vector3d rest = curves[course].position(of.points[index].knot);
    points.push_back(placed.to_scan * nerves(limb::nerve_place(of.id, placed.frames, rest)));
  }
  return points;
}

Sizes sizes_of(const SegmentScale& scale) {
  Sizes sizes;
  sizes << scale.arm, scale.forearm, scale.hand, scale.breadth, scale.skin.arm, scale.skin.forearm,
      scale.skin.wrist;
  return sizes;
}

SegmentScale scale_of(const Sizes& sizes) {
  return {sizes[0], sizes[1], sizes[2], sizes[3], {sizes[4], sizes[5], sizes[6]}};
}

SkinModel::SkinModel(const StandardLimb& limb, const SegmentScale& near)
    : near_(sizes_of(near)), skin_(limb.skin(near)) {
  constexpr double kStep = 0.02;
  for (std::size_t k = 0; k < slopes_.size(); ++k) {
    Sizes other = near_;
    other[static_cast<Eigen::Index>(k)] += kStep;
    const limb::SkinMesh moved = limb.skin(scale_of(other));
    for (std::size_t i = 0; i < size(); ++i) {
      slopes_[k].emplace_back((moved.mesh.vertices_mm[i] - skin_.mesh.vertices_mm[i]) / kStep);
    }
  }
}

std::vector<Vector3d> SkinModel::placed_mm(const PlacedLimb& limb) const {
  limb::SkinMesh sized;
  sized.mesh.vertices_mm = skin_.mesh.vertices_mm;
  sized.fingers = skin_.fingers;
  const Sizes more_of = sizes_of(limb.frames.scale()) - near_;
  for (std::size_t k = 0; k < slopes_.size(); ++k) {
    const double more = more_of[static_cast<Eigen::Index>(k)];
    if (more == 0.0) continue;
    for (std::size_t i = 0; i < size(); ++i) sized.mesh.vertices_mm[i] += more * slopes_[k][i];
  }
  std::vector<Vector3d> placed = limb::posed_vertices_mm(sized, limb.space);
  for (Vector3d& p : placed) p = limb.to_scan * p;
  return placed;
}

SkinModel SkinModel::sample(const std::vector<std::uint32_t>& vertices) const {
  SkinModel some;
  some.near_ = near_;
  for (const std::uint32_t v : vertices) {
    some.skin_.mesh.vertices_mm.push_back(skin_.mesh.vertices_mm[v]);
    some.skin_.fingers.push_back(skin_.fingers[v]);
    for (std::size_t k = 0; k < slopes_.size(); ++k) some.slopes_[k].push_back(slopes_[k][v]);
  }
  return some;
}

std::vector<std::uint32_t> spread_vertices(const StandardLimb& limb, std::size_t how_many) {
  const auto vertices = limb.skin({}).mesh.vertices_mm;
  std::vector<double> away(vertices.size(), std::numeric_limits<double>::infinity());
  std::vector<std::uint32_t> chosen;
  std::size_t next = 0;
  while (chosen.size() < std::min(how_many, vertices.size())) {
    chosen.push_back(static_cast<std::uint32_t>(next));
    for (std::size_t i = 0; i < vertices.size(); ++i) {
      away[i] = std::min(away[i], (vertices[i] - vertices[chosen.back()]).squaredNorm());
    }
    next = static_cast<std::size_t>(std::ranges::max_element(away) - away.begin());
  }
  return chosen;
}

}  // namespace endplate::scan
