#include "ui/view/mesh_batch.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace endplate::ui {
namespace {

using Eigen::Vector3d;

struct Solid {
  std::vector<Vector3d> directions;  // unit
  std::vector<std::array<std::uint32_t, 3>> triangles;
};

Solid diamond() {
  Solid solid;
  for (int axis = 0; axis < 3; ++axis) {
    solid.directions.push_back(Vector3d::Unit(axis));
    solid.directions.push_back(-Vector3d::Unit(axis));
  }
  for (const std::uint32_t x : {0u, 1u}) {
    for (const std::uint32_t y : {2u, 3u}) {
      for (const std::uint32_t z : {4u, 5u}) {
        const bool even = (x + y + z) % 2 == 0;
        solid.triangles.push_back(even ? std::array{x, y, z} : std::array{x, z, y});
      }
    }
  }
  return solid;
}

Solid rounder(const Solid& coarse) {
  Solid solid{coarse.directions, {}};
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> middles;
  const auto middle = [&](std::uint32_t a, std::uint32_t b) {
    const auto [at, is_new] =
        middles.try_emplace(std::minmax(a, b), static_cast<std::uint32_t>(solid.directions.size()));
    if (is_new) {
      const Vector3d sum = solid.directions[a] + solid.directions[b];
      solid.directions.push_back(sum.normalized());
    }
    return at->second;
  };
  for (const auto& [a, b, c] : coarse.triangles) {
    const auto ab = middle(a, b);
    const auto bc = middle(b, c);
    const auto ca = middle(c, a);
    solid.triangles.push_back({a, ab, ca});
    solid.triangles.push_back({b, bc, ab});
    solid.triangles.push_back({c, ca, bc});
    solid.triangles.push_back({ab, bc, ca});
  }
  return solid;
}

const Solid& solid_of(Dot dot) {
  static const Solid octahedron = diamond();
  static const Solid coarse = rounder(octahedron);
  static const Solid fine = rounder(coarse);
  switch (dot) {
    case Dot::ball:
      return fine;
    case Dot::small_ball:
      return coarse;
    case Dot::diamond:
      break;
  }
  return octahedron;
}

void push(std::vector<float>& list, const Vector3d& v) {
  for (int axis = 0; axis < 3; ++axis) list.push_back(static_cast<float>(v[axis]));
}

void add_vertex(MeshBatch& batch, const Vector3d& point, const Vector3d& normal,
                std::uint32_t item) {
  push(batch.points, point);
  push(batch.normals, normal);
  batch.items.push_back(item);
}

void add_triangle(MeshBatch& batch, std::uint32_t a, std::uint32_t b, std::uint32_t c) {
  batch.corners.insert(batch.corners.end(), {a, b, c});
}

// Any direction across `along`.
Vector3d across(const Vector3d& along) {
  Eigen::Index least = 0;
  along.cwiseAbs().minCoeff(&least);
  return along.cross(Vector3d::Unit(least)).normalized();
}

}  // namespace

void add_mesh(MeshBatch& batch, std::span<const Vector3d> vertices_mm,
              std::span<const std::array<std::uint32_t, 3>> triangles, std::uint32_t item) {
  std::vector<Vector3d> normals(vertices_mm.size(), Vector3d::Zero());
  const auto first = static_cast<std::uint32_t>(batch.vertices());
  for (const auto& [a, b, c] : triangles) {
    const Vector3d normal =
        (vertices_mm[b] - vertices_mm[a]).cross(vertices_mm[c] - vertices_mm[a]);
    normals[a] += normal;
    normals[b] += normal;
    normals[c] += normal;
    add_triangle(batch, first + a, first + b, first + c);
  }
  for (std::size_t v = 0; v < vertices_mm.size(); ++v) {
    add_vertex(batch, vertices_mm[v], normals[v].stableNormalized(), item);
  }
}

void add_tube(MeshBatch& batch, std::span<const Vector3d> line_mm, double radius_mm, int sides,
              std::uint32_t item) {
  const auto first = static_cast<std::uint32_t>(batch.vertices());
  const auto count = static_cast<std::uint32_t>(sides);
  const auto points = static_cast<std::uint32_t>(line_mm.size());
  Vector3d along = Vector3d::UnitY();
  Vector3d side = Vector3d::UnitX();
  for (std::uint32_t k = 0; k < points; ++k) {
    const Vector3d chord = line_mm[std::min(k + 1, points - 1)] - line_mm[k == 0 ? 0 : k - 1];
    if (chord.norm() > 1e-9) along = chord.normalized();
    // Carried on from the ring before, so that the tube is not wrung.
    const Vector3d carried = side - side.dot(along) * along;
    side = k > 0 && carried.norm() > 1e-3 ? Vector3d(carried.normalized()) : across(along);
    const Vector3d other = along.cross(side);
    for (int s = 0; s < sides; ++s) {
      const double angle = 2.0 * std::numbers::pi * s / sides;
      const Vector3d out = std::cos(angle) * side + std::sin(angle) * other;
      add_vertex(batch, line_mm[k] + radius_mm * out, out, item);
    }
    if (k == 0) continue;
    const std::uint32_t low = first + (k - 1) * count;
    for (std::uint32_t s = 0; s < count; ++s) {
      const std::uint32_t next = (s + 1) % count;
      add_triangle(batch, low + s, low + next, low + count + s);
      add_triangle(batch, low + next, low + count + next, low + count + s);
    }
  }
  const auto cap = [&](std::uint32_t ring, const Vector3d& middle, const Vector3d& out,
                       bool start) {
    const auto centre = static_cast<std::uint32_t>(batch.vertices());
    add_vertex(batch, middle + 0.6 * radius_mm * out, out, item);
    for (std::uint32_t s = 0; s < count; ++s) {
      const std::uint32_t a = ring + s;
      const std::uint32_t b = ring + (s + 1) % count;
      start ? add_triangle(batch, centre, b, a) : add_triangle(batch, centre, a, b);
    }
  };
  const Vector3d begin = line_mm.front() - line_mm[1];
  cap(first, line_mm.front(), begin.stableNormalized(), true);
  cap(first + (points - 1) * count, line_mm.back(), along, false);
}

void add_dot(MeshBatch& batch, const Vector3d& place_mm, double radius_mm, Dot dot,
             std::uint32_t item) {
  const Solid& solid = solid_of(dot);
  const auto first = static_cast<std::uint32_t>(batch.vertices());
  for (const Vector3d& direction : solid.directions) {
    add_vertex(batch, place_mm + radius_mm * direction, direction, item);
  }
  for (const auto& [a, b, c] : solid.triangles) {
    add_triangle(batch, first + a, first + b, first + c);
  }
}

}  // namespace endplate::ui
