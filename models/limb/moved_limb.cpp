#include "models/limb/moved_limb.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace endplate::limb {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

// Places of a course that are posed; between them a spline, which errs by some tenths of a
// millimetre where a course bends sharply at a joint.
constexpr double kStep_mm = 4.0;
// Half the breadth between the styloids, as limb_landmarks.csv places them.
constexpr double kStyloids_mm = 25.5;
constexpr double kPast_mm = 0.01;
// The middle of the radius where supinator lies on it, as bone_capsules.csv has it.
constexpr SegmentPoint kUpperRadius{0.2, 1.0, 11.0};

geometry::CubicSpline moved_course(std::string_view course, const geometry::CubicSpline& rest,
                                   const SegmentFrames& frames, const PosedNerves& nerves,
                                   std::optional<casefile::Layer> layer) {
  const double span = rest.last_knot() - rest.first_knot();
  const auto steps = static_cast<Eigen::Index>(std::max(4.0, std::ceil(span / kStep_mm)));
  std::vector<double> knots;
  Eigen::MatrixX3d places(steps + 1, 3);
  for (Eigen::Index k = 0; k <= steps; ++k) {
    knots.push_back(rest.first_knot() + span * static_cast<double>(k) / static_cast<double>(steps));
    Vector3d p = rest.position(knots.back());
    if (layer) p = transposed_mm(frames, *layer, p);
    places.row(k) = nerves(nerve_place(course, frames, p)).transpose();
  }
  return {knots, places};
}

std::optional<Bone> bone_of(Segment segment) {
  switch (segment) {
    case Segment::humerus:
      return Bone::humerus;
    case Segment::forearm:
      return Bone::ulna;
    case Segment::hand:
      return Bone::hand;
  }
  return std::nullopt;
}

}  // namespace

MovedLimb::MovedLimb(const Atlas& atlas, const std::vector<geometry::CubicSpline>& rest,
                     const SegmentFrames& frames, const LimbJoints& joints,
                     const BodyEnvelope& envelope, const Pose& pose,
                     const std::optional<UlnarTransposition>& transposition)
    : atlas_(&atlas), rest_(&rest), frames_(frames), space_(frames, joints, pose) {
  const PosedNerves nerves(atlas.landmarks(), envelope, frames, space_);
  for (std::size_t c = 0; c < rest.size(); ++c) {
    const bool transposed = transposition && atlas.courses()[c].id == "ulnar";
    if (pose.is_neutral() && !transposed) {
      curves_.push_back(rest[c]);
      continue;
    }
    curves_.push_back(moved_course(
        atlas.courses()[c].id, rest[c], frames, nerves,
        transposed ? std::optional(transposition->layer) : std::optional<casefile::Layer>()));
  }
}

Vector3d MovedLimb::proximal(Segment segment) const {
  if (segment != Segment::forearm) {
    return space_.of_bone(*bone_of(segment)).linear() * frames_.proximal(segment);
  }
  const auto styloid = [&](Bone bone, double z_mm) {
    return Vector3d(space_.of_bone(bone) * frames_.to_limb(segment, 1.0, 0.0, z_mm));
  };
  const Vector3d elbow = space_.of_bone(Bone::ulna) * frames_.origin(segment);
  const Vector3d wrist =
      0.5 * (styloid(Bone::radius, kStyloids_mm) + styloid(Bone::ulna, -kStyloids_mm));
  return (elbow - wrist).normalized();
}

Matrix3d MovedLimb::turn_of(const Landmark* landmark, Segment axis) const {
  if (landmark != nullptr && landmark->bone && landmark->segment == axis) {
    return space_.of_bone(*landmark->bone).linear();
  }
  return space_.of_bone(*bone_of(axis)).linear();
}

// The plane through the turned radius and the eye, which looks at the forearm from where it would
// at rest.
void MovedLimb::see(const Atlas::View& view, CrossingSurface& surface) const {
  const Eigen::Isometry3d radius = space_.of_bone(Bone::radius);
  const Matrix3d ulna = space_.of_bone(Bone::ulna).linear();
  const Vector3d front = ulna * frames_.anterior(Segment::forearm);
  const Vector3d side = ulna * frames_.lateral(Segment::forearm);
  const Vector3d eye = view.from_front ? front : side;
  const Vector3d across = view.from_front ? side : front;
  const Vector3d along = radius.linear() * frames_.proximal(Segment::forearm);
  surface.normal = along.cross(eye).normalized();
  if (surface.normal.dot(across) < 0.0) surface.normal = -surface.normal;
  // As far beside the radius as the plane at rest.
  const double middle_mm = view.from_front ? kUpperRadius.z_mm : 0.0;
  const SegmentPoint on_radius{kUpperRadius.fraction, view.from_front ? kUpperRadius.x_mm : 0.0,
                               kUpperRadius.z_mm};
  surface.through = radius * frames_.to_limb(Segment::forearm, on_radius) +
                    frames_.scale().breadth * (view.offset_mm - middle_mm) * across;
  surface.distal = -proximal(Segment::forearm);
  surface.distal_of = space_.of_bone(Bone::ulna) * frames_.origin(Segment::forearm);
}

