#include "geometry/nearest_surface.hpp"

#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Simple_cartesian.h>

#include <Eigen/Geometry>
#include <Eigen/LU>
#include <algorithm>
#include <utility>
#include <vector>

namespace endplate::geometry {

namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Triangles = std::vector<Kernel::Triangle_3>;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, Triangles::const_iterator>;
using AabbTree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

// Closer than this share of a triangle's height to an edge is on it.
constexpr double kOnEdge = 1e-9;

std::array<double, 3> weights_of(const std::array<Eigen::Vector3d, 3>& corners,
                                 const Eigen::Vector3d& p) {
  const Eigen::Vector3d u = corners[1] - corners[0];
  const Eigen::Vector3d v = corners[2] - corners[0];
  Eigen::Matrix2d gram;
  gram << u.dot(u), u.dot(v), u.dot(v), v.dot(v);
  const Eigen::Vector2d shares =
      gram.inverse() * Eigen::Vector2d(u.dot(p - corners[0]), v.dot(p - corners[0]));
  std::array<double, 3> weights{1.0 - shares[0] - shares[1], shares[0], shares[1]};
  double sum = 0.0;
  for (double& weight : weights) sum += weight = std::max(weight, 0.0);
  for (double& weight : weights) weight /= sum;
  return weights;
}

}  // namespace

struct NearestSurface::Tree {
  TriangleMesh mesh;
  Triangles triangles;
  std::vector<bool> rim_vertices;
  std::vector<std::array<bool, 3>> rims;  // the edge opposite to each corner of a triangle
  AabbTree tree;
};

NearestSurface::NearestSurface(const TriangleMesh& mesh) {
  auto tree = std::make_unique<Tree>();
  tree->mesh = mesh;
  std::vector<std::pair<std::uint32_t, std::uint32_t>> edges;
  const auto edge = [](std::uint32_t a, std::uint32_t b) {
    return std::pair(std::min(a, b), std::max(a, b));
  };
  for (const auto& t : mesh.triangles) {
    const auto corner = [&](std::size_t k) {
      const auto& p = mesh.vertices_mm[t[k]];
      return Kernel::Point_3(p.x(), p.y(), p.z());
    };
    tree->triangles.emplace_back(corner(0), corner(1), corner(2));
    for (std::size_t k = 0; k < 3; ++k) edges.push_back(edge(t[k], t[(k + 1) % 3]));
  }
  std::ranges::sort(edges);
  tree->rim_vertices.resize(mesh.vertices_mm.size());
  for (const auto& t : mesh.triangles) {
    std::array<bool, 3> rim{};
    for (std::size_t k = 0; k < 3; ++k) {
      const auto same = std::ranges::equal_range(edges, edge(t[(k + 1) % 3], t[(k + 2) % 3]));
      rim[k] = std::ranges::size(same) == 1;
      if (!rim[k]) continue;
      for (const std::uint32_t v : {t[(k + 1) % 3], t[(k + 2) % 3]}) tree->rim_vertices[v] = true;
    }
    tree->rims.push_back(rim);
  }
  tree->tree.insert(tree->triangles.begin(), tree->triangles.end());
  tree->tree.build();
  tree->tree.accelerate_distance_queries();
  tree_ = std::move(tree);
}

NearestSurface::~NearestSurface() = default;
NearestSurface::NearestSurface(NearestSurface&&) noexcept = default;
NearestSurface& NearestSurface::operator=(NearestSurface&&) noexcept = default;

NearestPlace NearestSurface::nearest(const Eigen::Vector3d& point_mm) const {
  const auto [at, triangle] = tree_->tree.closest_point_and_primitive(
      Kernel::Point_3(point_mm.x(), point_mm.y(), point_mm.z()));
  NearestPlace place;
  place.position_mm = {at.x(), at.y(), at.z()};
  const auto index = static_cast<std::size_t>(triangle - tree_->triangles.begin());
  place.on_mesh.triangle = static_cast<std::uint32_t>(index);
  std::array<Eigen::Vector3d, 3> corners;
  for (std::size_t k = 0; k < 3; ++k) {
    corners[k] = tree_->mesh.vertices_mm[tree_->mesh.triangles[index][k]];
  }
  place.on_mesh.weights = weights_of(corners, place.position_mm);
  place.normal = (corners[1] - corners[0]).cross(corners[2] - corners[0]).normalized();
  place.distance_mm = (point_mm - place.position_mm).norm();
  for (std::size_t k = 0; k < 3; ++k) {
    if (tree_->rims[index][k] && place.on_mesh.weights[k] < kOnEdge) place.on_rim = true;
    // A triangle may touch the rim with one corner only.
    if (place.on_mesh.weights[k] > 1.0 - kOnEdge &&
        tree_->rim_vertices[tree_->mesh.triangles[index][k]]) {
      place.on_rim = true;
    }
  }
  return place;
}

}  // namespace endplate::geometry
