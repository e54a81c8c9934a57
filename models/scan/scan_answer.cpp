#include "models/scan/scan_answer.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "models/limb/limb_size.hpp"
#include "models/scan/fit_prior.hpp"

namespace endplate::scan {
namespace {

using Eigen::Vector3d;

// A pick is made on the surface; one farther off was made on another surface or in another unit
// (assumed).
constexpr double kFarthestPick_mm = 10.0;
// The other side is meant when it fits so much better and the stated one does not fit (assumed).
constexpr double kOtherSideShare = 0.6;
constexpr double kBadFit_mm = 8.0;
// A landmark missed by more than this many standard deviations, or an angle off by more, is told.
constexpr double kFarOff = 3.0;
constexpr double kLeastMatched = 0.8;

struct LeftOut {
  double missed_mm = 0.0;
  double expected_mm2 = 0.0;  // of the square of it
};

// Without each landmark in turn.
std::vector<std::optional<LeftOut>> leave_one_out(const StandardLimb& standard,
                                                  const ScanFitter& fitter,
                                                  const std::vector<Pick>& picks) {
  std::vector<std::optional<LeftOut>> result(picks.size());
  tbb::parallel_for(std::size_t{0}, picks.size(), [&](std::size_t i) {
    std::vector<Pick> others = picks;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    const auto fit = fitter.fit(others, Method::fitted_to_surface);
    if (!fit) return;
    const std::size_t index = picks[i].landmark;
    const ScanLandmark& landmark = standard.landmarks().all()[index];
    const auto bone = [&](const LimbState& state) {
      const PlacedLimb placed = standard.place(state);
      return std::vector<Vector3d>{placed.to_scan * landmark.posed_mm(placed.frames, placed.space)};
    };
    LeftOut left_out;
    left_out.missed_mm = (fitter.landmark_mm(index, *fit) - picks[i].position_mm).norm();
    left_out.expected_mm2 = ScanFitter::variances_mm2(*fit, bone).front() +
                            3.0 * (kPicking_mm * kPicking_mm + landmark.sd_mm * landmark.sd_mm);
    result[i] = left_out;
  });
  return result;
}

Expected<void> check_side(const evidence::DataPackage& package, const ScanFitter& fitter, Side side,
                          const Prior& prior, const geometry::NearestSurface& surface,
                          const std::vector<Pick>& picks) {
  const auto own_mm = fitter.landmark_rms_mm(picks);
  if (!own_mm) return std::unexpected(own_mm.error());
  if (*own_mm < kBadFit_mm) return {};
  const Side other_side = side == Side::right ? Side::left : Side::right;
  const auto other = StandardLimb::from(package, other_side);
  if (!other) return std::unexpected(other.error());
  const auto other_mm = ScanFitter(*other, surface, prior).landmark_rms_mm(picks);
  if (!other_mm || *other_mm > kOtherSideShare * *own_mm) return {};
  return std::unexpected(Error::input(
      {"--scan-landmarks",
       fmt::format("the landmarks are those of a {} limb ({:.0f} mm off on average), not of a {} "
                   "one ({:.0f} mm)",
                   to_string(other_side), *other_mm, to_string(side), *own_mm),
       "Correct the side of the case, or the picks; some scanners mirror what they export."}));
}

void add_warnings(const Prior& prior, const ScanFit& fit,
                  const std::vector<std::optional<LeftOut>>& left_out, ScanAnswer& answer) {
  for (std::size_t i = 0; i < left_out.size(); ++i) {
    if (!left_out[i]) continue;
    const double expected_mm = std::sqrt(left_out[i]->expected_mm2);
    if (left_out[i]->missed_mm < kFarOff / std::numbers::sqrt3 * expected_mm) continue;
    answer.warnings.push_back(
        fmt::format("{}: the other landmarks and the surface put it {:.0f} mm from the pick; about "
                    "{:.0f} mm is usual. Check the pick and its name.",
                    answer.landmarks[i].name, left_out[i]->missed_mm, expected_mm));
  }
  const Angles off = angles_of(fit.state.pose) - prior.angle_mean;
  for (int k = 0; k < kAngles; ++k) {
    if (std::abs(off[k]) < kFarOff * prior.angle_sd[k]) continue;
    const char* key = kAngleKeys[static_cast<std::size_t>(k)];
    answer.warnings.push_back(
        fmt::format("{}: the scan shows {:.0f} degrees, {:.0f} were expected. Check the pose.", key,
                    answer.pose_deg.at(key), prior.angle_mean[k] * 180.0 / std::numbers::pi));
  }
  if (answer.matched_share < kLeastMatched) {
    answer.warnings.push_back(fmt::format(
        "Only {:.0f} % of the limb's skin has a place on the scan; beyond it the nerves "
        "rest on landmarks and proportions.",
        100.0 * answer.matched_share));
  }
  if (answer.widened_by > 1.0) {
    answer.warnings.push_back(
        fmt::format("Landmarks left out were missed by {:.1f} times what is expected; every added "
                    "uncertainty is widened by that.",
                    answer.widened_by));
  }
}

}  // namespace

Expected<std::vector<Pick>> picks_on_surface(const std::vector<PickedLandmark>& picked,
                                             geometry::LengthUnit unit,
                                             const geometry::NearestSurface& surface,
                                             const ScanLandmarks& landmarks) {
  std::vector<Pick> picks;
  std::vector<Problem> problems;
  for (const PickedLandmark& pick : picked) {
    const auto place = surface.nearest(geometry::mm_per(unit) * pick.position);
    if (place.distance_mm > kFarthestPick_mm) {
      problems.push_back(
          {fmt::format("--scan-landmarks, {}", landmarks.all()[pick.landmark].name),
           fmt::format("the pick lies {:.0f} mm from the surface", place.distance_mm),
           fmt::format("Pick it on the surface, in the coordinates and the unit ({}) of the scan's "
                       "file.",
                       to_string(unit))});
    }
    picks.push_back({pick.landmark, place.position_mm});
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::input, std::move(problems)});
  return picks;
}

