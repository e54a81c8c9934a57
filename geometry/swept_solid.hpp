#pragma once
// A closed solid swept along a curve: ellipses across a spline through their centres, with rounded
// ends.
#include <Eigen/Core>
#include <optional>
#include <vector>

#include "geometry/triangle_mesh.hpp"

namespace endplate::geometry {

struct SweptRing {
  Eigen::Vector3d centre_mm = Eigen::Vector3d::Zero();
  double half_a_mm = 1.0;  // > 0, toward `toward` made perpendicular to the curve
  double half_b_mm = 1.0;  // > 0, across it
  Eigen::Vector3d toward = Eigen::Vector3d::UnitX();  // any length; not along the curve
  // Where the ring's plane is not to be perpendicular to the curve: its normal, to either side.
  std::optional<Eigen::Vector3d> normal = std::nullopt;
};

struct SweepFineness {
  int around = 12;       // vertices of a ring, at least 3
  int end = 3;           // rings of a rounded end, at least 1
  double step_mm = 6.0;  // between rings, about
};

struct SweptSolid {
  TriangleMesh mesh;  // closed, facing outward
  // By vertex, its place along the curve: 0 at the first ring given, 1 at the second.
  std::vector<double> along;
};

// The curve is the natural cubic spline through the centres, its knots the chord lengths; the
// half-axes follow one of their own that never leaves the range of its two neighbours. The solid
// begins and ends in the outer centres: it is as long as the curve, and its ends are rounded over
// the lesser half-axis. At least two rings, no two neighbours in one place. Crosses itself where
// the curve bends more sharply than a half-axis allows. The numbers of rows follow from
// `rest_mm`, the length for which the fineness is meant, so that solids of the same `rest_mm` have
// the same triangles.
SweptSolid sweep(const std::vector<SweptRing>& rings, const SweepFineness& fineness,
                 double rest_mm);

}  // namespace endplate::geometry
