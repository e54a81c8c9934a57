#include "geometry/straight_sight.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/plane.hpp"

namespace endplate::geometry {
namespace {

using Eigen::Vector2d;

// Through one triangle's edges: a mesh that becomes finer all at once cannot run away.
constexpr std::size_t kMostWindows = 500;

double squared_distance_of_segment(const Vector2d& a, const Vector2d& b) {
  const Vector2d along = b - a;
  const double square = along.squaredNorm();
  const double share = square > 0.0 ? std::clamp(-a.dot(along) / square, 0.0, 1.0) : 0.0;
  return (a + share * along).squaredNorm();
}

}  // namespace

void StraightSight::begin(double within_mm, const SurfacePoint* sought) {
  windows_.clear();
  seen_.clear();
  seen_point_.reset();
  within_mm_ = within_mm;
  sought_ = sought;
  turned_rad_ = 0.0;
}

void StraightSight::look_from_vertex(std::uint32_t vertex, double within_mm) {
  begin(within_mm, nullptr);
  for (const std::uint32_t h : faces_->leaving(vertex)) {
    const std::uint32_t across = FlatFaces::next(h);
    const std::uint32_t back = FlatFaces::previous(h);
    turned_rad_ = faces_->direction(h);
    const Vector2d right{faces_->length_mm(h), 0.0};
    const Vector2d left = faces_->length_mm(back) *
                          Vector2d{std::cos(faces_->corner(h)), std::sin(faces_->corner(h))};
    const std::uint32_t twin = faces_->twin(h);
    const double arriving = twin != FlatFaces::kNone
                                ? faces_->direction(twin)
                                : faces_->direction(across) + faces_->corner(across);
    seen_.push_back(
        {faces_->origin(across), right.x(), turned_rad_, arriving, right, FlatFaces::kNone});
    if (faces_->twin(back) == FlatFaces::kNone)
      seen_.push_back({faces_->origin(back), faces_->length_mm(back),
                       turned_rad_ + faces_->corner(h), faces_->direction(back), left,
                       FlatFaces::kNone});
    const std::size_t first = windows_.size();
    most_windows_ = first + kMostWindows;
    add({right, left, right, left, across, FlatFaces::kNone});
    for (std::size_t i = first; i < windows_.size(); ++i)
      see_through(static_cast<std::uint32_t>(i));
  }
}

void StraightSight::look_from_point(const SurfacePoint& point, double within_mm,
                                    const SurfacePoint* sought) {
  begin(within_mm, sought);
  const std::uint32_t h = 3 * point.triangle;
  std::array<Vector2d, 3> corners = lay_triangle(*faces_, point.triangle);
  const auto at = [&](const SurfacePoint& p) -> Vector2d {
    return p.weights[0] * corners[0] + p.weights[1] * corners[1] + p.weights[2] * corners[2];
  };
  const Vector2d here = at(point);
  if (sought != nullptr && sought->triangle == point.triangle) {
    const Vector2d place = at(*sought) - here;
    seen_point_ = SeenPoint{place.norm(), place, FlatFaces::kNone};
  }
  most_windows_ = 3 * kMostWindows;
  for (Vector2d& corner : corners) corner -= here;
  for (std::uint32_t k = 0; k < 3; ++k) {
    const Vector2d& corner = corners[k];
    const Vector2d& next = corners[(k + 1) % 3];
    const double arriving = faces_->direction(h + k) + angle(next - corner, -corner);
    seen_.push_back(
        {faces_->origin(h + k), corner.norm(), 0.0, arriving, corner, FlatFaces::kNone});
    add({corner, next, corner, next, h + k, FlatFaces::kNone});
  }
  for (std::size_t i = 0; i < windows_.size(); ++i) see_through(static_cast<std::uint32_t>(i));
}

void StraightSight::add(const SightWindow& window) {
  if (windows_.size() < most_windows_ && faces_->twin(window.half_edge) != FlatFaces::kNone &&
      squared_distance_of_segment(window.right, window.left) < within_mm_ * within_mm_)
    windows_.push_back(window);
}

void StraightSight::see_through(std::uint32_t index) {
  const SightWindow window = windows_[index];
  const std::uint32_t h = faces_->twin(window.half_edge);  // from left to right, seen from here
  const Vector2d apex = lay_apex(faces_->apex(h), window.left, window.right);
  const std::uint32_t right_edge = FlatFaces::next(h);
  const std::uint32_t left_edge = FlatFaces::previous(h);
  if (sought_ != nullptr && sought_->triangle == h / 3) look_for_point(window, h, apex, index);

  const bool left_of_right_ray = cross(window.right_ray, apex) > 0.0;
  const bool right_of_left_ray = cross(apex, window.left_ray) > 0.0;
  if (left_of_right_ray && right_of_left_ray) {
    const double distance = apex.norm();
    if (distance <= within_mm_) {
      const double arriving = faces_->direction(left_edge) + angle(window.left - apex, -apex);
      const double leaving = turned_rad_ + std::atan2(apex.y(), apex.x());
      seen_.push_back({faces_->origin(left_edge), distance, leaving, arriving, apex, index});
    }
    add({window.right, apex, window.right_ray, apex, right_edge, index});
    add({apex, window.left, apex, window.left_ray, left_edge, index});
  } else if (left_of_right_ray) {  // the corner is hidden on the left
    add({window.right, apex, window.right_ray, window.left_ray, right_edge, index});
  } else {
    add({apex, window.left, window.right_ray, window.left_ray, left_edge, index});
  }
}

void StraightSight::look_for_point(const SightWindow& window, std::uint32_t h, const Vector2d& apex,
                                   std::uint32_t index) {
  // The half-edge runs from the window's left end to its right end and has its apex beyond.
  const std::uint32_t k = h % 3;
  const Vector2d place = sought_->weights[k] * window.left +
                         sought_->weights[(k + 1) % 3] * window.right +
                         sought_->weights[(k + 2) % 3] * apex;
  if (cross(window.right_ray, place) < 0.0 || cross(place, window.left_ray) < 0.0) return;
  const double distance = place.norm();
  if (!seen_point_ || distance < seen_point_->distance_mm)
    seen_point_ = SeenPoint{distance, place, index};
}

}  // namespace endplate::geometry
