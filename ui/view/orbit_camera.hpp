#pragma once
// Where the limb is looked at from: a turntable about the limb's long axis, in parallel projection,
// so that a millimetre is as long anywhere in the picture.
#include <Eigen/Geometry>
#include <QPointF>
#include <QSizeF>

#include "models/core/side.hpp"
#include "ui/view/view_types.hpp"

namespace endplate::ui {

struct ViewRay {
  Eigen::Vector3d origin_mm;
  Eigen::Vector3d direction;  // unit
};

class OrbitCamera {
 public:
  // Points of the picture are logical pixels from its upper left corner; `size` is the picture's.
  QPointF to_picture(const Eigen::Vector3d& place_mm, const QSizeF& size) const;
  ViewRay ray(const QPointF& at, const QSizeF& size) const;
  // Larger: farther from the eye.
  double depth_mm(const Eigen::Vector3d& place_mm) const {
    return forward().dot(place_mm - focus_mm_);
  }

  void turn(const QPointF& by_pixels);
  void shift(const QPointF& by_pixels, const QSizeF& size);
  // `factor` > 1 comes nearer; what is at `about` stays there.
  void zoom(double factor, const QPointF& about, const QSizeF& size);
  void look_from(Aspect aspect, Side side);
  // Shows the whole box with some room around it.
  void fit(const Eigen::AlignedBox3d& box, const QSizeF& size);

  double mm_per_pixel(const QSizeF& size) const { return height_mm_ / size.height(); }
  void set_mm_per_pixel(double mm, const QSizeF& size) { height_mm_ = mm * size.height(); }
  double height_mm() const { return height_mm_; }
  const Eigen::Vector3d& focus_mm() const { return focus_mm_; }
  const Eigen::Vector3d& eye_direction() const { return eye_; }  // from the focus to the eye, unit
  Eigen::Vector3d forward() const { return -eye_direction(); }
  const Eigen::Vector3d& up() const { return up_; }
  const Eigen::Vector3d& right() const { return right_; }

 private:
  void aim();

  Eigen::Vector3d focus_mm_ = Eigen::Vector3d::Zero();
  double azimuth_rad_ = 0.0;  // from anterior towards the subject's right
  double elevation_rad_ = 0.0;
  double height_mm_ = 900.0;  // of the picture
  // Follow from the angles; asked for every point of the picture.
  Eigen::Vector3d eye_ = Eigen::Vector3d::UnitX();
  Eigen::Vector3d up_ = Eigen::Vector3d::UnitY();
  Eigen::Vector3d right_ = -Eigen::Vector3d::UnitZ();
};

}  // namespace endplate::ui
