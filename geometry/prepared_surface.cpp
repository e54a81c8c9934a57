#include "geometry/prepared_surface.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace endplate::geometry {
namespace {

// A corner's weight from which the point counts as the corner.
constexpr double kCorner = 1.0 - 1e-9;

void check(const PreparedSurface& surface, const SurfacePoint& point) {
  bool good = point.triangle < surface.mesh.triangles.size();
  for (const double weight : point.weights) good = good && weight >= -1e-9;
  const double sum = point.weights[0] + point.weights[1] + point.weights[2];
  if (!good || !(std::abs(sum - 1.0) < 1e-6))
    throw std::invalid_argument("this is no point of the surface");
}

}  // namespace

Lookout look_out(const PreparedSurface& surface, std::uint32_t new_number) {
  Lookout lookout;
  lookout.vertex = new_number;
  lookout.radius_mm = static_cast<double>(surface.graph.vertices[new_number].radius_mm);
  lookout.seen = {{new_number, 0.0, 0.0, 0.0, {0.0, 0.0}, FlatFaces::kNone}};
  const auto leaving = surface.faces.leaving(new_number);
  if (!leaving.empty()) {
    lookout.point.triangle = leaving.front() / 3;
    lookout.point.weights = {0.0, 0.0, 0.0};
    lookout.point.weights[leaving.front() % 3] = 1.0;
  }
  return lookout;
}

Lookout look_out(const PreparedSurface& surface, const SurfacePoint& point) {
  check(surface, point);
  const auto& corners = surface.mesh.triangles[point.triangle];
  for (std::size_t k = 0; k < 3; ++k)
    if (point.weights[k] >= kCorner) return look_out(surface, corners[k]);

  Lookout lookout;
  lookout.point = point;
  for (const std::uint32_t corner : corners)
    lookout.radius_mm =
        std::max(lookout.radius_mm, static_cast<double>(surface.graph.vertices[corner].radius_mm));
  StraightSight sight(surface.faces);
  sight.look_from_point(point, lookout.radius_mm);
  lookout.seen = sight.seen();
  std::ranges::sort(lookout.seen, [](const SeenVertex& a, const SeenVertex& b) {
    return a.vertex != b.vertex ? a.vertex < b.vertex : a.distance_mm < b.distance_mm;
  });
  const auto repeated = std::ranges::unique(lookout.seen, {}, &SeenVertex::vertex);
  lookout.seen.erase(repeated.begin(), repeated.end());
  return lookout;
}

std::vector<Seed> seeds_of(const PreparedSurface& surface, const Lookout& lookout) {
  if (lookout.vertex) {
    const auto all = static_cast<std::uint16_t>(surface.graph.vertices[*lookout.vertex].arc_count);
    return {{*lookout.vertex, 0.0, 0.0F, {0, all}}};
  }
  std::vector<Seed> seeds;
  for (const SeenVertex& s : lookout.seen) {
    const auto arriving = static_cast<float>(s.arriving_rad);
    seeds.push_back(
        {s.vertex, s.distance_mm, arriving, onward_from(surface.graph, s.vertex, arriving)});
  }
  return seeds;
}

std::optional<double> straight_mm(const PreparedSurface& surface, const Lookout& from,
                                  const Lookout& to) {
  if (from.vertex || to.vertex) return std::nullopt;  // seen as vertices are
  StraightSight sight(surface.faces);
  sight.look_from_point(from.point, std::max(from.radius_mm, to.radius_mm), &to.point);
  if (!sight.seen_point()) return std::nullopt;
  return sight.seen_point()->distance_mm;
}

}  // namespace endplate::geometry
