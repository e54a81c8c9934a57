#include "tests/support/test_surfaces.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>
#include <random>
#include <utility>

namespace endplate::test {
namespace {

using Eigen::Vector3d;
using geometry::TriangleMesh;

// Between -1 and 1; the standard's distributions differ between libraries.
double anywhere(std::mt19937& chance) {
  return static_cast<double>(chance()) / 2147483647.5 - 1.0;
}

void add_square(TriangleMesh& mesh, const std::array<std::uint32_t, 4>& round, bool other_way) {
  const auto [a, b, c, d] = round;
  if (other_way) {
    mesh.triangles.push_back({a, b, d});
    mesh.triangles.push_back({b, c, d});
  } else {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
  }
}

// A point of the tube: share along it from end to end and angle round it.
Vector3d tube_point(double share, double angle) {
  constexpr double kLength_mm = 160.0;
  constexpr double kBend_rad = 1.2;
  const double thick_mm = 25.0 - 13.0 * share;
  // Round ends: the outline is a circle's near them.
  const double from_end_mm = kLength_mm * std::min(share, 1.0 - share);
  const double radius_mm =
      from_end_mm < thick_mm
          ? std::sqrt(std::max(from_end_mm * (2.0 * thick_mm - from_end_mm), 0.0))
          : thick_mm;
  // The axis is an arc of a circle.
  const double axis_mm = kLength_mm / kBend_rad;
  const double turn = kBend_rad * share;
  const double outward_mm = axis_mm + radius_mm * std::cos(angle);
  return {outward_mm * std::cos(turn), outward_mm * std::sin(turn), radius_mm * std::sin(angle)};
}

}  // namespace

TriangleMesh flat_plate(int cells, std::uint32_t seed) {
  TriangleMesh mesh;
  std::mt19937 chance(seed);
  for (int y = 0; y <= cells; ++y) {
    for (int x = 0; x <= cells; ++x) {
      const double move_x = x > 0 && x < cells ? 0.3 * anywhere(chance) : 0.0;
      const double move_y = y > 0 && y < cells ? 0.3 * anywhere(chance) : 0.0;
      mesh.vertices_mm.emplace_back(x + move_x, y + move_y, 0.0);
    }
  }
  const auto at = [cells](int x, int y) { return static_cast<std::uint32_t>(y * (cells + 1) + x); };
  for (int y = 0; y < cells; ++y)
    for (int x = 0; x < cells; ++x)
      add_square(mesh, {at(x, y), at(x + 1, y), at(x + 1, y + 1), at(x, y + 1)}, (x + y) % 2 == 0);
  return mesh;
}

TriangleMesh sphere(double radius_mm, int times) {
  const double g = std::numbers::phi;
  TriangleMesh mesh;
  mesh.vertices_mm = {{-1, g, 0},  {1, g, 0},  {-1, -g, 0}, {1, -g, 0}, {0, -1, g},  {0, 1, g},
                      {0, -1, -g}, {0, 1, -g}, {g, 0, -1},  {g, 0, 1},  {-g, 0, -1}, {-g, 0, 1}};
  mesh.triangles = {{0, 11, 5}, {0, 5, 1},  {0, 1, 7},   {0, 7, 10}, {0, 10, 11},
                    {1, 5, 9},  {5, 11, 4}, {11, 10, 2}, {10, 7, 6}, {7, 1, 8},
                    {3, 9, 4},  {3, 4, 2},  {3, 2, 6},   {3, 6, 8},  {3, 8, 9},
                    {4, 9, 5},  {2, 4, 11}, {6, 2, 10},  {8, 6, 7},  {9, 8, 1}};
  for (int i = 0; i < times; ++i) {
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> middles;
    const auto middle = [&](std::uint32_t a, std::uint32_t b) {
      const auto [place, made] = middles.try_emplace(
          std::minmax(a, b), static_cast<std::uint32_t>(mesh.vertices_mm.size()));
      if (made) mesh.vertices_mm.emplace_back(mesh.vertices_mm[a] + mesh.vertices_mm[b]);
      return place->second;
    };
    std::vector<std::array<std::uint32_t, 3>> finer;
    for (const auto& [a, b, c] : mesh.triangles) {
      const std::uint32_t ab = middle(a, b);
      const std::uint32_t bc = middle(b, c);
      const std::uint32_t ca = middle(c, a);
      finer.insert(finer.end(), {{a, ab, ca}, {b, bc, ab}, {c, ca, bc}, {ab, bc, ca}});
    }
    mesh.triangles.swap(finer);
    for (Vector3d& vertex : mesh.vertices_mm) vertex.normalize();
  }
  for (Vector3d& vertex : mesh.vertices_mm) vertex *= radius_mm / vertex.norm();
  return mesh;
}

TriangleMesh bent_tube(int around, int along, std::uint32_t seed) {
  TriangleMesh mesh;
  std::mt19937 chance(seed);
  mesh.vertices_mm.push_back(tube_point(0.0, 0.0));
  for (int i = 1; i < along; ++i) {
    // Closer near the ends, where the outline turns.
    const double share =
        0.5 - 0.5 * std::cos(std::numbers::pi * (i + 0.2 * anywhere(chance)) / along);
    for (int j = 0; j < around; ++j)
      mesh.vertices_mm.push_back(tube_point(
          share, 2.0 * std::numbers::pi * (j + 0.2 * anywhere(chance) + 0.5 * (i % 2)) / around));
  }
  mesh.vertices_mm.push_back(tube_point(1.0, 0.0));
  const auto at = [around](int i, int j) {
    return static_cast<std::uint32_t>(1 + (i - 1) * around + (j + around) % around);
  };
  const auto last = static_cast<std::uint32_t>(mesh.vertices_mm.size() - 1);
  for (int j = 0; j < around; ++j) {
    mesh.triangles.push_back({0, at(1, j), at(1, j + 1)});
    mesh.triangles.push_back({last, at(along - 1, j + 1), at(along - 1, j)});
    for (int i = 1; i + 1 < along; ++i)
      add_square(mesh, {at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)}, i % 2 == 0);
  }
  return mesh;
}

Shuffled shuffled(const TriangleMesh& mesh, std::uint32_t seed) {
  std::mt19937 chance(seed);
  Shuffled other;
  other.number.resize(mesh.vertices_mm.size());
  std::iota(other.number.begin(), other.number.end(), 0U);
  std::ranges::shuffle(other.number, chance);
  other.mesh.vertices_mm.resize(mesh.vertices_mm.size());
  for (std::size_t v = 0; v < other.number.size(); ++v)
    other.mesh.vertices_mm[other.number[v]] = mesh.vertices_mm[v];
  other.mesh.triangles = mesh.triangles;
  for (auto& corners : other.mesh.triangles) {
    for (std::uint32_t& corner : corners) corner = other.number[corner];
    std::ranges::rotate(corners, corners.begin() + static_cast<std::ptrdiff_t>(chance() % 3));
  }
  std::ranges::shuffle(other.mesh.triangles, chance);
  return other;
}

TriangleMesh joined(const TriangleMesh& a, const TriangleMesh& b) {
  TriangleMesh both = a;
  const auto offset = static_cast<std::uint32_t>(a.vertices_mm.size());
  both.vertices_mm.insert(both.vertices_mm.end(), b.vertices_mm.begin(), b.vertices_mm.end());
  for (auto corners : b.triangles) {
    for (std::uint32_t& corner : corners) corner += offset;
    both.triangles.push_back(corners);
  }
  return both;
}

}  // namespace endplate::test
