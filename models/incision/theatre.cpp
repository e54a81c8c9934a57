#include "models/incision/theatre.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <mutex>
#include <optional>
#include <utility>

#include "geometry/nearest_surface.hpp"
#include "geometry/surface_distance.hpp"
#include "geometry/surface_probe.hpp"
#include "geometry/triangle_tree.hpp"
#include "models/limb/landmark_set.hpp"
#include "models/limb/limb_size.hpp"
#include "models/limb/limb_solids.hpp"
#include "models/limb/skin_mesh.hpp"
#include "models/limb/skin_region.hpp"
#include "models/limb/skin_shape.hpp"

namespace endplate::incision {

using Eigen::Vector3d;
using limb::Segment;
using limb::SegmentFrames;

namespace {

constexpr int kSkinFineness = 1;  // edges of about 5 mm
constexpr int kBoneFineness = 2;
// Skin that faces the chest by more than this.
constexpr double kMedial = -0.5;
// A mark that lies farther from the skin than this is none.
constexpr double kOffSkin_mm = 60.0;

geometry::TriangleMesh posed_bones(const SegmentFrames& frames, const limb::SolidShapes& shapes,
                                   const limb::PosedSpace& space) {
  geometry::TriangleMesh all;
  for (const limb::LimbSolid& solid : limb::make_solids(frames, shapes, kBoneFineness)) {
    if (solid.kind != limb::SolidKind::bone) continue;
    const auto first = static_cast<std::uint32_t>(all.vertices_mm.size());
    std::ranges::copy(limb::posed_vertices_mm(solid, space), std::back_inserter(all.vertices_mm));
    for (auto triangle : solid.mesh.triangles) {
      for (auto& corner : triangle) corner += first;
      all.triangles.push_back(triangle);
    }
  }
  return all;
}

Vector3d towards(const SegmentFrames& frames, Segment segment, Aside aside) {
  switch (aside) {
    case Aside::anterior:
      return frames.anterior(segment);
    case Aside::posterior:
      return -frames.anterior(segment);
    case Aside::lateral:
      return frames.lateral(segment);
    case Aside::medial:
      break;
  }
  return -frames.lateral(segment);
}

}  // namespace

struct Theatre::Parts {
  limb::CaseLimb limb;
  limb::CasePose pose;
  SegmentFrames frames;
  limb::LandmarkSet landmarks;
  limb::PosedSpace space;
  limb::SkinMesh at_rest;
  geometry::TriangleMesh skin;  // in the pose
  geometry::TriangleTree skin_at_rest;
  geometry::TriangleTree posed_skin;
  geometry::NearestSurface nearest_at_rest;
  geometry::NearestSurface nearest_posed;
  geometry::SurfaceProbe probe;
  geometry::TriangleTree bones;
  // Half a second to prepare, which a single track does not need.
  mutable std::once_flag prepared{};
  mutable std::optional<geometry::SurfaceDistance> lines{};

