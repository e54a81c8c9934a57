#include "geometry/mesh_topology.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
#include <tuple>

namespace endplate::geometry {

namespace {

// Disjoint sets of 0 .. n - 1.
class Joiner {
 public:
  explicit Joiner(std::size_t n) : parent_(n) { std::iota(parent_.begin(), parent_.end(), 0U); }
  std::size_t root(std::size_t i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  void join(std::size_t a, std::size_t b) { parent_[root(a)] = root(b); }

 private:
  std::vector<std::size_t> parent_;
};

// A walk that comes by a vertex twice is several loops that touch there.
void cut_where_it_touches_itself(const BoundaryLoop& walk, std::vector<BoundaryLoop>& loops) {
  BoundaryLoop open;
  std::map<std::uint32_t, std::size_t> place_in_open;
  for (std::size_t i = 0; i < walk.vertices.size(); ++i) {
    const auto [seen, is_new] = place_in_open.try_emplace(walk.vertices[i], open.vertices.size());
    if (!is_new) {
      const auto begin = static_cast<std::ptrdiff_t>(seen->second);
      BoundaryLoop loop;
      loop.vertices.assign(open.vertices.begin() + begin, open.vertices.end());
      loop.edges.assign(open.edges.begin() + begin, open.edges.end());
      for (const std::uint32_t v : loop.vertices) place_in_open.erase(v);
      open.vertices.resize(static_cast<std::size_t>(begin));
      open.edges.resize(static_cast<std::size_t>(begin));
      place_in_open[walk.vertices[i]] = open.vertices.size();
      loops.push_back(std::move(loop));
    }
    open.vertices.push_back(walk.vertices[i]);
    open.edges.push_back(walk.edges[i]);
  }
  if (!open.vertices.empty()) loops.push_back(std::move(open));
}

}  // namespace

MeshTopology::MeshTopology(const TriangleMesh& mesh)
    : triangles_(mesh.triangles),
      vertex_count_(mesh.vertices_mm.size()),
      edge_of_(mesh.triangles.size()) {
  uses_.reserve(3 * triangles_.size());
  for (std::uint32_t t = 0; t < triangles_.size(); ++t) {
    for (std::uint8_t side = 0; side < 3; ++side) {
      const std::uint32_t a = triangles_[t][side];
      const std::uint32_t b = triangles_[t][(side + 1U) % 3];
      uses_.push_back({std::min(a, b), std::max(a, b), t, side, a < b});
    }
  }
  const auto key = [](const EdgeUse& u) { return std::tuple(u.low, u.high, u.triangle, u.side); };
  std::ranges::sort(uses_, {}, key);
  for (std::size_t i = 0; i < uses_.size(); ++i) {
    const bool begins =
        i == 0 || uses_[i].low != uses_[i - 1].low || uses_[i].high != uses_[i - 1].high;
    if (begins) begins_.push_back(i);
    edge_of_[uses_[i].triangle][uses_[i].side] = begins_.size() - 1;
  }
  begins_.push_back(uses_.size());
}

std::size_t MeshTopology::boundary_edges() const {
  std::size_t count = 0;
  for (std::size_t e = 0; e < edge_count(); ++e) count += uses(e).size() == 1 ? 1 : 0;
  return count;
}

std::size_t MeshTopology::non_manifold_edges() const {
  std::size_t count = 0;
  for (std::size_t e = 0; e < edge_count(); ++e) count += uses(e).size() > 2 ? 1 : 0;
  return count;
}

std::size_t MeshTopology::inconsistent_edges() const {
  std::size_t count = 0;
  for (std::size_t e = 0; e < edge_count(); ++e) {
    const auto at = uses(e);
    count += at.size() == 2 && at[0].upward == at[1].upward ? 1 : 0;
  }
  return count;
}

std::size_t MeshTopology::non_manifold_vertices() const {
  // Corners of one vertex are joined when their triangles share an edge there.
  Joiner corners(3 * triangles_.size());
  const auto corner_at = [&](const EdgeUse& use, std::uint32_t vertex) {
    const std::size_t own =
        triangles_[use.triangle][use.side] == vertex ? use.side : (use.side + 1U) % 3;
    return 3 * std::size_t{use.triangle} + own;
  };
  for (std::size_t e = 0; e < edge_count(); ++e) {
    const auto at = uses(e);
    for (std::size_t i = 1; i < at.size(); ++i) {
      corners.join(corner_at(at[0], at[0].low), corner_at(at[i], at[0].low));
      corners.join(corner_at(at[0], at[0].high), corner_at(at[i], at[0].high));
    }
  }
  std::vector<std::size_t> fans(vertex_count_);
  for (std::size_t c = 0; c < 3 * triangles_.size(); ++c) {
    if (corners.root(c) == c) ++fans[triangles_[c / 3][c % 3]];
  }
  return static_cast<std::size_t>(std::ranges::count_if(fans, [](auto n) { return n > 1; }));
}

std::vector<std::uint32_t> MeshTopology::components() const {
  Joiner joiner(triangles_.size());
  for (std::size_t e = 0; e < edge_count(); ++e) {
    const auto at = uses(e);
    for (std::size_t i = 1; i < at.size(); ++i) joiner.join(at[0].triangle, at[i].triangle);
  }
  std::vector<std::uint32_t> number(triangles_.size());
  std::map<std::size_t, std::uint32_t> numbers;
  for (std::size_t t = 0; t < triangles_.size(); ++t) {
    const auto next = static_cast<std::uint32_t>(numbers.size());
    number[t] = numbers.try_emplace(joiner.root(t), next).first->second;
  }
  return number;
}

std::vector<BoundaryLoop> MeshTopology::boundary_loops() const {
  std::vector<bool> walked(edge_count());
  std::multimap<std::uint32_t, std::size_t> boundary_at;  // only to go on where a fan is cut off
  for (std::size_t e = 0; e < edge_count(); ++e) {
    if (uses(e).size() != 1) continue;
    boundary_at.emplace(uses(e)[0].low, e);
    boundary_at.emplace(uses(e)[0].high, e);
  }
  // From a boundary edge around its vertex `pivot`, triangle by triangle, to the next boundary
  // edge.
  const auto next_edge = [&](std::size_t edge, std::uint32_t pivot) -> std::optional<std::size_t> {
    EdgeUse use = uses(edge)[0];
    for (std::size_t turns = 0; turns < triangles_.size(); ++turns) {
      const auto& triangle = triangles_[use.triangle];
      // The other side of the triangle that holds the pivot.
      const std::size_t side =
          triangle[use.side] == pivot ? (use.side + 2U) % 3 : (use.side + 1U) % 3;
      const std::size_t other = edge_of_[use.triangle][side];
      const auto at = uses(other);
      if (at.size() == 1) return other;
      if (at.size() > 2) break;
      use = at[0].triangle == use.triangle ? at[1] : at[0];
    }
    const auto [first, last] = boundary_at.equal_range(pivot);
    const auto free = std::find_if(first, last, [&](const auto& entry) {
      return !walked[entry.second] && entry.second != edge;
    });
    if (free == last) return {};
    return free->second;
  };
  std::vector<BoundaryLoop> loops;
  for (std::size_t start = 0; start < edge_count(); ++start) {
    if (uses(start).size() != 1 || walked[start]) continue;
    BoundaryLoop walk;
    // Against the direction of the triangle, as a triangle that closed the hole would go.
    const EdgeUse first = uses(start)[0];
    std::uint32_t from = first.upward ? first.high : first.low;
    std::optional<std::size_t> edge = start;
    while (edge && !walked[*edge]) {
      walked[*edge] = true;
      const EdgeUse use = uses(*edge)[0];
      const std::uint32_t to = use.low == from ? use.high : use.low;
      walk.vertices.push_back(from);
      walk.edges.push_back(use);
      edge = next_edge(*edge, to);
      from = to;
    }
    cut_where_it_touches_itself(walk, loops);
  }
  return loops;
}

}  // namespace endplate::geometry
