#pragma once
// The similarity (rotation, uniform scale, translation; never a reflection) that brings points onto
// matched points with the least sum of squared distances.
// Source: Umeyama S, IEEE Trans Pattern Anal Mach Intell 1991;13:376 (`recalled`), as in Eigen.
#include <Eigen/Core>
#include <vector>

#include "geometry/geometry_problem.hpp"

namespace endplate::geometry {

// x -> scale * rotation * x + translation_mm
struct Similarity {
  Eigen::Matrix3d rotation = Eigen::Matrix3d::Identity();
  double scale = 1.0;  // above 0
  Eigen::Vector3d translation_mm = Eigen::Vector3d::Zero();

  Eigen::Vector3d operator()(const Eigen::Vector3d& x_mm) const {
    return scale * (rotation * x_mm) + translation_mm;
  }
};

enum class Scaling { free, fixed_at_one };

struct SimilarityFit {
  Similarity similarity;
  std::vector<double> residuals_mm;  // distance of each moved point from its target
  double rms_mm = 0.0;
};

// Refuses fewer than 3 points, unequal numbers, values that are not finite, points on one line or
// at one place (the rotation is then not determined) on either side.
GeometryResult<SimilarityFit> fit_similarity(const std::vector<Eigen::Vector3d>& from_mm,
                                             const std::vector<Eigen::Vector3d>& to_mm,
                                             Scaling scaling = Scaling::free);

}  // namespace endplate::geometry
