#pragma once
// Size, pose and place of a limb from landmarks and from places of its skin, by least squares.
//
// A warp alone would bend the bones where a joint is bent a little otherwise than was said, so the
// joints and the lengths are fitted first. What is known beforehand is a Gaussian prior: the size
// from LimbSize, the angles from how the pose was come by.
#include <Eigen/Core>
#include <vector>

#include "models/scan/standard_limb.hpp"

namespace endplate::scan {

// The unknowns, in this order: a turn of the limb about a centre (3, radians, in the scan's frame),
// a shift (3, mm), kSizes and kAngles.
inline constexpr int kAngles = 8;  // shoulder 3, elbow, forearm, wrist 2, fist
inline constexpr int kUnknowns = 6 + kSizes + kAngles;
using Unknowns = Eigen::Matrix<double, kUnknowns, 1>;
using Angles = Eigen::Matrix<double, kAngles, 1>;  // radians

// abduction, flexion, external rotation, elbow flexion, pronation, wrist extension, ulnar
// deviation, and flexion of all fingers as in pose_from().
Angles angles_of(const limb::Pose& pose);
limb::Pose pose_of(const Angles& angles);

struct Prior {
  Sizes size_mean = Sizes::Ones();
  // Positive definite.
  Eigen::Matrix<double, kSizes, kSizes> size_covariance =
      0.01 * Eigen::Matrix<double, kSizes, kSizes>::Identity();
  Angles angle_mean = Angles::Zero();
  Angles angle_sd = Angles::Constant(0.1);  // > 0
};

// A landmark beside where it was picked. Its place of the skin is the bone's and an offset, which
// turns with the limb: over the shoulder the skin goes with the arm, not with the bone under it.
struct SeenLandmark {
  std::size_t landmark = 0;                             // of StandardLimb::landmarks()
  Eigen::Vector3d offset_mm = Eigen::Vector3d::Zero();  // in the frame of the humerus
  Eigen::Vector3d seen_mm = Eigen::Vector3d::Zero();
  double sd_mm = 1.0;
};
// A vertex of the sample beside the plane that touches the scan near it.
struct TouchedPlane {
  std::size_t vertex = 0;  // of the sample
  Eigen::Vector3d place_mm = Eigen::Vector3d::Zero();
  Eigen::Vector3d normal = Eigen::Vector3d::UnitX();
  double sd_mm = 1.0;
};

struct PoseFit {
  LimbState state;
  // Of the unknowns about `state` (turn and shift 0 there), by the Gauss-Newton matrix.
  Eigen::Matrix<double, kUnknowns, kUnknowns> covariance;
};

// By Levenberg and Marquardt's method (Eigen's translation of MINPACK), from `start`.
PoseFit fit_pose(const StandardLimb& limb, const SkinModel& sample, const Prior& prior,
                 const std::vector<SeenLandmark>& landmarks,
                 const std::vector<TouchedPlane>& planes, const LimbState& start);

// The state that unknowns stand for about another. `centre_mm`: about which the limb turns.
LimbState moved(const LimbState& state, const Unknowns& by, const Eigen::Vector3d& centre_mm);

// The same about the middle of the elbow, which PoseFit::covariance refers to.
LimbState moved(const LimbState& state, const Unknowns& by);

}  // namespace endplate::scan
