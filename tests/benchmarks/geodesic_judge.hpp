#pragma once
// CGAL's geodesics over a mesh: the exact ones, and those of its heat method.
#include <cstdint>
#include <memory>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::benchmarks {

// Surface_mesh_shortest_path with exact predicates: seconds a source on 50,000 triangles.
std::vector<double> exact_distances_mm(const geometry::TriangleMesh& mesh, std::uint32_t source);

// Heat_method_3, prepared once. Eigen's simplicial LDLT, as CGAL chooses by default.
class HeatMethod {
 public:
  enum class Mode { direct, intrinsic_delaunay };

  HeatMethod(const geometry::TriangleMesh& mesh, Mode mode);
  ~HeatMethod();
  HeatMethod(const HeatMethod&) = delete;
  HeatMethod& operator=(const HeatMethod&) = delete;
  HeatMethod(HeatMethod&&) = delete;
  HeatMethod& operator=(HeatMethod&&) = delete;

  // The vector is overwritten at the next call.
  const std::vector<double>& distances_mm(std::uint32_t source);

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace endplate::benchmarks
