#include "geometry/mesh_repair.hpp"

#include <algorithm>
#include <cmath>
#include <exception>
#include <functional>
#include <limits>
#include <optional>
#include <utility>

#include "geometry/mesh_intersections.hpp"
#include "geometry/mesh_measures.hpp"
#include "geometry/mesh_repair_steps.hpp"
#include "geometry/mesh_tidy.hpp"
#include "geometry/mesh_topology.hpp"
#include "geometry/mesh_vertices.hpp"

namespace endplate::geometry {

namespace {

// Parts that are kept hold at least this share of the area (`assumed`): else the surface is torn
// into pieces, and the pieces that would go are the limb itself.
constexpr double kLeastKeptShare = 0.5;

using Fault = std::optional<GeometryProblem>;

std::string in_mm(double length_mm) {
  return std::to_string(std::lround(length_mm)) + " mm";
}

// The steps of repair_mesh, each on what the one before it left. A fault ends the repair.
class Repair {
 public:
  Repair(TriangleMesh mesh, const RepairOptions& options)
      : mesh_(std::move(mesh)), options_(options) {}

  GeometryResult<RepairedMesh> run() {
    for (const auto step : {&Repair::tidy, &Repair::make_manifold, &Repair::drop_small_parts,
                            &Repair::close_holes, &Repair::turn_outward, &Repair::look_again}) {
      if (auto fault = (this->*step)()) return std::unexpected(std::move(*fault));
    }
    return RepairedMesh{std::move(mesh_), std::move(done_)};
  }

 private:
  void tell(std::size_t count, const std::string& what) {
    if (count > 0) done_.push_back(what + ": " + std::to_string(count));
  }

  Fault tidy() {
    tell(merge_identical_vertices(mesh_), "vertices merged with one at the same point");
    tell(drop_triangles_with_repeated_corner(mesh_), "triangles with a corner twice dropped");
    tell(drop_doubled_triangles(mesh_), "further copies of a triangle dropped");
    tell(drop_unused_vertices(mesh_), "vertices that no triangle uses dropped");
    const std::vector<bool> without_area = triangles_without_area(mesh_);
    if (std::ranges::all_of(without_area, [](bool b) { return b; })) {
      return GeometryProblem{"no triangle has an area", "scan or export the surface again"};
    }
    return {};
  }

  Fault make_manifold() {
    const MeshTopology before(mesh_);
    tell(before.non_manifold_edges(), "edges where three or more triangles meet cut open");
    tell(before.non_manifold_vertices(), "vertices where parts touch at a point only split");
    const Orienting oriented = orient_neighbours(mesh_);
    tell(oriented.turned_triangles, "triangles turned to face the way of their neighbours");
    return take_out_slivers();
  }

  Fault take_out_slivers() {
    const std::vector<bool> without_area = triangles_without_area(mesh_);
    const auto slivers = static_cast<std::size_t>(std::ranges::count(without_area, true));
    if (slivers > 0 && !remove_triangles_without_area(mesh_)) {
      return GeometryProblem{"triangles whose corners lie on one line cannot be taken out",
                             "export the surface again, remeshed if the scanner offers it"};
    }
    tell(slivers, "triangles whose corners lie on one line taken out");
    return {};
  }

  Fault drop_small_parts() {
    const MeshTopology topology(mesh_);
    const std::vector<std::uint32_t> part_of = topology.components();
    const auto parts = measure_components(mesh_, topology, part_of, topology.boundary_loops());
    double area_mm2 = 0.0;
    for (const ComponentMeasures& part : parts) area_mm2 += part.area_mm2;
    const auto kept = [&](const ComponentMeasures& part) {
      return part.area_mm2 >= options_.least_component_share * area_mm2;
    };
    double kept_area_mm2 = 0.0;
    for (const ComponentMeasures& part : parts) kept_area_mm2 += kept(part) ? part.area_mm2 : 0.0;
    if (!(kept_area_mm2 >= kLeastKeptShare * area_mm2)) {
      return GeometryProblem{
          "the surface is torn into " + std::to_string(parts.size()) + " small parts",
          "join its points in the scanner's program and export it again"};
    }
    const auto small = static_cast<std::size_t>(std::ranges::count_if(parts, std::not_fn(kept)));
    if (small > 0) {
      keep_triangles(mesh_, [&](std::size_t t) { return kept(parts[part_of[t]]); });
      drop_unused_vertices(mesh_);
      tell(small, "parts with a small share of the area dropped");
    }
    // Fins that are gone leave edges that were cut open for their sake.
    if (MeshTopology(mesh_).boundary_edges() > 0) {
      tell(sew_boundaries(mesh_), "edges along such cuts sewn");
    }
    return {};
  }

