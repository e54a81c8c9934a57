#include "tests/benchmarks/arm_mesh.hpp"

#include <CGAL/Complex_2_in_triangulation_3.h>
#include <CGAL/IO/facets_in_complex_2_to_triangle_mesh.h>
#include <CGAL/Implicit_surface_3.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_default_triangulation_3.h>
#include <CGAL/make_surface_mesh.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace endplate::benchmarks {
namespace {

using Eigen::Vector3d;
using Triangulation = CGAL::Surface_mesh_default_triangulation_3;
using Complex = CGAL::Complex_2_in_triangulation_3<Triangulation>;
using Kernel = Triangulation::Geom_traits;
using Point = Kernel::Point_3;

// A tapered capsule, flattened along z. Sizes are assumed: roughly an adult's, and only the
// number of triangles and the shape of the ways round matter here.
struct Limb {
  Vector3d from, to;
  double from_mm, to_mm;
  double flatness;
};

const std::array<Limb, 8> kLimbs{{
    {{0, 300, 0}, {0, 0, 0}, 48, 38, 1.0},
    {{0, 0, 0}, {120, -200, 40}, 38, 26, 1.0},
    {{125, -208, 42}, {168, -290, 56}, 30, 38, 1.7},
    {{140, -220, 44}, {222, -262, 66}, 13, 9, 1.0},
    {{191, -306, 66}, {240, -370, 84}, 9.5, 7, 1.0},
    {{176, -312, 62}, {212, -390, 74}, 9.5, 7, 1.0},
    {{160, -314, 56}, {184, -388, 62}, 9.5, 7, 1.0},
    {{144, -311, 48}, {154, -368, 48}, 8.5, 6, 1.0},
}};

double signed_distance_mm(const Limb& limb, const Vector3d& p) {
  const Vector3d axis = limb.to - limb.from;
  const double share = std::clamp((p - limb.from).dot(axis) / axis.squaredNorm(), 0.0, 1.0);
  Vector3d off = p - limb.from - share * axis;
  off.z() *= limb.flatness;
  return off.norm() - (limb.from_mm + share * (limb.to_mm - limb.from_mm));
}

// The union, its creases rounded over about this length.
double skin(const Vector3d& p) {
  constexpr double kRounding_mm = 3.0;
  double sum = 0.0;
  for (const Limb& limb : kLimbs) sum += std::exp(-signed_distance_mm(limb, p) / kRounding_mm);
  return -kRounding_mm * std::log(std::max(sum, 1e-300));
}

}  // namespace

geometry::TriangleMesh arm_mesh(double edge_mm) {
  Triangulation triangulation;
  Complex complex(triangulation);
  const auto value = [](const Point& p) { return skin({p.x(), p.y(), p.z()}); };
  using Surface = CGAL::Implicit_surface_3<Kernel, std::function<double(Point)>>;
  const Surface surface(value, Kernel::Sphere_3(Point(0, 0, 0), 600.0 * 600.0), 1e-6);
  const CGAL::Surface_mesh_default_criteria_3<Triangulation> criteria(30.0, edge_mm,
                                                                      0.02 * edge_mm);
  CGAL::make_surface_mesh(complex, surface, criteria, CGAL::Manifold_tag());
  CGAL::Surface_mesh<Point> made;
  CGAL::facets_in_complex_2_to_triangle_mesh(complex, made);

  geometry::TriangleMesh mesh;
  for (const auto v : made.vertices()) {
    const Point& p = made.point(v);
    mesh.vertices_mm.emplace_back(p.x(), p.y(), p.z());
  }
  for (const auto f : made.faces()) {
    std::array<std::uint32_t, 3> corners{};
    std::size_t k = 0;
    for (const auto v : made.vertices_around_face(made.halfedge(f)))
      corners[k++] = static_cast<std::uint32_t>(v);
    mesh.triangles.push_back(corners);
  }
  return mesh;
}

}  // namespace endplate::benchmarks
