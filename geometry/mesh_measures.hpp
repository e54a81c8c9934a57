#pragma once
// Areas, and volumes with the holes capped, of the parts of a mesh.
#include <cstddef>
#include <cstdint>
#include <vector>

#include "geometry/mesh_topology.hpp"
#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

double triangle_area_mm2(const TriangleMesh& mesh, std::size_t triangle);
double length_mm(const TriangleMesh& mesh, const BoundaryLoop& loop);
Eigen::Vector3d centre_mm(const TriangleMesh& mesh, const BoundaryLoop& loop);

struct ComponentMeasures {
  std::size_t triangles = 0;
  double area_mm2 = 0.0;
  bool closed = true;
  // Enclosed, with every hole capped by a fan to the middle of its rim; above 0 when the triangles
  // run counter-clockwise seen from outside. Means something only for a consistent orientation.
  double capped_volume_mm3 = 0.0;
  // A nearly flat sheet encloses nothing: which side is outside cannot be told from its shape.
  bool flat() const;
};

// One a component, in the order of their numbers.
std::vector<ComponentMeasures> measure_components(const TriangleMesh& mesh,
                                                  const MeshTopology& topology,
                                                  const std::vector<std::uint32_t>& component_of,
                                                  const std::vector<BoundaryLoop>& loops);

}  // namespace endplate::geometry
