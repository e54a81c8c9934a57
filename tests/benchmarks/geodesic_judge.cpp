#include "tests/benchmarks/geodesic_judge.hpp"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Heat_method_3/Surface_mesh_geodesic_distances_3.h>
#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>

#include <optional>

namespace endplate::benchmarks {
namespace {

template <class Kernel>
CGAL::Surface_mesh<typename Kernel::Point_3> to_cgal(const geometry::TriangleMesh& mesh) {
  CGAL::Surface_mesh<typename Kernel::Point_3> made;
  for (const Eigen::Vector3d& p : mesh.vertices_mm) made.add_vertex({p.x(), p.y(), p.z()});
  using Index = CGAL::SM_Vertex_index;
  for (const auto& corners : mesh.triangles)
    made.add_face(Index(corners[0]), Index(corners[1]), Index(corners[2]));
  return made;
}

using Fast = CGAL::Simple_cartesian<double>;
using FastMesh = CGAL::Surface_mesh<Fast::Point_3>;
using Direct =
    CGAL::Heat_method_3::Surface_mesh_geodesic_distances_3<FastMesh, CGAL::Heat_method_3::Direct>;
using Delaunay =
    CGAL::Heat_method_3::Surface_mesh_geodesic_distances_3<FastMesh,
                                                           CGAL::Heat_method_3::Intrinsic_Delaunay>;

// Writes straight into an array, as a caller who wants speed would have it.
struct ArrayMap {
  using key_type = CGAL::SM_Vertex_index;
  using value_type = double;
  using reference = double&;
  using category = boost::lvalue_property_map_tag;
  double* values;
  friend double get(const ArrayMap& map, key_type v) { return map.values[v.idx()]; }
  friend void put(const ArrayMap& map, key_type v, double value) { map.values[v.idx()] = value; }
};

}  // namespace

std::vector<double> exact_distances_mm(const geometry::TriangleMesh& mesh, std::uint32_t source) {
  using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
  using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
  const Mesh made = to_cgal<Kernel>(mesh);
  CGAL::Surface_mesh_shortest_path<CGAL::Surface_mesh_shortest_path_traits<Kernel, Mesh>> paths(
      made);
  paths.add_source_point(CGAL::SM_Vertex_index(source));
  std::vector<double> distances;
  distances.reserve(mesh.vertices_mm.size());
  for (const auto v : made.vertices())
    distances.push_back(paths.shortest_distance_to_source_points(v).first);
  return distances;
}

struct HeatMethod::Inside {
  FastMesh mesh;
  std::optional<Direct> direct;
  std::optional<Delaunay> delaunay;
  std::vector<double> distances;
};

HeatMethod::HeatMethod(const geometry::TriangleMesh& mesh, Mode mode)
    : inside_(std::make_unique<Inside>()) {
  inside_->mesh = to_cgal<Fast>(mesh);
  inside_->distances.resize(mesh.vertices_mm.size());
  if (mode == Mode::direct)
    inside_->direct.emplace(inside_->mesh);
  else
    inside_->delaunay.emplace(inside_->mesh);
}

HeatMethod::~HeatMethod() = default;

const std::vector<double>& HeatMethod::distances_mm(std::uint32_t source) {
  const auto ask = [&](auto& method) {
    method.clear_sources();
    method.add_source(CGAL::SM_Vertex_index(source));
    method.estimate_geodesic_distances(ArrayMap{inside_->distances.data()});
  };
  if (inside_->direct)
    ask(*inside_->direct);
  else
    ask(*inside_->delaunay);
  return inside_->distances;
}

}  // namespace endplate::benchmarks
