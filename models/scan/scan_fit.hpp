#pragma once
// The standard limb brought onto one scanned surface: similarity, then size and pose, then a
// thin-plate spline.
//
// 1. A similarity brings the landmarks of the standard limb, in the pose that was given, onto the
//    picked ones.
// 2. Size, joint angles and place are fitted (pose_fit.hpp): to the landmarks first, then also to
//    the scan's surface, by planes that touch it where it is nearest to some hundred vertices of
//    our skin. Nearest places count that face the same way and lie within a limit that tightens.
// 3. A smoothing spline takes up what is left: landmarks and vertices are drawn onto the scan, each
//    with the weight that its error deserves, in a few rounds of nearest places.
// What lies under the skin follows all three.
#include <Eigen/Core>
#include <functional>
#include <vector>

#include "geometry/nearest_surface.hpp"
#include "geometry/thin_plate_spline.hpp"
#include "geometry/thin_plate_variance.hpp"
#include "models/core/error.hpp"
#include "models/scan/pose_fit.hpp"
#include "models/scan/standard_limb.hpp"

namespace endplate::scan {

// A landmark of StandardLimb::landmarks() on the scan's surface, mm.
struct Pick {
  std::size_t landmark = 0;
  Eigen::Vector3d position_mm = Eigen::Vector3d::Zero();
};

// Standard deviations in mm, each direction; all assumed.
inline constexpr double kPicking_mm = 2.0;  // of a pick
// Of a vertex against the plane that touches the scan. Our skin's shape is off by 2 to 3 mm over
// stretches of some centimetres, so that some hundred vertices count as some fifty.
inline constexpr double kPlane_mm = 6.0;
inline constexpr double kNearest_mm = 1.0;  // of a nearest place for the spline: noise of a scan
// Of the spline (thin_plate_variance.hpp): two places 100 mm apart move against each other by 3 mm
// (SD, each direction) more than size and pose explain.
inline constexpr double kRoughness_mm = 0.05;
inline constexpr std::size_t kVertices = 400;

enum class Method {
  similarity_and_spline,  // pose and proportions as given; the spline meets the landmarks
  fitted_to_landmarks,    // size and pose from the landmarks, then a smoothing spline
  fitted_to_surface       // and the surface between them
};

struct ScanFit {
  LimbState start;  // after the similarity alone
  LimbState state;  // with size and pose fitted
  Eigen::Matrix<double, kUnknowns, kUnknowns>
      covariance;                  // as PoseFit's; 0 where nothing is fitted
  geometry::ThinPlateSpline warp;  // from the scan's space into itself
  geometry::ThinPlateVariance variance;
  // Of the vertices: how many have a place on the scan, and how far from it they end.
  double matched_share = 0.0;
  double surface_rms_mm = 0.0;
  double surface_p95_mm = 0.0;  // 95 in 100 end within this distance
};

class ScanFitter {
 public:
  // `limb`, `surface` must outlive it. Nothing here is changed by a fit, so that several may run.
  ScanFitter(const StandardLimb& limb, const geometry::NearestSurface& surface, Prior prior);

  // Refuses landmarks that determine no limb: fewer than 4, or so flat that a turn or a mirror
  // image would do as well. The problem stands at --scan-landmarks.
  Expected<ScanFit> fit(const std::vector<Pick>& picks, Method method) const;

  // Where the fit has a landmark's place of the skin; `warped`: after the spline as well.
  Eigen::Vector3d landmark_mm(std::size_t landmark, const LimbState& state) const;
  Eigen::Vector3d landmark_mm(std::size_t landmark, const ScanFit& fit) const {
    return fit.warp(landmark_mm(landmark, fit.state));
  }

  // Variance that the fit leaves at points which move with the limb, summed over the three
  // directions, mm2: of size, pose and place by the fit's covariance, and of the spline
  // (ThinPlateVariance). The spline's own part is a little too wide, for size and pose take up some
  // of what it allows for.
  using PointsOf = std::function<std::vector<Eigen::Vector3d>(const LimbState&)>;
  static std::vector<double> variances_mm2(const ScanFit& fit, const PointsOf& points_of);

  // Root mean square distance of the landmarks after a similarity and the fit to landmarks alone:
  // by which a left arm said to be a right one is told.
  Expected<double> landmark_rms_mm(const std::vector<Pick>& picks) const;

 private:
  // The nearest place of the skin, whose vertices are given.
  Eigen::Vector3d on_skin_mm(const Eigen::Vector3d& bone_mm,
                             const std::vector<Eigen::Vector3d>& skin_mm) const;
  std::vector<Eigen::Vector3d> landmarks_mm(const std::vector<Pick>& picks,
                                            const PlacedLimb& placed,
                                            const std::vector<Eigen::Vector3d>& skin_mm) const;
  Expected<LimbState> start_of(const std::vector<Pick>& picks) const;
  PoseFit fitted_pose(const std::vector<Pick>& picks, const LimbState& start, bool surface) const;

  const StandardLimb* limb_;
  const geometry::NearestSurface* surface_;
  Prior prior_;
  SkinModel skin_;
  std::vector<std::uint32_t> spread_;
};

}  // namespace endplate::scan
