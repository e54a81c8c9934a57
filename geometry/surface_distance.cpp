#include "geometry/surface_distance.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>
#include <stdexcept>
#include <utility>

#include "geometry/prepared_surface.hpp"
#include "geometry/straight_labels.hpp"

namespace endplate::geometry {
namespace {

// In mean lengths of the edges about a vertex; docs/surface-distance.md shows what less costs.
constexpr double kSightForPaths = 4.0;
constexpr double kSightForFields = 6.0;
constexpr double kInfinite = std::numeric_limits<double>::infinity();

std::optional<SurfaceFault> fault_of(const TriangleMesh& mesh) {
  if (mesh.triangles.empty()) return SurfaceFault::no_triangles;
  if (mesh.triangles.size() > (1U << 24U)) return SurfaceFault::too_large;
  for (const auto& corners : mesh.triangles)
    for (const std::uint32_t corner : corners)
      if (corner >= mesh.vertices_mm.size()) return SurfaceFault::no_such_vertex;
  for (const Eigen::Vector3d& vertex : mesh.vertices_mm)
    if (!vertex.allFinite()) return SurfaceFault::not_finite;
  return std::nullopt;
}

// Breadth first over the edges from one end of the surface: what a spreading front touches at the
// same time lies together in memory.
std::vector<std::uint32_t> number_anew(const TriangleMesh& mesh) {
  const std::size_t count = mesh.vertices_mm.size();
  std::vector<std::vector<std::uint32_t>> neighbours(count);
  for (const auto& corners : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k) {
      neighbours[corners[k]].push_back(corners[(k + 1) % 3]);
      neighbours[corners[k]].push_back(corners[(k + 2) % 3]);
    }
  }
  std::vector<std::uint32_t> number(count, FlatFaces::kNone);
  std::uint32_t next = 0;
  const auto spread = [&](std::uint32_t start) {
    std::uint32_t last = start;
    std::queue<std::uint32_t> front({start});
    number[start] = next++;
    while (!front.empty()) {
      last = front.front();
      front.pop();
      for (const std::uint32_t v : neighbours[last]) {
        if (number[v] != FlatFaces::kNone) continue;
        number[v] = next++;
        front.push(v);
      }
    }
    return last;
  };
  // The first round only finds an end.
  const std::uint32_t end = spread(mesh.triangles.front()[0]);
  std::ranges::fill(number, FlatFaces::kNone);
  next = 0;
  spread(end);
  for (std::uint32_t v = 0; v < count; ++v)
    if (number[v] == FlatFaces::kNone) spread(v);
  return number;
}

TriangleMesh renumbered(const TriangleMesh& mesh, const std::vector<std::uint32_t>& number) {
  TriangleMesh anew{std::vector<Eigen::Vector3d>(mesh.vertices_mm.size()), mesh.triangles};
  for (std::size_t v = 0; v < number.size(); ++v) anew.vertices_mm[number[v]] = mesh.vertices_mm[v];
  for (auto& corners : anew.triangles)
    for (std::uint32_t& corner : corners) corner = number[corner];
  return anew;
}

double length_mm(const StraightLabel& label) {
  return static_cast<double>(label.before_mm) + static_cast<double>(label.straight_mm);
}

}  // namespace

struct DistanceField::Ways {
  Lookout source;
  Walk walk;
  std::vector<StraightLabel> straight;
};

std::expected<SurfaceDistance, SurfaceFault> SurfaceDistance::prepare(const TriangleMesh& mesh,
                                                                      Sight sight) {
  if (const auto fault = fault_of(mesh)) return std::unexpected(*fault);
  std::vector<std::uint32_t> number = number_anew(mesh);
  TriangleMesh anew = renumbered(mesh, number);
  FlatFaces faces(anew);
  SightGraph graph =
      make_sight_graph(faces, sight == Sight::for_paths ? kSightForPaths : kSightForFields);
  if (graph.arcs.size() >= kSeed) return std::unexpected(SurfaceFault::too_large);
  return SurfaceDistance(std::make_shared<const PreparedSurface>(
      PreparedSurface{std::move(anew), std::move(faces), std::move(graph), std::move(number)}));
}

SurfaceDistance::SurfaceDistance(std::shared_ptr<const PreparedSurface> surface)
    : surface_(std::move(surface)) {}

DistanceField SurfaceDistance::from_vertex(std::uint32_t vertex) const {
  return from(point_at(vertex));
}

DistanceField SurfaceDistance::from(const SurfacePoint& source) const {
  Lookout lookout = look_out(*surface_, source);
  const std::vector<Seed> seeds = seeds_of(*surface_, lookout);
  Walk walk = walk_from(surface_->graph, seeds);
  std::vector<StraightLabel> straight = straight_labels(surface_->graph, seeds, walk);
  DistanceField field;
  field.surface_ = surface_;
  field.at_vertices_mm_.reserve(surface_->number_of.size());
  for (const std::uint32_t v : surface_->number_of)
    field.at_vertices_mm_.push_back(length_mm(straight[v]));
  field.ways_ = std::make_shared<const DistanceField::Ways>(std::move(lookout), std::move(walk),
                                                            std::move(straight));
  return field;
}

double DistanceField::at_mm(const SurfacePoint& point) const {
  const Lookout lookout = look_out(*surface_, point);
  if (lookout.vertex) {
    return length_mm(ways_->straight[*lookout.vertex]);
  }
  const SeenVertex* nearest = nullptr;
  double nearest_mm = kInfinite;
  for (const SeenVertex& s : lookout.seen) {
    const double along_mm =
        static_cast<double>(ways_->walk.labels[s.vertex].along_graph_mm) + s.distance_mm;
    if (along_mm < nearest_mm) {
      nearest_mm = along_mm;
      nearest = &s;
    }
  }
  if (nearest == nullptr) return kInfinite;
  const double pulled_mm = length_mm(pulled_straight(
      ways_->straight[nearest->vertex], surface_->graph.vertices[nearest->vertex],
      static_cast<float>(nearest->arriving_rad), static_cast<float>(nearest->distance_mm), 0.0F));
  // In sight of the source there is nothing to estimate.
  const auto straight = straight_mm(*surface_, ways_->source, lookout);
  return straight && *straight <= nearest_mm ? *straight : pulled_mm;
}

std::optional<SurfacePath> SurfaceDistance::path(const SurfacePoint& from,
                                                 const SurfacePoint& to) const {
  return shortest_path(*surface_, look_out(*surface_, from), look_out(*surface_, to));
}

double SurfaceDistance::between_mm(const SurfacePoint& a, const SurfacePoint& b) const {
  const auto way = path(a, b);
  if (!way) return kInfinite;
  return way->length_mm;
}

SurfacePoint SurfaceDistance::point_at(std::uint32_t vertex) const {
  if (vertex >= surface_->number_of.size())
    throw std::invalid_argument("the surface has no such vertex");
  const Lookout lookout = look_out(*surface_, surface_->number_of[vertex]);
  if (surface_->faces.leaving(*lookout.vertex).empty())
    throw std::invalid_argument("the vertex belongs to no triangle");
  return lookout.point;
}

}  // namespace endplate::geometry
