#pragma once
// Triangles of a surface laid into the plane. Lengths in mm, angles in radians.
#include <Eigen/Core>
#include <array>
#include <cmath>
#include <cstdint>

#include "geometry/flat_faces.hpp"

namespace endplate::geometry {

inline double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
  return a.x() * b.y() - a.y() * b.x();
}

// Counter-clockwise from one direction to the other, between -pi and pi.
inline double angle(const Eigen::Vector2d& from, const Eigen::Vector2d& to) {
  return std::atan2(cross(from, to), from.dot(to));
}

// The third corner of the triangle left of `from` -> `to`, by FlatFaces::apex of that half-edge.
inline Eigen::Vector2d lay_apex(const Eigen::Vector2d& apex, const Eigen::Vector2d& from,
                                const Eigen::Vector2d& to) {
  const Eigen::Vector2d along = to - from;
  return from + apex.x() * along + apex.y() * Eigen::Vector2d{-along.y(), along.x()};
}

// The corners of a triangle: the first at zero, the second on the x axis.
inline std::array<Eigen::Vector2d, 3> lay_triangle(const FlatFaces& faces, std::uint32_t triangle) {
  const std::uint32_t h = 3 * triangle;
  const double side_mm = faces.length_mm(FlatFaces::previous(h));
  return {Eigen::Vector2d{0.0, 0.0}, Eigen::Vector2d{faces.length_mm(h), 0.0},
          side_mm * Eigen::Vector2d{std::cos(faces.corner(h)), std::sin(faces.corner(h))}};
}

}  // namespace endplate::geometry