  const geometry::SurfaceDistance& over_skin() const {
    std::call_once(prepared, [&] {
      // The skin has triangles and finite vertices for every limb.
      lines = geometry::SurfaceDistance::prepare(skin, geometry::Sight::for_paths).value();
    });
    return *lines;
  }
};

Expected<Theatre> Theatre::from(const evidence::DataPackage& package,
                                const anatomy::NerveTree& tree, const casefile::Limb& given) {
  auto limb = limb::CaseLimb::from(package, tree, given);
  if (!limb) return std::unexpected(std::move(limb.error()));
  const SegmentFrames frames(limb->size().mean_scale(), given.side);
  auto pose = limb::CasePose::from(package, frames, given.pose_deg);
  if (!pose) return std::unexpected(std::move(pose.error()));
  auto landmarks = limb::LandmarkSet::from(package);
  if (!landmarks) return std::unexpected(std::move(landmarks.error()));
  const auto shapes = limb::SolidShapes::from(package);
  if (!shapes) return std::unexpected(shapes.error());

  const limb::PosedSpace space(frames, pose->joints, pose->pose);
  limb::SkinMesh at_rest = limb::make_skin(frames, pose->envelope, pose->joints, kSkinFineness);
  geometry::TriangleMesh skin{limb::posed_vertices_mm(at_rest, space), at_rest.mesh.triangles};
  geometry::TriangleTree skin_at_rest(at_rest.mesh);
  geometry::TriangleTree posed_skin(skin);
  geometry::NearestSurface nearest_at_rest(at_rest.mesh);
  geometry::NearestSurface nearest_posed(skin);
  geometry::SurfaceProbe probe(skin);
  geometry::TriangleTree bones(posed_bones(frames, *shapes, space));
  Theatre theatre;
  theatre.parts_ = std::shared_ptr<const Parts>(new Parts{
      std::move(*limb), std::move(*pose), frames, std::move(*landmarks), space, std::move(at_rest),
      std::move(skin), std::move(skin_at_rest), std::move(posed_skin), std::move(nearest_at_rest),
      std::move(nearest_posed), std::move(probe), std::move(bones)});
  return theatre;
}

Side Theatre::side() const {
  return parts_->frames.side();
}

const limb::CaseLimb& Theatre::limb() const {
  return parts_->limb;
}

const limb::CasePose& Theatre::pose() const {
  return parts_->pose;
}

const geometry::TriangleMesh& Theatre::skin() const {
  return parts_->skin;
}

SkinPlace Theatre::place(const geometry::SurfacePoint& on_skin) const {
  SkinPlace place;
  place.on_skin = on_skin;
  place.position_mm = geometry::position_mm(parts_->skin, on_skin);
  const auto& corners = parts_->skin.triangles[on_skin.triangle];
  const auto corner = [&](std::size_t k) { return parts_->skin.vertices_mm[corners[k]]; };
  place.inward = -(corner(1) - corner(0)).cross(corner(2) - corner(0)).normalized();
  const Vector3d at_rest = geometry::position_mm(parts_->at_rest.mesh, on_skin);
  const auto nearest_corner =
      static_cast<std::size_t>(std::ranges::max_element(on_skin.weights) - on_skin.weights.begin());
  place.region = limb::skin_region(parts_->frames, parts_->pose.joints, at_rest,
                                   parts_->at_rest.fingers[corners[nearest_corner]]);
  return place;
}

Expected<SkinPlace> Theatre::place(const AtSkin& mark) const {
  if (mark.picked_mm) return place(parts_->nearest_posed.nearest(*mark.picked_mm).on_mesh);
  const limb::Landmark* landmark = parts_->landmarks.find(mark.landmark);
  if (landmark == nullptr) {
    return std::unexpected(Error::outside_model(
        {"", fmt::format("the limb's model does not place the landmark '{}'", mark.landmark),
         "Measure from another landmark; `endplate limb` lists those that have a place."}));
  }
  const SegmentFrames& frames = parts_->frames;
  const Segment segment = landmark->segment;
  const Vector3d distal = -frames.proximal(segment);
  const double along_mm = mark.toward == casefile::Toward::distal ? mark.along_mm : -mark.along_mm;
  Vector3d at = limb::LandmarkSet::position_mm(*landmark, frames) + along_mm * distal;
  if (mark.aside) at += mark.aside_mm * towards(frames, segment, *mark.aside);

  geometry::SurfacePoint on_skin;
  if (mark.surface) {
    // From the segment's middle through the level of the mark, out to that side.
    const Vector3d out = towards(frames, segment, *mark.surface);
    Vector3d middle = at - out * (at - frames.origin(segment)).dot(out);
    const auto hits = parts_->skin_at_rest.along(middle, out);
    if (hits.empty()) {
      return std::unexpected(Error::input({"", "there is no skin on that side at that level",
                                           "Leave out \"surface\", or give another level."}));
    }
    on_skin = parts_->nearest_at_rest.nearest(hits.back().point_mm).on_mesh;
  } else {
    const auto nearest = parts_->nearest_at_rest.nearest(at);
    if (nearest.distance_mm > kOffSkin_mm) {
      return std::unexpected(Error::input(
          {"", fmt::format("the mark lies {:.0f} mm off the skin", nearest.distance_mm),
           "Give an offset within the limb."}));
    }
    on_skin = nearest.on_mesh;
  }
  const Vector3d at_rest = geometry::position_mm(parts_->at_rest.mesh, on_skin);
  const limb::SegmentPoint level = frames.from_limb(Segment::humerus, at_rest);
  const auto& corners = parts_->at_rest.mesh.triangles[on_skin.triangle];
  const auto corner = [&](std::size_t k) { return parts_->at_rest.mesh.vertices_mm[corners[k]]; };
  const Vector3d outward = (corner(1) - corner(0)).cross(corner(2) - corner(0)).normalized();
  if (level.fraction > limb::skin_shape::kTopFrom &&
      outward.dot(frames.lateral(Segment::humerus)) < kMedial) {
    return std::unexpected(Error::outside_model(
        {"", "there the skin is that of chest and armpit, which is not modelled",
         "Mark a place on the arm, the forearm or the hand."}));
  }
  SkinPlace found = place(on_skin);
  found.from_landmark_mm = along_mm;
  found.segment = segment;
  found.distal =
      (parts_->space.flesh(at_rest + distal) - parts_->space.flesh(at_rest - distal)).normalized();
  return found;
}

Expected<std::vector<SkinPlace>> Theatre::line(const SkinPlace& from, const SkinPlace& to,
                                               double step_mm) const {
  const auto path = parts_->over_skin().path(from.on_skin, to.on_skin);
  // The skin is one piece.
  if (!path || path->points_mm.size() < 2) return std::vector<SkinPlace>{from};
  const auto& points = path->points_mm;
  const int steps = std::max(1, static_cast<int>(std::ceil(path->length_mm / step_mm)));
  std::vector<SkinPlace> places;
  std::size_t piece = 0;
  double before_mm = 0.0;
  for (int k = 0; k <= steps; ++k) {
    const double at_mm = path->length_mm * k / steps;
    double piece_mm = (points[piece + 1] - points[piece]).norm();
    while (piece + 2 < points.size() && before_mm + piece_mm < at_mm) {
      before_mm += piece_mm;
      ++piece;
      piece_mm = (points[piece + 1] - points[piece]).norm();
    }
    const double share = piece_mm > 0.0 ? std::min(1.0, (at_mm - before_mm) / piece_mm) : 0.0;
    const Vector3d p = points[piece] + share * (points[piece + 1] - points[piece]);
    SkinPlace place = this->place(parts_->nearest_posed.nearest(p).on_mesh);
    const double along = static_cast<double>(k) / steps;
    // Between two marks what holds for them blends.
    place.from_landmark_mm = std::lerp(from.from_landmark_mm, to.from_landmark_mm, along);
    place.segment = along < 0.5 ? from.segment : to.segment;
    place.distal = (1.0 - along) * from.distal + along * to.distal;
    if (place.distal.norm() > 0.0) place.distal.normalize();
    places.push_back(std::move(place));
  }
  return places;
}

double Theatre::depth_mm(const Vector3d& position_mm) const {
  const geometry::ProbedPlace found = parts_->probe.at(position_mm);
  return found.inside ? found.distance_mm : -found.distance_mm;
}

std::optional<double> Theatre::to_bone_mm(const Vector3d& from_mm,
                                          const Vector3d& direction) const {
  const auto hits = parts_->bones.along(from_mm, direction);
  if (hits.empty()) return std::nullopt;
  const double bone_mm = hits.front().distance_mm;
  return bone_mm < through_mm(from_mm, direction) ? std::optional(bone_mm) : std::nullopt;
}

double Theatre::through_mm(const Vector3d& from_mm, const Vector3d& direction) const {
  // Begun a little inside, so that the skin of the entry is no exit.
  constexpr double kInside_mm = 0.5;
  const auto hits = parts_->posed_skin.along(from_mm + kInside_mm * direction, direction);
  return hits.empty() ? 0.0 : hits.front().distance_mm + kInside_mm;
}

}  // namespace endplate::incision
