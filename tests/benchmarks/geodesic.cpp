// Distances over an arm's skin: how fast and how near the exact ones, beside CGAL's heat method on
// the same meshes in the same run on one core.
//
// Usage: endplate-bench-geodesic [SOURCES [EDGE_MM...]]
//        endplate-bench-geodesic SOURCES skin DATASETS CASE
// SOURCES a mesh (4 if not said); EDGE_MM as for arm_mesh: about 5, 12, 25 and 50 thousand vertices
// if not said. With `skin`: the skin of that case at both finenesses, straight and bent. The exact
// distances take seconds to a minute a source.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <limits>
#include <optional>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/surface_distance.hpp"
#include "tests/benchmarks/arm_mesh.hpp"
#include "tests/benchmarks/geodesic_judge.hpp"
#include "tests/support/case_skin.hpp"

namespace {

using endplate::geometry::SurfaceDistance;
using endplate::geometry::TriangleMesh;

// Errors are relative from here on and absolute nearer.
constexpr double kFar_mm = 20.0;
constexpr int kRepeats = 5;

// Of this process on the processor, so that others on the machine count little. All here runs on
// one thread.
double seconds(const std::function<void()>& work) {
  const std::clock_t start = std::clock();
  work();
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

struct Tally {
  std::string method;
  double prepared_s = 0.0;
  std::vector<double> source_s;
  double far_sum = 0.0, far_most = 0.0, near_most_mm = 0.0;
  std::size_t far_count = 0;

  // The quickest of a few, since others use its caches too.
  void time(const std::function<void()>& ask) {
    double best = std::numeric_limits<double>::infinity();
    for (int i = 0; i < kRepeats; ++i) best = std::min(best, seconds(ask));
    source_s.push_back(best);
  }

  void compare(double found_mm, double exact_mm) {
    const double error_mm = std::abs(found_mm - exact_mm);
    if (exact_mm <= kFar_mm) {
      near_most_mm = std::max(near_most_mm, error_mm);
      return;
    }
    far_sum += error_mm / exact_mm;
    far_most = std::max(far_most, error_mm / exact_mm);
    ++far_count;
  }

  void print() const {
    double sum_s = 0.0;
    for (const double s : source_s) sum_s += s;
    fmt::print("  {:<22}{:>9.2f}{:>12.2f}{:>12.4f}{:>11.3f}{:>11.3f}\n", method, prepared_s,
               1e3 * sum_s / static_cast<double>(source_s.size()),
               100.0 * far_sum / static_cast<double>(far_count), 100.0 * far_most, near_most_mm);
  }
};

void run(const TriangleMesh& mesh, int sources) {
  const auto count = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  double edges_mm = 0.0;
  for (const auto& t : mesh.triangles)
    for (std::size_t k = 0; k < 3; ++k)
      edges_mm += (mesh.vertices_mm[t[k]] - mesh.vertices_mm[t[(k + 1) % 3]]).norm();
  fmt::print("{} vertices, {} triangles, mean edge {:.2f} mm, {} sources\n", count,
             mesh.triangles.size(), edges_mm / static_cast<double>(3 * mesh.triangles.size()),
             sources);

  using Heat = endplate::benchmarks::HeatMethod;
  std::vector<Tally> tallies(4);
  Tally& ours = tallies[0];
  Tally& direct = tallies[1];
  Tally& delaunay = tallies[2];
  Tally& paths = tallies[3];
  ours.method = "SurfaceDistance";
  direct.method = "heat, direct";
  delaunay.method = "heat, Delaunay";
  paths.method = "SurfaceDistance paths";
  std::optional<SurfaceDistance> surface;
  ours.prepared_s = seconds([&] { surface = SurfaceDistance::prepare(mesh).value(); });
  std::optional<Heat> heat_direct;
  direct.prepared_s = seconds([&] {
    heat_direct.emplace(mesh, Heat::Mode::direct);
    heat_direct->distances_mm(0);
  });
  std::optional<Heat> heat_delaunay;
  delaunay.prepared_s = seconds([&] {
    heat_delaunay.emplace(mesh, Heat::Mode::intrinsic_delaunay);
    heat_delaunay->distances_mm(0);
  });

  std::mt19937 chance(7);
  double exact_s = 0.0;
  for (int i = 0; i < sources; ++i) {
    const auto source = static_cast<std::uint32_t>(chance() % count);
    std::vector<double> exact_mm;
    exact_s += seconds([&] { exact_mm = endplate::benchmarks::exact_distances_mm(mesh, source); });
    std::vector<double> found_mm;
    ours.time([&] { found_mm = surface->from_vertex(source).at_vertices_mm(); });
    const std::vector<double>* direct_mm = nullptr;
    const std::vector<double>* delaunay_mm = nullptr;
    direct.time([&] { direct_mm = &heat_direct->distances_mm(source); });
    delaunay.time([&] { delaunay_mm = &heat_delaunay->distances_mm(source); });
    for (std::uint32_t v = 0; v < count; ++v) {
      ours.compare(found_mm[v], exact_mm[v]);
      direct.compare((*direct_mm)[v], exact_mm[v]);
      delaunay.compare((*delaunay_mm)[v], exact_mm[v]);
    }
    for (int p = 0; p < 200; ++p) {
      const auto to = static_cast<std::uint32_t>(chance() % count);
      const auto from_point = surface->point_at(source);
      const auto to_point = surface->point_at(to);
      double length_mm = 0.0;
      paths.source_s.push_back(
          seconds([&] { length_mm = surface->between_mm(from_point, to_point); }));
      paths.compare(length_mm, exact_mm[to]);
    }
  }
  fmt::print("  {:<22}{:>9}{:>12}{:>12}{:>11}{:>11}\n", "method", "ready s", "a source ms",
             "far mean %", "far max %", "near mm");
  for (const Tally& tally : tallies) tally.print();
  fmt::print("  exact (the judge): {:.1f} s a source; far is beyond {:.0f} mm\n\n",
             exact_s / sources, kFar_mm);
  std::fflush(stdout);
}

}  // namespace

int main(int count, char** words) {
  const int sources = count > 1 ? std::atoi(words[1]) : 4;
  if (count == 5 && std::string_view(words[2]) == "skin") {
    for (const double elbow_deg : {0.0, 90.0}) {
      for (const int fineness : {1, 2}) {
        fmt::print("skin of {}, fineness {}, elbow at {:.0f} degrees\n", words[4], fineness,
                   elbow_deg);
        run(endplate::test::case_skin(words[3], words[4], fineness, elbow_deg), sources);
      }
    }
    return EXIT_SUCCESS;
  }
  std::vector<double> edges_mm;
  for (int i = 2; i < count; ++i) edges_mm.push_back(std::atof(words[i]));
  if (edges_mm.empty()) edges_mm = {15.0, 7.0, 3.35, 2.0};
  for (const double edge_mm : edges_mm) run(endplate::benchmarks::arm_mesh(edge_mm), sources);
  return EXIT_SUCCESS;
}
