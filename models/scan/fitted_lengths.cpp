#include "models/scan/fitted_lengths.hpp"

#include <algorithm>
#include <cmath>

#include "models/limb/segment_frames.hpp"

namespace endplate::scan {
namespace {

struct Length {
  const char* measure;
  double ledger_mm;
  Eigen::Index size;  // of Sizes
  double from;        // levels, as level_of()
  double to;
};
constexpr Length kLengths[]{
    {"acromion to lateral epicondyle", limb::kLedgerArm_mm, 0, -1.0, 0.0},
    {"interepicondylar line to bistyloid line", limb::kLedgerForearm_mm, 1, 0.0, 1.0},
    {"distal wrist crease to middle fingertip", limb::kLedgerHand_mm, 2, 1.0, 2.0}};

// What the case gives leaves a length no spread but that of its arithmetic.
constexpr double kGiven_mm = 0.5;
constexpr double kMeasuredShare = 0.5;
// Of a segment's length: landmarks so near to its end stand for it (assumed).
constexpr double kNearEnd = 0.15;

// Along the limb: -1 at the acromion, 0 at the epicondyles, 1 at the wrist, 2 at the fingertips.
double level_of(const ScanLandmark& landmark) {
  switch (landmark.segment) {
    case limb::Segment::humerus:
      return -landmark.place.fraction;
    case limb::Segment::forearm:
      return landmark.place.fraction;
    case limb::Segment::hand:
      break;
  }
  return 1.0 + landmark.place.fraction;
}

}  // namespace

std::vector<FittedLength> fitted_lengths(const limb::LimbSize& size, const Prior& prior,
                                         const ScanFit& fit, double widened_by,
                                         const std::vector<Pick>& picks,
                                         const ScanLandmarks& landmarks) {
  constexpr Eigen::Index kFirstSize = 6;  // of Unknowns
  const Sizes fitted = sizes_of(fit.state.scale);
  const auto picked_at = [&](double level) {
    return std::ranges::any_of(picks, [&](const Pick& pick) {
      return std::abs(level_of(landmarks.all()[pick.landmark]) - level) < kNearEnd;
    });
  };
  std::vector<FittedLength> lengths;
  for (const auto& [measure, ledger_mm, index, from, to] : kLengths) {
    FittedLength length;
    length.measure = measure;
    length.length_mm = ledger_mm * fitted[index];
    length.sd_mm =
        widened_by * ledger_mm * std::sqrt(fit.covariance(kFirstSize + index, kFirstSize + index));
    length.expected_mm = ledger_mm * prior.size_mean[index];
    length.expected_sd_mm = ledger_mm * std::sqrt(prior.size_covariance(index, index));
    length.given = size.sd_mm(measure) < kGiven_mm;
    length.measured = !length.given && picked_at(from) && picked_at(to) &&
                      length.sd_mm < kMeasuredShare * length.expected_sd_mm;
    lengths.push_back(std::move(length));
  }
  return lengths;
}

Expected<casefile::Limb> with_lengths(const evidence::DataPackage& package, casefile::Limb limb,
                                      const std::vector<FittedLength>& lengths) {
  for (const FittedLength& length : lengths) {
    if (!length.measured) continue;
    limb.measured_mm[length.measure] = std::round(length.length_mm);
    limb.measured_as[length.measure] = length.measure;
  }
  const auto size = limb::LimbSize::from(package, limb);
  if (!size) return std::unexpected(size.error());
  return limb;
}

}  // namespace endplate::scan
