#include "geometry/surface_probe.hpp"

#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "geometry/surface_mesh_bridge.hpp"

namespace endplate::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Primitive = CGAL::AABB_face_graph_triangle_primitive<Mesh>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

// Barycentric weights of a place of a triangle, by areas.
std::array<double, 3> weights_of(const Eigen::Vector3d& a, const Eigen::Vector3d& b,
                                 const Eigen::Vector3d& c, const Eigen::Vector3d& p) {
  const Eigen::Vector3d normal = (b - a).cross(c - a);
  const double whole = normal.squaredNorm();
  if (whole == 0.0) return {1.0, 0.0, 0.0};
  std::array<double, 3> weights{(c - b).cross(p - b).dot(normal) / whole,
                                (a - c).cross(p - c).dot(normal) / whole, 0.0};
  weights[2] = 1.0 - weights[0] - weights[1];
  double sum = 0.0;
  for (double& w : weights) sum += w = std::max(0.0, w);
  for (double& w : weights) w /= sum;
  return weights;
}

}  // namespace

struct SurfaceProbe::Inside {
  TriangleMesh own;
  Mesh mesh;
  Tree tree;
  std::unique_ptr<CGAL::Side_of_triangle_mesh<Mesh, Kernel, CGAL::Default, Tree>> side;
};

SurfaceProbe::SurfaceProbe(const TriangleMesh& mesh) : inside_(std::make_unique<Inside>()) {
  inside_->own = mesh;
  inside_->mesh = to_surface<Mesh>(mesh);  // faces are numbered as the triangles
  Mesh& made = inside_->mesh;
  inside_->tree.rebuild(faces(made).first, faces(made).second, made);
  inside_->side = std::make_unique<CGAL::Side_of_triangle_mesh<Mesh, Kernel, CGAL::Default, Tree>>(
      inside_->tree);
}

SurfaceProbe::~SurfaceProbe() = default;
SurfaceProbe::SurfaceProbe(SurfaceProbe&&) noexcept = default;
SurfaceProbe& SurfaceProbe::operator=(SurfaceProbe&&) noexcept = default;

ProbedPlace SurfaceProbe::at(const Eigen::Vector3d& place_mm) const {
  const Kernel::Point_3 place(place_mm.x(), place_mm.y(), place_mm.z());
  const auto [closest, face] = inside_->tree.closest_point_and_primitive(place);
  const Eigen::Vector3d nearest(closest.x(), closest.y(), closest.z());
  ProbedPlace found;
  found.nearest.triangle = static_cast<std::uint32_t>(face.idx());
  const auto& t = inside_->own.triangles[found.nearest.triangle];
  const auto& v = inside_->own.vertices_mm;
  found.nearest.weights = weights_of(v[t[0]], v[t[1]], v[t[2]], nearest);
  found.distance_mm = (nearest - place_mm).norm();
  found.inside = (*inside_->side)(place) != CGAL::ON_UNBOUNDED_SIDE;
  return found;
}

}  // namespace endplate::geometry
