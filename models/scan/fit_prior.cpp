#include "models/scan/fit_prior.hpp"

#include <numbers>

#include "models/limb/pose.hpp"

namespace endplate::scan {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr int kSamples = 1000;
constexpr std::uint64_t kSeed = 1;  // the spread of sizes only, whatever the answer's seed
// Added to every measure of the size: a tape is not exact, and a variance of 0 would leave the fit
// without a solution (assumed).
constexpr double kTape = 0.01;

}  // namespace

const std::array<const char*, kAngles> kAngleKeys{
    "shoulder_abduction_deg",    "shoulder_flexion_deg",  "shoulder_external_rotation_deg",
    "elbow_flexion_deg",         "forearm_pronation_deg", "wrist_extension_deg",
    "wrist_ulnar_deviation_deg", "fingers_flexion_deg"};

Prior prior_of(const limb::LimbSize& size, const std::map<std::string, double>& pose_deg) {
  Prior prior;
  prior.size_mean = sizes_of(size.mean_scale());
  prior.size_covariance = kTape * kTape * Eigen::Matrix<double, kSizes, kSizes>::Identity();
  for (const limb::SizedLimb& limb : size.sample(kSamples, kSeed)) {
    const Sizes off = sizes_of(limb.scale) - prior.size_mean;
    prior.size_covariance += off * off.transpose() / kSamples;
  }
  prior.angle_mean = angles_of(limb::pose_from(pose_deg));
  for (int k = 0; k < kAngles; ++k) {
    const char* key = kAngleKeys[static_cast<std::size_t>(k)];
    const double otherwise_deg = k == kAngles - 1 ? kFist_deg : kOtherAngle_deg;
    prior.angle_sd[k] = kDegree * (pose_deg.contains(key) ? kGivenAngle_deg : otherwise_deg);
  }
  return prior;
}

}  // namespace endplate::scan
