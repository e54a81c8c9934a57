#include "geometry/joint_bend.hpp"

#include <Eigen/Geometry>
#include <cmath>

namespace endplate::geometry {
namespace {

// Below this angle nothing folds within any limb: the crease lies metres away.
constexpr double kStraight_rad = 1e-6;

// Flesh keeps its shape up to this share of the room that is left to it.
constexpr double kUnpressedShare = 0.5;

// Far beyond the zone the room grows faster than the angle opens: flesh presses on flesh near a
// joint; what a hand does at the far end of a forearm is its own affair.
constexpr double kFar = 4.0;  // half zones
constexpr double kFarOpening = 3.0;

}  // namespace

JointBend::JointBend(const Eigen::Vector3d& centre_mm, const Eigen::Vector3d& proximal,
                     const Eigen::Vector3d& axis, double angle_rad, double half_zone_mm)
    : centre_(centre_mm), half_zone_(half_zone_mm) {
  const double angle = std::abs(angle_rad);
  const Eigen::Vector3d about = angle_rad < 0.0 ? Eigen::Vector3d(-axis) : axis;
  frame_.col(0) = proximal.cross(about);  // where the distal side turns to
  frame_.col(1) = proximal;
  frame_.col(2) = about;
  turn_ = Eigen::AngleAxisd(angle, Eigen::Vector3d::UnitZ()).toRotationMatrix();
  if (angle > kStraight_rad) {
    cotangent_ = 1.0 / std::tan(0.5 * angle);
    crease_ = half_zone_ * cotangent_;
  }
}

double JointBend::pressed(double x, double y) const {
  const double room =
      cotangent_ * std::max(y, half_zone_) + kFarOpening * std::max(0.0, y - kFar * half_zone_);
  const double free = kUnpressedShare * room;
  if (x <= free) return x;
  return free + (room - free) * -std::expm1((free - x) / (room - free));
}

Eigen::Vector2d JointBend::fold(double x, double y) const {
  const double across = x > 0.0 ? pressed(x, y) : x;
  if (y >= half_zone_) return {across, y};
  // Along the line from the bone at y to the crease.
  const double slope = (half_zone_ - y) / crease_;
  const double along = y + slope * across;
  if (along >= 0.0) return {across, along};
  // Behind the joint: that line meets the circle of radius |x| about the joint's centre.
  const double hypotenuse = std::sqrt(1.0 + slope * slope);
  const double cosine = 1.0 / hypotenuse;
  const double sine = slope * cosine;
  const double reach = y * sine + std::sqrt(across * across - y * y * cosine * cosine);
  return {-reach * cosine, y - reach * sine};
}

template <class Side>
Eigen::Vector3d JointBend::mapped(const Eigen::Vector3d& rest_mm, const Side& side) const {
  if (cotangent_ == 0.0) return rest_mm;
  const Eigen::Vector3d local = frame_.transpose() * (rest_mm - centre_);
  const bool distal = local.y() < 0.0;
  const Eigen::Vector2d there = side(local.x(), std::abs(local.y()));
  Eigen::Vector3d moved(there.x(), distal ? -there.y() : there.y(), local.z());
  if (distal) moved = turn_ * moved;
  return centre_ + frame_ * moved;
}

Eigen::Vector3d JointBend::operator()(const Eigen::Vector3d& rest_mm) const {
  return mapped(rest_mm, [this](double x, double y) { return fold(x, y); });
}

Eigen::Vector3d JointBend::held(const Eigen::Vector3d& rest_mm) const {
  return mapped(
      rest_mm, [this](double x, double y) { return x > 0.0 ? fold(x, y) : Eigen::Vector2d(x, y); });
}

}  // namespace endplate::geometry
