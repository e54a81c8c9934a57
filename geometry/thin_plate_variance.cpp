#include "geometry/thin_plate_variance.hpp"

#include <algorithm>
#include <utility>

namespace endplate::geometry {

GeometryResult<ThinPlateVariance> ThinPlateVariance::of(const std::vector<Eigen::Vector3d>& from_mm,
                                                        const std::vector<double>& smoothing_mm,
                                                        AffinePart affine) {
  auto system = thin_plate_system(from_mm, smoothing_mm, affine);
  if (!system) return std::unexpected(system.error());
  ThinPlateVariance variance;
  variance.system_ = *std::move(system);
  variance.solver_ = variance.system_.matrix.partialPivLu();
  return variance;
}

double ThinPlateVariance::operator()(const Eigen::Vector3d& x_mm) const {
  const Eigen::VectorXd row = system_.row(x_mm);
  // The kernel of a point with itself is 0. Rounding may leave a little below it.
  return std::max(0.0, -system_.extent_mm * row.dot(solver_.solve(row)));
}

}  // namespace endplate::geometry
