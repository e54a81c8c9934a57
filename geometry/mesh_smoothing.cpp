#include "geometry/mesh_smoothing.hpp"

#include <Eigen/Core>
#include <utility>

namespace endplate::geometry {
namespace {

using Neighbours = std::vector<std::vector<std::uint32_t>>;

Neighbours neighbours_of(const TriangleMesh& mesh) {
  Neighbours beside(mesh.vertices_mm.size());
  for (const auto& t : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k) {
      beside[t[k]].push_back(t[(k + 1) % 3]);
      beside[t[(k + 1) % 3]].push_back(t[k]);
    }
  }
  return beside;
}

// Edges from the nearest centre; rings + 1 for all that lies farther.
std::vector<int> steps_from(const std::vector<std::uint32_t>& centres, int rings,
                            const Neighbours& beside) {
  std::vector<int> steps(beside.size(), rings + 1);
  std::vector<std::uint32_t> front = centres;
  for (const std::uint32_t v : front) steps[v] = 0;
  for (int step = 1; step <= rings; ++step) {
    std::vector<std::uint32_t> next;
    for (const std::uint32_t v : front) {
      for (const std::uint32_t w : beside[v]) {
        if (steps[w] <= step) continue;
        steps[w] = step;
        next.push_back(w);
      }
    }
    front = std::move(next);
  }
  return steps;
}

}  // namespace

void smooth_near(TriangleMesh& mesh, const std::vector<std::uint32_t>& centres, int rings,
                 int rounds) {
  const Neighbours beside = neighbours_of(mesh);
  const std::vector<int> steps = steps_from(centres, rings, beside);
  std::vector<Eigen::Vector3d>& points = mesh.vertices_mm;
  std::vector<Eigen::Vector3d> moved = points;
  for (int round = 0; round < rounds; ++round) {
    for (std::size_t v = 0; v < points.size(); ++v) {
      if (steps[v] > rings || beside[v].empty()) continue;
      Eigen::Vector3d mean = Eigen::Vector3d::Zero();
      for (const std::uint32_t w : beside[v]) mean += points[w];
      mean /= static_cast<double>(beside[v].size());
      const double much = 0.5 * (1.0 - static_cast<double>(steps[v]) / (rings + 1));
      moved[v] = points[v] + much * (mean - points[v]);
    }
    points = moved;
  }
}

}  // namespace endplate::geometry
