#include "geometry/triangle_tree.hpp"

#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Simple_cartesian.h>

#include <algorithm>
#include <iterator>

namespace endplate::geometry {
namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Triangles = std::vector<Kernel::Triangle_3>;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, Triangles::const_iterator>;
using Boxes = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

Kernel::Point_3 to_cgal(const Eigen::Vector3d& p) {
  return {p.x(), p.y(), p.z()};
}
Eigen::Vector3d from_cgal(const Kernel::Point_3& p) {
  return {p.x(), p.y(), p.z()};
}

}  // namespace

struct TriangleTree::Tree {
  Triangles triangles;
  std::vector<std::size_t> number;  // in the caller's mesh
  Boxes boxes;
};

TriangleTree::TriangleTree(const TriangleMesh& mesh) : tree_(std::make_unique<Tree>()) {
  tree_->triangles.reserve(mesh.triangles.size());
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    const auto& [a, b, c] = mesh.triangles[i];
    const Kernel::Triangle_3 triangle(to_cgal(mesh.vertices_mm[a]), to_cgal(mesh.vertices_mm[b]),
                                      to_cgal(mesh.vertices_mm[c]));
    if (triangle.is_degenerate()) continue;
    tree_->triangles.push_back(triangle);
    tree_->number.push_back(i);
  }
  tree_->boxes.rebuild(tree_->triangles.cbegin(), tree_->triangles.cend());
}

TriangleTree::~TriangleTree() = default;
TriangleTree::TriangleTree(TriangleTree&&) noexcept = default;
TriangleTree& TriangleTree::operator=(TriangleTree&&) noexcept = default;

std::vector<RayHit> TriangleTree::along(const Eigen::Vector3d& origin_mm,
                                        const Eigen::Vector3d& direction) const {
  const Kernel::Ray_3 ray(to_cgal(origin_mm), to_cgal(origin_mm + direction));
  std::vector<Boxes::Intersection_and_primitive_id<Kernel::Ray_3>::Type> met;
  tree_->boxes.all_intersections(ray, std::back_inserter(met));
  std::vector<RayHit> hits;
  for (const auto& [where, triangle] : met) {
    // A ray in the plane of a triangle meets it in a segment, and its neighbours in points.
    const auto* point = boost::get<Kernel::Point_3>(&where);
    if (point == nullptr) continue;
    const auto k = static_cast<std::size_t>(triangle - tree_->triangles.cbegin());
    const Eigen::Vector3d at = from_cgal(*point);
    hits.push_back({tree_->number[k], (at - origin_mm).norm(), at});
  }
  std::ranges::sort(hits, [](const RayHit& a, const RayHit& b) {
    return std::pair(a.distance_mm, a.triangle) < std::pair(b.distance_mm, b.triangle);
  });
  return hits;
}

NearestPoint TriangleTree::nearest(const Eigen::Vector3d& point_mm) const {
  const auto [point, triangle] = tree_->boxes.closest_point_and_primitive(to_cgal(point_mm));
  const Eigen::Vector3d at = from_cgal(point);
  return {tree_->number[static_cast<std::size_t>(triangle - tree_->triangles.cbegin())],
          (at - point_mm).norm(), at};
}

}  // namespace endplate::geometry
