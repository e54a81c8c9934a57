#include "models/limb/skin_tape.hpp"

#include <fmt/format.h>

#include <cmath>

#include "models/limb/skin_shape.hpp"

namespace endplate::limb {
namespace {

using Eigen::Vector3d;

// Landmarks on bone and skin are placed by different tables; one that stands out by less is under
// the skin.
constexpr double kOutside_mm = 10.0;

SkinMesh made(const SegmentFrames& frames, const BodyEnvelope& envelope, const LimbJoints& joints) {
  constexpr int kFineness = 1;
  return make_skin(frames, envelope, joints, kFineness);
}

geometry::TriangleMesh posed(const SkinMesh& skin, const SegmentFrames& frames,
                             const LimbJoints& joints, const Pose& pose) {
  return {posed_vertices_mm(skin, PosedSpace(frames, joints, pose)), skin.mesh.triangles};
}

}  // namespace

SkinTape::SkinTape(const SegmentFrames& frames, const BodyEnvelope& envelope,
                   const LimbJoints& joints, const Pose& pose)
    : SkinTape(SegmentFrames(frames.scale(), Side::right), frames.side() == Side::left,
               made(SegmentFrames(frames.scale(), Side::right), envelope, joints), joints, pose) {}

SkinTape::SkinTape(const SegmentFrames& right, bool left, const SkinMesh& skin,
                   const LimbJoints& joints, const Pose& pose)
    : left_(left),
      frames_(right),
      at_rest_(skin.mesh.vertices_mm),
      skin_(posed(skin, right, joints, pose)),
      probe_(skin_),
      // The skin has triangles and finite vertices for every limb.
      distance_(geometry::SurfaceDistance::prepare(skin_, geometry::Sight::for_paths).value()) {}

std::expected<geometry::SurfacePoint, std::string> SkinTape::over(Vector3d place_mm,
                                                                  const char* which) const {
  if (left_) place_mm.z() = -place_mm.z();
  const geometry::ProbedPlace found = probe_.at(place_mm);
  if (!found.inside && found.distance_mm > kOutside_mm) {
    return std::unexpected(
        fmt::format("the {} lies {:.0f} mm outside the modelled skin, which ends over the shoulder",
                    which, found.distance_mm));
  }
  const auto& corners = skin_.triangles[found.nearest.triangle];
  Vector3d at_rest = Vector3d::Zero();
  for (std::size_t k = 0; k < 3; ++k) at_rest += found.nearest.weights[k] * at_rest_[corners[k]];
  const SegmentPoint level = frames_.from_limb(Segment::humerus, at_rest);
  if (level.fraction > skin_shape::kTopFrom && level.z_mm < 0.0) {
    return std::unexpected(fmt::format(
        "over the {} the skin is that of chest and armpit, which is not modelled", which));
  }
  return found.nearest;
}

std::expected<double, std::string> SkinTape::between_mm(const Vector3d& from_mm,
                                                        const Vector3d& to_mm) const {
  const auto from = over(from_mm, "landmark");
  if (!from) return std::unexpected(from.error());
  const auto to = over(to_mm, "point");
  if (!to) return std::unexpected(to.error());
  return distance_.between_mm(*from, *to);
}

std::expected<geometry::SurfacePath, std::string> SkinTape::line(const Vector3d& from_mm,
                                                                 const Vector3d& to_mm) const {
  const auto from = over(from_mm, "first place");
  if (!from) return std::unexpected(from.error());
  const auto to = over(to_mm, "second place");
  if (!to) return std::unexpected(to.error());
  auto path = distance_.path(*from, *to);
  if (!path) return std::unexpected("no way leads over the skin from one place to the other");
  if (left_) {
    for (Vector3d& p : path->points_mm) p.z() = -p.z();
  }
  return *std::move(path);
}

}  // namespace endplate::limb
