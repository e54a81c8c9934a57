#include "geometry/mesh_intersections.hpp"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/box_intersection_d.h>
#include <CGAL/intersections.h>

#include <algorithm>
#include <array>
#include <cstdint>

#include "geometry/mesh_vertices.hpp"

namespace endplate::geometry {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Point = Kernel::Point_3;
using Corners = std::array<std::uint32_t, 3>;
using Box = CGAL::Box_intersection_d::Box_with_handle_d<double, 3, const Corners*>;

constexpr std::size_t kMostPairs = 10'000;
constexpr std::size_t kMostCandidatesPerTriangle = 200;
constexpr std::size_t kLeastCandidates = 1'000'000;

struct GivenUp {};

std::vector<Point> points_of(const TriangleMesh& mesh) {
  std::vector<Point> points;
  points.reserve(mesh.vertices_mm.size());
  for (const auto& p : mesh.vertices_mm) points.emplace_back(p.x(), p.y(), p.z());
  return points;
}

Kernel::Triangle_3 triangle(const std::vector<Point>& points, const Corners& t) {
  return {points[t[0]], points[t[1]], points[t[2]]};
}

// Both turned so that the corners they share stand first and in the same order; how many those are.
std::size_t shared_first(Corners& a, Corners& b) {
  std::size_t shared = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = shared; j < 3; ++j) {
      if (a[i] != b[j]) continue;
      std::swap(a[shared], a[i]);
      std::swap(b[shared], b[j]);
      ++shared;
      break;
    }
  }
  return shared;
}

bool cross(const std::vector<Point>& points, Corners a, Corners b) {
  const std::size_t shared = shared_first(a, b);
  const auto p = [&](std::uint32_t i) -> const Point& { return points[i]; };
  if (shared == 0) return CGAL::do_intersect(triangle(points, a), triangle(points, b));
  if (shared == 1) {
    const Kernel::Segment_3 opposite_a(p(a[1]), p(a[2]));
    const Kernel::Segment_3 opposite_b(p(b[1]), p(b[2]));
    return CGAL::do_intersect(opposite_a, triangle(points, b)) ||
           CGAL::do_intersect(opposite_b, triangle(points, a));
  }
  // Folded flat onto each other over the shared edge.
  return shared == 2 && CGAL::coplanar(p(a[0]), p(a[1]), p(a[2]), p(b[2])) &&
         CGAL::coplanar_orientation(p(a[0]), p(a[1]), p(a[2]), p(b[2])) == CGAL::POSITIVE;
}

}  // namespace

std::vector<bool> triangles_without_area(const TriangleMesh& mesh) {
  const std::vector<Point> points = points_of(mesh);
  std::vector<bool> without;
  without.reserve(mesh.triangles.size());
  for (const auto& [a, b, c] : mesh.triangles) {
    without.push_back(CGAL::collinear(points[a], points[b], points[c]));
  }
  return without;
}

namespace {

// Calls `use` with every pair of triangles that cross until it returns false; whether all were
// seen.
template <class Use>
bool each_crossing(const TriangleMesh& mesh, const Use& use) {
  const std::vector<Point> points = points_of(mesh);
  const std::vector<std::uint32_t> place = first_vertex_at_each_place(mesh);
  const std::vector<bool> without_area = triangles_without_area(mesh);
  std::vector<Corners> triangles;
  std::vector<std::uint32_t> numbers;
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    if (without_area[t]) continue;
    const auto& [a, b, c] = mesh.triangles[t];
    triangles.push_back({place[a], place[b], place[c]});
    numbers.push_back(static_cast<std::uint32_t>(t));
  }
  std::vector<Box> boxes;
  boxes.reserve(triangles.size());
  for (const Corners& t : triangles) boxes.emplace_back(triangle(points, t).bbox(), &t);
  const auto number = [&](const Box& box) {
    return numbers[static_cast<std::size_t>(box.handle() - triangles.data())];
  };

  std::size_t candidates = 0;
  const std::size_t most = kLeastCandidates + kMostCandidatesPerTriangle * triangles.size();
  try {
    CGAL::box_self_intersection_d(boxes.begin(), boxes.end(), [&](const Box& a, const Box& b) {
      if (++candidates > most) throw GivenUp{};
      if (!cross(points, *a.handle(), *b.handle())) return;
      if (!use(number(a), number(b))) throw GivenUp{};
    });
  } catch (const GivenUp&) {
    return false;
  }
  return true;
}

}  // namespace

SelfIntersections count_self_intersections(const TriangleMesh& mesh) {
  SelfIntersections found;
  found.complete =
      each_crossing(mesh, [&](std::uint32_t, std::uint32_t) { return ++found.pairs < kMostPairs; });
  return found;
}

std::vector<std::array<std::uint32_t, 2>> crossing_pairs(const TriangleMesh& mesh,
                                                         std::size_t most) {
  std::vector<std::array<std::uint32_t, 2>> pairs;
  each_crossing(mesh, [&](std::uint32_t a, std::uint32_t b) {
    pairs.push_back({std::min(a, b), std::max(a, b)});
    return pairs.size() < most;
  });
  std::ranges::sort(pairs);
  return pairs;
}

}  // namespace endplate::geometry
