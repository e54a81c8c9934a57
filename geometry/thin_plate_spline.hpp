#pragma once
// Thin-plate spline of space: the smoothest warp that carries landmarks onto matched landmarks.
//
// Each coordinate of the warp is f(x) = a0 + a . x - sum_i c_i |x - p_i|. It minimises
//   sum_i (f(p_i) - q_i)^2 / smoothing_i + (1 / 8 pi) E(f),
//   E(f) = integral over space of the sum of the squares of all nine second derivatives of f,
// and with smoothing 0 it is, of all functions that meet the landmarks, the one with the least E.
// E is 0 for an affine map, and 8 pi sum_ij c_i c_j (-|p_i - p_j|) here. In space the kernel of
// this energy is |r|, unlike r^2 log r in the plane. Sources: Duchon J, in Constructive Theory of
// Functions of Several Variables, Springer 1977, p 85; Bookstein FL, IEEE Trans Pattern Anal Mach
// Intell 1989;11:567 (both `recalled`).
//
// AffinePart::identity keeps a at the identity: f - x has the same kernels and a0 alone, so that a
// turn or a stretch is paid for as well. It is the prediction of thin_plate_variance.hpp for a
// field with an unknown constant mean, and goes back to a shift far from the landmarks.
#include <Eigen/Core>
#include <vector>

#include "geometry/geometry_problem.hpp"
#include "geometry/thin_plate_system.hpp"

namespace endplate::geometry {

class ThinPlateSpline {
 public:
  // `smoothing_mm`: 0 meets every landmark; more allows distances for less bending (in mm because
  // the coefficients c have no unit). Refuses unequal numbers, fewer than 4 landmarks, values that
  // are not finite, landmarks `from` in one plane or two at one place, and a negative smoothing.
  static GeometryResult<ThinPlateSpline> fit(const std::vector<Eigen::Vector3d>& from_mm,
                                             const std::vector<Eigen::Vector3d>& to_mm,
                                             double smoothing_mm = 0.0);
  // One smoothing a landmark: in proportion to the variance of its errors. 0 meets that landmark.
  static GeometryResult<ThinPlateSpline> fit(const std::vector<Eigen::Vector3d>& from_mm,
                                             const std::vector<Eigen::Vector3d>& to_mm,
                                             const std::vector<double>& smoothing_mm,
                                             AffinePart affine = AffinePart::free);

  Eigen::Vector3d operator()(const Eigen::Vector3d& x_mm) const;
  std::vector<Eigen::Vector3d> operator()(const std::vector<Eigen::Vector3d>& points_mm) const;

  // Derivative of the warp; at a landmark, where the kernel has none, that of the other terms. A
  // determinant that is not above 0 means that the warp folds space there.
  Eigen::Matrix3d jacobian(const Eigen::Vector3d& x_mm) const;

  // E of the three coordinates together.
  double bending_energy_mm() const;

 private:
  Eigen::Matrix3Xd landmarks_mm_;
  Eigen::Matrix3Xd coefficients_;  // of the kernel, one column a landmark
  Eigen::Vector3d centre_mm_ = Eigen::Vector3d::Zero();
  Eigen::Vector3d offset_mm_ = Eigen::Vector3d::Zero();  // value of the affine part at the centre
  Eigen::Matrix3d linear_ = Eigen::Matrix3d::Identity();
};

}  // namespace endplate::geometry
