#include "ui/view/orbit_camera.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace endplate::ui {
namespace {

using Eigen::Vector3d;
using std::numbers::pi;

constexpr double kRadPerPixel = 0.008;
constexpr double kRoom = 1.06;
constexpr double kNearest_mm = 10.0;
constexpr double kFarthest_mm = 4000.0;
constexpr double kEye_mm = 2000.0;

}  // namespace

void OrbitCamera::aim() {
  eye_ = {std::cos(elevation_rad_) * std::cos(azimuth_rad_), std::sin(elevation_rad_),
          std::cos(elevation_rad_) * std::sin(azimuth_rad_)};
  up_ = {-std::sin(elevation_rad_) * std::cos(azimuth_rad_), std::cos(elevation_rad_),
         -std::sin(elevation_rad_) * std::sin(azimuth_rad_)};
  right_ = up_.cross(eye_);
}

QPointF OrbitCamera::to_picture(const Vector3d& place_mm, const QSizeF& size) const {
  const Vector3d from_focus = place_mm - focus_mm_;
  const double scale = 1.0 / mm_per_pixel(size);
  return {0.5 * size.width() + scale * from_focus.dot(right()),
          0.5 * size.height() - scale * from_focus.dot(up())};
}

ViewRay OrbitCamera::ray(const QPointF& at, const QSizeF& size) const {
  const double scale = mm_per_pixel(size);
  const Vector3d place = focus_mm_ + scale * (at.x() - 0.5 * size.width()) * right() -
                         scale * (at.y() - 0.5 * size.height()) * up();
  return {place + kEye_mm * eye_direction(), forward()};
}

void OrbitCamera::turn(const QPointF& by_pixels) {
  azimuth_rad_ = std::remainder(azimuth_rad_ + kRadPerPixel * by_pixels.x(), 2.0 * pi);
  elevation_rad_ = std::clamp(elevation_rad_ + kRadPerPixel * by_pixels.y(), -0.5 * pi, 0.5 * pi);
  aim();
}

void OrbitCamera::shift(const QPointF& by_pixels, const QSizeF& size) {
  const double scale = mm_per_pixel(size);
  focus_mm_ += scale * (-by_pixels.x() * right() + by_pixels.y() * up());
}

void OrbitCamera::zoom(double factor, const QPointF& about, const QSizeF& size) {
  const double height_mm = std::clamp(height_mm_ / factor, kNearest_mm, kFarthest_mm);
  const QPointF from_middle = about - QPointF(0.5 * size.width(), 0.5 * size.height());
  const double moved = (height_mm_ - height_mm) / size.height();
  focus_mm_ += moved * (from_middle.x() * right() - from_middle.y() * up());
  height_mm_ = height_mm;
}

void OrbitCamera::look_from(Aspect aspect, Side side) {
  const double lateral = side == Side::right ? 0.5 * pi : -0.5 * pi;
  elevation_rad_ = 0.0;
  switch (aspect) {
    case Aspect::front:
      azimuth_rad_ = 0.0;
      break;
    case Aspect::back:
      azimuth_rad_ = pi;
      break;
    case Aspect::lateral:
      azimuth_rad_ = lateral;
      break;
    case Aspect::medial:
      azimuth_rad_ = -lateral;
      break;
    case Aspect::proximal:
      // From above, the front of the limb upward.
      azimuth_rad_ = pi;
      elevation_rad_ = 0.5 * pi;
      break;
  }
  aim();
}

void OrbitCamera::fit(const Eigen::AlignedBox3d& box, const QSizeF& size) {
  focus_mm_ = box.center();
  double half_width = 0.0;
  double half_height = 0.0;
  for (int corner = 0; corner < 8; ++corner) {
    const Vector3d from_focus =
        box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(corner)) - focus_mm_;
    half_width = std::max(half_width, std::abs(from_focus.dot(right())));
    half_height = std::max(half_height, std::abs(from_focus.dot(up())));
  }
  const double aspect = size.height() / std::max(1.0, size.width());
  height_mm_ = std::clamp(2.0 * kRoom * std::max(half_height, half_width * aspect), kNearest_mm,
                          kFarthest_mm);
}

}  // namespace endplate::ui
