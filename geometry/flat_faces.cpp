#include "geometry/flat_faces.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <utility>

namespace endplate::geometry {
namespace {

// Ends nearer than this are one point.
constexpr double kSamePoint_mm = 1e-9;

}  // namespace

FlatFaces::FlatFaces(const TriangleMesh& mesh) {
  const std::size_t edges = 3 * mesh.triangles.size();
  origin_.reserve(edges);
  for (const auto& corners : mesh.triangles)
    origin_.insert(origin_.end(), corners.begin(), corners.end());
  total_angle_.assign(mesh.vertices_mm.size(), 0.0);
  measure(mesh);
  pair_edges();
  go_round_vertices();
}

void FlatFaces::measure(const TriangleMesh& mesh) {
  const auto edges = static_cast<std::uint32_t>(origin_.size());
  length_mm_.resize(edges);
  corner_.resize(edges);
  apex_.resize(edges);
  for (std::uint32_t h = 0; h < edges; ++h) {
    const Eigen::Vector3d& from = mesh.vertices_mm[origin_[h]];
    const Eigen::Vector3d along = mesh.vertices_mm[origin_[next(h)]] - from;
    const Eigen::Vector3d across = mesh.vertices_mm[origin_[previous(h)]] - from;
    length_mm_[h] = along.norm();
    const double twice_area = along.cross(across).norm();
    corner_[h] = std::atan2(twice_area, along.dot(across));
    const double square = along.squaredNorm();
    if (square > 0.0) apex_[h] = {along.dot(across) / square, twice_area / square};
  }
}

void FlatFaces::pair_edges() {
  twin_.assign(origin_.size(), kNone);
  std::vector<std::pair<std::uint64_t, std::uint32_t>> by_ends(origin_.size());
  for (std::uint32_t h = 0; h < origin_.size(); ++h) {
    const auto [low, high] = std::minmax({origin_[h], origin_[next(h)]});
    by_ends[h] = {(std::uint64_t{low} << 32U) | high, h};
  }
  std::ranges::sort(by_ends);
  for (std::size_t i = 0; i < by_ends.size();) {
    std::size_t end = i + 1;
    while (end < by_ends.size() && by_ends[end].first == by_ends[i].first) ++end;
    const std::uint32_t h = by_ends[i].second;
    if (end - i == 2 && length_mm_[h] > kSamePoint_mm) {
      const std::uint32_t other = by_ends[i + 1].second;
      if (origin_[h] != origin_[other]) {
        twin_[h] = other;
        twin_[other] = h;
      }
    }
    i = end;
  }
}

void FlatFaces::go_round_vertices() {
  const std::size_t vertices = total_angle_.size();
  std::vector<std::vector<std::uint32_t>> corners(vertices);
  for (std::uint32_t h = 0; h < origin_.size(); ++h) corners[origin_[h]].push_back(h);

  direction_.assign(origin_.size(), 0.0);
  closed_.assign(vertices, 0);
  first_leaving_.assign(1, 0);
  leaving_.reserve(origin_.size());
  std::vector<char> met(origin_.size(), 0);
  for (std::size_t v = 0; v < vertices; ++v) {
    int fans = 0;
    bool ring = false;
    const auto walk = [&](std::uint32_t start) {
      ++fans;
      std::uint32_t h = start;
      while (h != kNone && met[h] == 0) {
        met[h] = 1;
        direction_[h] = total_angle_[v];
        total_angle_[v] += corner_[h];
        leaving_.push_back(h);
        h = twin_[previous(h)];
      }
      ring = h == start;
    };
    // Fans begin at their open edge; what is left are rings.
    for (const std::uint32_t h : corners[v])
      if (twin_[h] == kNone) walk(h);
    for (const std::uint32_t h : corners[v])
      if (met[h] == 0) walk(h);
    closed_[v] = fans == 1 && ring ? 1 : 0;
    first_leaving_.push_back(static_cast<std::uint32_t>(leaving_.size()));
  }
}

}  // namespace endplate::geometry
