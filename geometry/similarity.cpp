#include "geometry/similarity.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <string>

#include "geometry/point_spread.hpp"

namespace endplate::geometry {

namespace {

// Below this share of the length of the set its width is noise: a degree or more of doubt in the
// turn about its axis for the tenths of a millimetre that landmarks are picked with.
constexpr double kLeastShare = 1e-3;

}  // namespace

GeometryResult<SimilarityFit> fit_similarity(const std::vector<Eigen::Vector3d>& from_mm,
                                             const std::vector<Eigen::Vector3d>& to_mm,
                                             Scaling scaling) {
  if (from_mm.size() != to_mm.size()) {
    return std::unexpected(GeometryProblem{
        std::to_string(from_mm.size()) + " points are matched with " + std::to_string(to_mm.size()),
        "give one target for each point"});
  }
  if (from_mm.size() < 3) {
    return std::unexpected(GeometryProblem{"fewer than three points are matched",
                                           "give at least three points that lie on no one line"});
  }
  const Eigen::Matrix3Xd from = columns_of(from_mm);
  const Eigen::Matrix3Xd to = columns_of(to_mm);
  if (!from.allFinite() || !to.allFinite()) {
    return std::unexpected(
        GeometryProblem{"a matched point has a coordinate that is not finite", "give numbers"});
  }
  if (dimension_of(from, kLeastShare) < 2 || dimension_of(to, kLeastShare) < 2) {
    return std::unexpected(
        GeometryProblem{"the matched points lie on one line", "add a point to the side of it"});
  }
  const Eigen::Matrix4d matrix = Eigen::umeyama(from, to, scaling == Scaling::free);
  SimilarityFit fit;
  Similarity& s = fit.similarity;
  s.scale = std::cbrt(matrix.topLeftCorner<3, 3>().determinant());
  s.rotation = matrix.topLeftCorner<3, 3>() / s.scale;
  s.translation_mm = matrix.topRightCorner<3, 1>();
  double sum = 0.0;
  for (std::size_t i = 0; i < from_mm.size(); ++i) {
    fit.residuals_mm.push_back((s(from_mm[i]) - to_mm[i]).norm());
    sum += fit.residuals_mm.back() * fit.residuals_mm.back();
  }
  fit.rms_mm = std::sqrt(sum / static_cast<double>(from_mm.size()));
  return fit;
}

}  // namespace endplate::geometry
