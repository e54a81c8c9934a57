// Distances over a surface against CGAL's exact geodesics (package Surface_mesh_shortest_path,
// after Xin, Wang. ACM Trans Graph 2009;28:104).
#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "geometry/surface_distance.hpp"
#include "tests/support/case_skin.hpp"
#include "tests/support/test_surfaces.hpp"

namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Traits = CGAL::Surface_mesh_shortest_path_traits<Kernel, Mesh>;

std::vector<double> exact_mm(const endplate::geometry::TriangleMesh& mesh, std::uint32_t source) {
  Mesh made;
  using Index = CGAL::SM_Vertex_index;
  for (const Eigen::Vector3d& p : mesh.vertices_mm) made.add_vertex({p.x(), p.y(), p.z()});
  for (const auto& t : mesh.triangles) made.add_face(Index(t[0]), Index(t[1]), Index(t[2]));
  CGAL::Surface_mesh_shortest_path<Traits> paths(made);
  paths.add_source_point(Index(source));
  std::vector<double> distances;
  for (const auto v : made.vertices())
    distances.push_back(paths.shortest_distance_to_source_points(v).first);
  return distances;
}

}  // namespace

TEST_CASE("distances over a bent tube are within half a per cent of CGAL's exact ones",
          "[published][surface_distance]") {
  const auto tube = endplate::test::bent_tube(24, 60);
  const auto surface = endplate::geometry::SurfaceDistance::prepare(tube).value();
  for (const std::uint32_t source : {0U, 500U, 1000U}) {
    const std::vector<double> exact = exact_mm(tube, source);
    const auto field = surface.from_vertex(source);
    double worst = 0.0;
    double worst_path = 0.0;
    for (std::uint32_t v = 0; v < exact.size(); ++v) {
      if (exact[v] < 1.0) continue;
      worst = std::max(worst, std::abs(field.at_vertices_mm()[v] / exact[v] - 1.0));
      if (v % 20 != 0) continue;
      const double path_mm = surface.between_mm(surface.point_at(source), surface.point_at(v));
      CHECK(path_mm >= exact[v] * (1.0 - 1e-6));
      worst_path = std::max(worst_path, path_mm / exact[v] - 1.0);
    }
    CHECK(worst < 0.005);
    CHECK(worst_path < 0.002);
  }
}

TEST_CASE("distances over the skin of an example are within half a per cent of CGAL's exact ones",
          "[published][surface_distance]") {
  // Fingertip, elbow and shoulder are on the way; docs/surface-distance.md has more sources.
  const std::filesystem::path datasets = ENDPLATE_SOURCE_DIR "/datasets";
  const auto skin = endplate::test::case_skin(
      datasets, datasets / "cases/humeral-shaft-radial-palsy.json", 1, 0.0);
  const auto surface = endplate::geometry::SurfaceDistance::prepare(skin).value();
  const std::uint32_t source = 8790;  // on a digit
  const std::vector<double> exact = exact_mm(skin, source);
  const auto for_paths =
      endplate::geometry::SurfaceDistance::prepare(skin, endplate::geometry::Sight::for_paths)
          .value();
  const auto field = surface.from_vertex(source);
  double worst = 0.0;
  double worst_near_mm = 0.0;
  double worst_path = 0.0;
  for (std::uint32_t v = 0; v < exact.size(); ++v) {
    const double error_mm = std::abs(field.at_vertices_mm()[v] - exact[v]);
    if (exact[v] > 20.0)
      worst = std::max(worst, error_mm / exact[v]);
    else
      worst_near_mm = std::max(worst_near_mm, error_mm);
    if (v % 100 != 0 || exact[v] < 1.0) continue;
    for (const auto* on : {&surface, &for_paths}) {
      const double path_mm = on->between_mm(on->point_at(source), on->point_at(v));
      worst_path = std::max(worst_path, path_mm / exact[v] - 1.0);
      if (path_mm / exact[v] - 1.0 > .001)
        WARN(v << " " << exact[v] << " " << path_mm << " " << (on == &surface) << " field "
               << field.at_vertices_mm()[v]);
    }
  }
  CHECK(worst < 0.005);
  CHECK(worst_near_mm < 0.1);
  CHECK(worst_path < 0.005);
}
