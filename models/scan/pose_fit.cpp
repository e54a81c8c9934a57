#include "models/scan/pose_fit.hpp"

#include <Eigen/Cholesky>
#include <Eigen/Geometry>
#include <numbers>
#include <unsupported/Eigen/NonLinearOptimization>

namespace endplate::scan {
namespace {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

// Of the middle and the end joint against the knuckle, as pose_from() has them.
constexpr double kPipShare = 100.0 / 90.0;
constexpr double kDipShare = 80.0 / 90.0;

class Residuals {
 public:
  using Scalar = double;
  using InputType = VectorXd;
  using ValueType = VectorXd;
  using JacobianType = MatrixXd;
  enum { InputsAtCompileTime = Eigen::Dynamic, ValuesAtCompileTime = Eigen::Dynamic };

  Residuals(const StandardLimb& limb, const SkinModel& sample, const Prior& prior,
            const std::vector<SeenLandmark>& landmarks, const std::vector<TouchedPlane>& planes,
            const LimbState& start)
      : limb_(limb),
        sample_(sample),
        prior_(prior),
        landmarks_(landmarks),
        planes_(planes),
        start_(start),
        size_root_(prior.size_covariance) {}

  int inputs() const { return kUnknowns; }
  int values() const {
    return static_cast<int>(3 * landmarks_.size() + planes_.size()) + kSizes + kAngles;
  }

  int operator()(const VectorXd& x, VectorXd& f) const {
    const LimbState state = moved(start_, x);
    const PlacedLimb placed = limb_.place(state);
    const auto skin = sample_.placed_mm(placed);
    Eigen::Index row = 0;
    for (const SeenLandmark& seen : landmarks_) {
      const ScanLandmark& landmark = limb_.landmarks().all()[seen.landmark];
      const Vector3d at = placed.to_scan * landmark.posed_mm(placed.frames, placed.space) +
                          state.humerus_to_scan.linear() * seen.offset_mm;
      f.segment<3>(row) = (at - seen.seen_mm) / seen.sd_mm;
      row += 3;
    }
    for (const TouchedPlane& plane : planes_) {
      f[row++] = plane.normal.dot(skin[plane.vertex] - plane.place_mm) / plane.sd_mm;
    }
    f.segment<kSizes>(row) = size_root_.matrixL().solve(sizes_of(state.scale) - prior_.size_mean);
    f.tail<kAngles>() = (angles_of(state.pose) - prior_.angle_mean).cwiseQuotient(prior_.angle_sd);
    return 0;
  }

  // Central differences: a step of a ten-thousandth is some hundredths of a mm on the skin.
  int df(const VectorXd& x, MatrixXd& jacobian) const {
    constexpr double kStep = 1e-4;
    VectorXd low(values());
    VectorXd high(values());
    for (Eigen::Index k = 0; k < x.size(); ++k) {
      VectorXd at = x;
      at[k] = x[k] + kStep;
      (*this)(at, high);
      at[k] = x[k] - kStep;
      (*this)(at, low);
      jacobian.col(k) = (high - low) / (2.0 * kStep);
    }
    return 0;
  }

 private:
  const StandardLimb& limb_;
  const SkinModel& sample_;
  const Prior& prior_;
  const std::vector<SeenLandmark>& landmarks_;
  const std::vector<TouchedPlane>& planes_;
  const LimbState& start_;
  Eigen::LLT<Eigen::Matrix<double, kSizes, kSizes>> size_root_;
};

}  // namespace

Angles angles_of(const limb::Pose& pose) {
  Angles angles;
  angles << pose.shoulder_abduction, pose.shoulder_flexion, pose.shoulder_external_rotation,
      pose.elbow_flexion, pose.forearm_pronation, pose.wrist_extension, pose.wrist_ulnar_deviation,
      pose.fingers[0].mcp_flexion;
  return angles;
}

limb::Pose pose_of(const Angles& angles) {
  limb::Pose pose;
  pose.shoulder_abduction = angles[0];
  pose.shoulder_flexion = angles[1];
  pose.shoulder_external_rotation = angles[2];
  pose.elbow_flexion = angles[3];
  pose.forearm_pronation = angles[4];
  pose.wrist_extension = angles[5];
  pose.wrist_ulnar_deviation = angles[6];
  for (limb::FingerPose& finger : pose.fingers) {
    finger = {angles[7], kPipShare * angles[7], kDipShare * angles[7]};
  }
  return pose;
}

LimbState moved(const LimbState& state, const Unknowns& by, const Vector3d& centre_mm) {
  LimbState result = state;
  const Vector3d turn = by.head<3>();
  const double angle = turn.norm();
  const Eigen::AngleAxisd rotation(angle, angle > 0.0 ? Vector3d(turn / angle) : Vector3d::UnitX());
  result.humerus_to_scan = Eigen::Translation3d(centre_mm + by.segment<3>(3)) * rotation *
                           Eigen::Translation3d(-centre_mm) * state.humerus_to_scan;
  result.scale = scale_of(sizes_of(state.scale) + by.segment<kSizes>(6));
  // The thumb keeps what was said of it: it has no angle here.
  result.pose = pose_of(angles_of(state.pose) + by.tail<kAngles>());
  result.pose.thumb = state.pose.thumb;
  return result;
}

LimbState moved(const LimbState& state, const Unknowns& by) {
  return moved(state, by, state.humerus_to_scan * Vector3d::Zero());
}

PoseFit fit_pose(const StandardLimb& limb, const SkinModel& sample, const Prior& prior,
                 const std::vector<SeenLandmark>& landmarks,
                 const std::vector<TouchedPlane>& planes, const LimbState& start) {
  Residuals residuals(limb, sample, prior, landmarks, planes, start);
  Eigen::LevenbergMarquardt<Residuals> solver(residuals);
  // The rounds around this look for nearest places anew; more digits would be lost on them.
  solver.parameters.ftol = 1e-4;
  solver.parameters.xtol = 1e-4;
  solver.parameters.maxfev = 40;
  VectorXd x = VectorXd::Zero(kUnknowns);
  solver.minimize(x);
  PoseFit fit;
  fit.state = moved(start, x);
  const Residuals about(limb, sample, prior, landmarks, planes, fit.state);
  MatrixXd jacobian(about.values(), kUnknowns);
  about.df(VectorXd::Zero(kUnknowns), jacobian);
  const Eigen::Matrix<double, kUnknowns, kUnknowns> information = jacobian.transpose() * jacobian;
  fit.covariance =
      information.ldlt().solve(Eigen::Matrix<double, kUnknowns, kUnknowns>::Identity());
  return fit;
}

}  // namespace endplate::scan
