#pragma once
// How often a closed surface wraps round a point: 1 inside, 0 outside.
#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <vector>

namespace endplate::geometry {

// The solid angle of all triangles about the point over that of a sphere (van Oosterom and
// Strackee, IEEE Trans Biomed Eng 1983;30:125, recalled). Takes time in proportion to the
// triangles.
double winding_number(const std::vector<Eigen::Vector3d>& vertices_mm,
                      const std::vector<std::array<std::uint32_t, 3>>& triangles,
                      const Eigen::Vector3d& point_mm);

}  // namespace endplate::geometry