  Fault close_holes() {
    const MeshTopology topology(mesh_);
    std::vector<double> over_mm;
    for (const BoundaryLoop& loop : topology.boundary_loops()) {
      const double around_mm = length_mm(mesh_, loop);
      if (around_mm > options_.close_holes_up_to_mm) over_mm.push_back(around_mm);
    }
    const std::size_t allowed = options_.open_end == OpenEnd::none ? 0 : 1;
    if (over_mm.size() > allowed) {
      std::ranges::sort(over_mm);
      std::string lengths;
      for (const double around_mm : over_mm) lengths += ", " + in_mm(around_mm);
      return GeometryProblem{"holes too long to close (circumference" + lengths.substr(1) + ")",
                             "scan those places again, or say which end is open or that longer "
                             "holes are to be closed"};
    }
    const bool cap = options_.open_end == OpenEnd::cap;
    const double limit_mm =
        cap ? std::numeric_limits<double>::infinity() : options_.close_holes_up_to_mm;
    if (topology.boundary_edges() == 0 || !(limit_mm > 0.0)) return {};
    const HoleFilling filling = fill_holes(mesh_, limit_mm);
    if (filling.failed > 0) {
      return GeometryProblem{std::to_string(filling.failed) + " holes cannot be closed",
                             "close them in the scanner's program, or scan those places again"};
    }
    const std::size_t capped = cap ? over_mm.size() : 0;
    tell(filling.closed - capped, "holes closed");
    if (capped > 0) done_.push_back("open end of " + in_mm(over_mm[0]) + " closed by a cap");
    return take_out_slivers();  // of a rim with corners on one line
  }

  Fault turn_outward() {
    const MeshTopology topology(mesh_);
    const std::vector<std::uint32_t> part_of = topology.components();
    const auto parts = measure_components(mesh_, topology, part_of, topology.boundary_loops());
    std::size_t turned = 0;
    for (const ComponentMeasures& part : parts) {
      if (part.flat()) {
        return GeometryProblem{"part of the surface is too flat to tell its outside",
                               "scan more of the way around the limb"};
      }
      turned += part.capped_volume_mm3 < 0.0 ? 1 : 0;
    }
    for (std::size_t t = 0; t < mesh_.triangles.size(); ++t) {
      auto& triangle = mesh_.triangles[t];
      if (parts[part_of[t]].capped_volume_mm3 < 0.0) std::swap(triangle[1], triangle[2]);
    }
    tell(turned, "parts turned inside out to face outward");
    return {};
  }

  Fault look_again() {
    const MeshTopology topology(mesh_);
    // At one place as well: an edge that had to be cut and could not be sewn, as of a twisted band.
    TriangleMesh merged = mesh_;
    merge_identical_vertices(merged);
    const MeshTopology by_place(merged);
    if (topology.non_manifold_edges() + topology.non_manifold_vertices() +
            topology.inconsistent_edges() + by_place.non_manifold_edges() +
            by_place.inconsistent_edges() >
        0) {
      return GeometryProblem{"triangles still join in a way that no surface with an outside has",
                             "export the surface again, remeshed if the scanner offers it"};
    }
    const SelfIntersections crossings = count_self_intersections(mesh_);
    if (!crossings.complete || crossings.pairs > options_.most_self_intersections) {
      return GeometryProblem{
          (crossings.complete ? "" : "at least ") + std::to_string(crossings.pairs) +
              " pairs of triangles cross",
          "remesh the surface in the scanner's program, or scan again with the fingers apart"};
    }
    return {};
  }

  TriangleMesh mesh_;
  RepairOptions options_;
  std::vector<std::string> done_;
};

}  // namespace

GeometryResult<RepairedMesh> repair_mesh(TriangleMesh mesh, const RepairOptions& options) {
  if (auto fault = fault_of_arrays(mesh)) return std::unexpected(std::move(*fault));
  try {
    return Repair(std::move(mesh), options).run();
  } catch (const std::exception& error) {
    return std::unexpected(
        GeometryProblem{"the surface cannot be repaired: " + std::string(error.what()),
                        "export it again, remeshed if the scanner offers it"});
  }
}

}  // namespace endplate::geometry
