#pragma once
// How uncertain a thin-plate spline is away from its landmarks.
//
// The spline of thin_plate_spline.hpp is the best linear unbiased prediction of a random field with
// a mean of unknown coefficients (the affine part) whose differences have the variance
//   var(g(x) - g(y)) = 2 roughness |x - y|   in each coordinate,
// seen at the landmarks with independent errors of variance smoothing * roughness. This is the
// variance of that prediction divided by the roughness (universal kriging): about the smoothing at
// a landmark, growing with the distance from all of them. Source: Cressie N, Statistics for Spatial
// Data, Wiley 1993, sections 3.4 and 3.4.5 (`recalled`).
#include <Eigen/Core>
#include <Eigen/LU>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/thin_plate_system.hpp"

namespace endplate::geometry {

class ThinPlateVariance {
 public:
  // Refuses what ThinPlateSpline::fit refuses. One smoothing a landmark, mm.
  static GeometryResult<ThinPlateVariance> of(const std::vector<Eigen::Vector3d>& from_mm,
                                              const std::vector<double>& smoothing_mm,
                                              AffinePart affine = AffinePart::free);

  // In mm: times the roughness (mm) it is the variance of each coordinate of the warped point, mm2.
  double operator()(const Eigen::Vector3d& x_mm) const;

 private:
  ThinPlateSystem system_;
  Eigen::PartialPivLU<Eigen::MatrixXd> solver_;
};

}  // namespace endplate::geometry