MeasureGeometry MovedLimb::geometry_of(const NerveMeasure& measure,
                                       const MeasureGeometry& rest) const {
  MeasureGeometry moved = rest;
  const Landmark* landmark = atlas_->landmarks().find(measure.landmark);
  moved.distal = -proximal(measure.axis);
  moved.sideways = turn_of(landmark, measure.axis) * rest.sideways;
  if (landmark != nullptr) moved.landmark = LandmarkSet::posed_mm(*landmark, frames_, space_);
  if (measure.definition == Definition::offset_at_level) {
    moved.surface.normal = moved.distal;
    moved.surface.through = moved.landmark;
  }
  if (const auto view = atlas_->view_of_plane(measure)) {
    see(*view, moved.surface);
  } else if (!measure.plane.empty()) {
    const Landmark* in_plane = atlas_->landmark_of_plane(measure);
    const Bone bone = in_plane == nullptr ? Bone::humerus : in_plane->bone.value_or(Bone::hand);
    const Eigen::Isometry3d turn = space_.of_bone(bone);
    moved.surface.normal = turn.linear() * rest.surface.normal;
    moved.surface.through = turn * rest.surface.through;
    moved.surface.distal = turn.linear() * rest.surface.distal;
    moved.surface.distal_of = turn * rest.surface.distal_of;
    moved.surface.axes = turn.linear() * rest.surface.axes;
  }
  if (moved.from_level) {
    moved.from_level->normal = moved.distal;
    const Landmark* level = atlas_->landmarks().find(measure.from_level);
    moved.from_level->through =
        LandmarkSet::posed_mm(*level, frames_, space_) + measure.from_offset_mm * moved.distal;
  }
  return moved;
}

std::optional<double> MovedLimb::crossing(std::size_t course, const CrossingSurface& here,
                                          const CrossingSurface& at_rest,
                                          const MeasureGeometry& search) const {
  const auto before =
      find_crossing((*rest_)[course], at_rest, search.search_from, search.search_to);
  if (!before) return std::nullopt;
  std::optional<double> nearest;
  double from = search.search_from;
  while (const auto u = find_crossing(curves_[course], here, from, search.search_to)) {
    if (nearest && std::abs(*u - *before) >= std::abs(*nearest - *before)) break;
    nearest = u;
    from = *u + kPast_mm;
  }
  return nearest;
}

std::optional<double> MovedLimb::take(const NerveMeasure& measure,
                                      const MeasureGeometry& rest) const {
  const geometry::CubicSpline& at_rest = (*rest_)[measure.course];
  const geometry::CubicSpline& here = curves_[measure.course];
  const auto& points = atlas_->courses()[measure.course].points;
  const double point = measure.point ? points[*measure.point].knot : 0.0;
  const MeasureGeometry moved = geometry_of(measure, rest);
  switch (measure.definition) {
    case Definition::length:
      return take_measure<double>(rest, at_rest, at_rest, 0.0, 0.0);
    case Definition::along: {
      if (!rest.from_level) {
        const double other = measure.other ? points[*measure.other].knot : at_rest.first_knot();
        return take_measure<double>(rest, at_rest, at_rest, point, other);
      }
      const auto level = crossing(measure.course, *moved.from_level, *rest.from_level, rest);
      if (!level) return std::nullopt;
      return geometry::arc_length(at_rest, *level, point);
    }
    case Definition::crossing:
    case Definition::offset_at_level: {
      const auto u = crossing_of(measure, rest);
      if (!u) return std::nullopt;
      const Vector3d way = here.position(*u) - moved.landmark;
      return way.dot(measure.definition == Definition::crossing ? moved.distal : moved.sideways);
    }
    default:
      return take_measure<double>(moved, here, here, point, point);
  }
}

std::optional<double> MovedLimb::crossing_of(const NerveMeasure& measure,
                                             const MeasureGeometry& rest) const {
  return crossing(measure.course, geometry_of(measure, rest).surface, rest.surface, rest);
}

std::optional<double> MovedLimb::level_of(const NerveMeasure& measure,
                                          const MeasureGeometry& rest) const {
  const MeasureGeometry moved = geometry_of(measure, rest);
  const auto level = [](const MeasureGeometry& geometry) {
    CrossingSurface surface;
    surface.normal = geometry.distal;
    surface.through = geometry.landmark;
    return surface;
  };
  return crossing(measure.course, level(moved), level(rest), rest);
}

}  // namespace endplate::limb
