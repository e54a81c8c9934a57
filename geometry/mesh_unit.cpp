#include "geometry/mesh_unit.hpp"

#include <Eigen/Geometry>
#include <cmath>

namespace endplate::geometry {

double mm_per(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::mm:
      return 1.0;
    case LengthUnit::cm:
      return 10.0;
    case LengthUnit::m:
      break;
  }
  return 1000.0;
}

double diagonal(const TriangleMesh& mesh) {
  Eigen::AlignedBox3d box;
  for (const auto& triangle : mesh.triangles) {
    for (const std::uint32_t corner : triangle) box.extend(mesh.vertices_mm[corner]);
  }
  return box.isEmpty() ? 0.0 : box.diagonal().norm();
}

GeometryResult<std::vector<LengthUnit>> plausible_units(double diagonal, double least_mm,
                                                        double most_mm) {
  if (!std::isfinite(diagonal) || diagonal <= 0.0) {
    return std::unexpected(GeometryProblem{"the surface has no extent", "export the file again"});
  }
  if (!(least_mm > 0.0) || !(most_mm >= least_mm) || !std::isfinite(most_mm)) {
    return std::unexpected(GeometryProblem{"the range of plausible sizes is none",
                                           "give a least extent above 0 mm and a larger most"});
  }
  std::vector<LengthUnit> plausible;
  for (const LengthUnit unit : kLengthUnits) {
    const double extent_mm = diagonal * mm_per(unit);
    if (extent_mm >= least_mm && extent_mm <= most_mm) plausible.push_back(unit);
  }
  return plausible;
}

void scale_to_mm(TriangleMesh& mesh, LengthUnit unit) {
  for (auto& vertex : mesh.vertices_mm) vertex *= mm_per(unit);
}

}  // namespace endplate::geometry