Expected<ScanAnswer> warp_onto_scan(const evidence::DataPackage& package,
                                    const casefile::Limb& limb, const ScanSurface& surface,
                                    const std::vector<PickedLandmark>& picked) {
  const auto size = limb::LimbSize::from(package, limb);
  if (!size) return std::unexpected(size.error());
  const auto standard = StandardLimb::from(package, limb.side);
  if (!standard) return std::unexpected(standard.error());
  const geometry::NearestSurface scan(surface.mesh);
  const auto picks = picks_on_surface(picked, surface.unit, scan, standard->landmarks());
  if (!picks) return std::unexpected(picks.error());
  const Prior prior = prior_of(*size, limb.pose_deg);
  const ScanFitter fitter(*standard, scan, prior);
  if (auto side = check_side(package, fitter, limb.side, prior, scan, *picks); !side) {
    return std::unexpected(side.error());
  }
  const auto fit = fitter.fit(*picks, Method::fitted_to_surface);
  if (!fit) return std::unexpected(fit.error());
  const auto left_out = leave_one_out(*standard, fitter, *picks);

  ScanAnswer answer;
  answer.side = limb.side;
  answer.unit = surface.unit;
  answer.triangles = surface.mesh.triangles.size();
  answer.notes = surface.notes;
  answer.scale = fit->state.scale;
  answer.matched_share = fit->matched_share;
  answer.surface_rms_mm = fit->surface_rms_mm;
  answer.surface_p95_mm = fit->surface_p95_mm;
  const Angles angles = angles_of(fit->state.pose);
  for (int k = 0; k < kAngles; ++k) {
    answer.pose_deg[kAngleKeys[static_cast<std::size_t>(k)]] = angles[k] * 180.0 / std::numbers::pi;
  }
  double squares = 0.0;
  std::size_t counted = 0;
  for (std::size_t i = 0; i < picks->size(); ++i) {
    const auto& [index, place_mm] = (*picks)[i];
    LandmarkResidual residual;
    residual.name = standard->landmarks().all()[index].name;
    residual.position_mm = place_mm;
    residual.from_surface_mm =
        (geometry::mm_per(surface.unit) * picked[i].position - place_mm).norm();
    residual.before_mm = (fitter.landmark_mm(index, fit->start) - place_mm).norm();
    residual.after_mm = (fitter.landmark_mm(index, *fit) - place_mm).norm();
    if (left_out[i]) {
      residual.left_out_mm = left_out[i]->missed_mm;
      squares += left_out[i]->missed_mm * left_out[i]->missed_mm / left_out[i]->expected_mm2;
      ++counted;
    }
    answer.landmarks.push_back(std::move(residual));
  }
  if (counted > 0) {
    answer.widened_by = std::max(1.0, std::sqrt(squares / static_cast<double>(counted)));
  }
  answer.lengths =
      fitted_lengths(*size, prior, *fit, answer.widened_by, *picks, standard->landmarks());
  const auto nerve_points = [&](const LimbState& state) {
    return standard->nerve_points_mm(state);
  };
  const auto places = nerve_points(fit->state);
  const auto variances = ScanFitter::variances_mm2(*fit, nerve_points);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const NervePoint& point = standard->nerve_points()[i];
    answer.nerves.push_back({point.id, point.nerve, point.name, point.segment, fit->warp(places[i]),
                             answer.widened_by * std::sqrt(variances[i] / 3.0)});
  }
  add_warnings(prior, *fit, left_out, answer);
  if (const auto told = with_lengths(package, limb, answer.lengths); !told) {
    for (FittedLength& length : answer.lengths) length.measured = false;
    answer.warnings.push_back("The lengths on the scan do not go with those of the case: " +
                              told.error().problems.front().what + '.');
  }
  return answer;
}

Expected<ScanAnswer> answer_scan(const evidence::DataPackage& package, const casefile::Limb& limb,
                                 const ScanRequest& request) {
  if (!limb.side_given) {
    return std::unexpected(Error::input(
        {"/limb/side", "the side of the scanned limb is not given",
         "Give a case file with \"side\": \"right\" or \"left\": a mirrored arm would be taken for "
         "its other side."}));
  }
  const auto landmarks = ScanLandmarks::from(package);
  if (!landmarks) return std::unexpected(landmarks.error());
  const auto picked = read_picked_landmarks(request.landmarks, *landmarks);
  if (!picked) return std::unexpected(picked.error());
  const auto surface = read_scan_surface(request.surface, request.unit);
  if (!surface) return std::unexpected(surface.error());
  return warp_onto_scan(package, limb, *surface, *picked);
}

}  // namespace endplate::scan
