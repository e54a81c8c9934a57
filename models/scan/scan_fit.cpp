#include "models/scan/scan_fit.hpp"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "geometry/point_spread.hpp"
#include "geometry/similarity.hpp"
#include "models/core/summary.hpp"

namespace endplate::scan {
namespace {

using Eigen::Vector3d;
using Points = std::vector<Vector3d>;

constexpr std::size_t kLeastLandmarks = 4;
// Of the landmarks' extent along the limb: thinner than this in any direction, a pick's error tells
// the front from the back (assumed).
constexpr double kLeastThickness = 0.02;
constexpr int kLandmarkRounds = 3;
// How far from the scan a vertex may lie to be matched, round by round; then the last one holds.
constexpr double kReach_mm[]{30.0, 20.0, 14.0, 10.0, 8.0, 8.0};
constexpr double kHuber_mm = 3.0;
constexpr double kSameWay = 0.5;  // cosine between the outward directions
constexpr int kSplineRounds = 3;
constexpr double kBesideLandmark_mm = 3.0;

Problem flat(std::string what) {
  return {"--scan-landmarks", std::move(what),
          "Pick landmarks on several sides of the limb: both epicondyles, the olecranon tip, both "
          "styloids, the pisiform and the edges of the acromion."};
}

Points normals_of(const Points& vertices, const std::vector<std::array<std::uint32_t, 3>>& faces) {
  Points normals(vertices.size(), Vector3d::Zero());
  for (const auto& [a, b, c] : faces) {
    const Vector3d twice = (vertices[b] - vertices[a]).cross(vertices[c] - vertices[a]);
    for (const std::uint32_t v : {a, b, c}) normals[v] += twice;
  }
  for (Vector3d& normal : normals) normal.normalize();
  return normals;
}

double landmark_sd_mm(const ScanLandmark& landmark) {
  return std::hypot(kPicking_mm, landmark.sd_mm);
}

double root_mean_square(const std::vector<double>& values) {
  if (values.empty()) return 0.0;
  double squares = 0.0;
  for (const double value : values) squares += value * value;
  return std::sqrt(squares / static_cast<double>(values.size()));
}

double smoothing_mm(double sd_mm) {
  return sd_mm * sd_mm / kRoughness_mm;
}

}  // namespace

ScanFitter::ScanFitter(const StandardLimb& limb, const geometry::NearestSurface& surface,
                       Prior prior)
    : limb_(&limb),
      surface_(&surface),
      prior_(std::move(prior)),
      skin_(limb, scale_of(prior_.size_mean)),
      spread_(spread_vertices(limb, kVertices)) {}

Vector3d ScanFitter::on_skin_mm(const Vector3d& bone_mm, const Points& skin_mm) const {
  // The nearest triangle has a corner hardly farther away than the nearest vertex.
  constexpr double kLongestEdge_mm = 25.0;
  double nearest = std::numeric_limits<double>::infinity();
  for (const Vector3d& p : skin_mm) nearest = std::min(nearest, (p - bone_mm).norm());
  geometry::TriangleMesh part;
  for (const auto& t : skin_.triangles()) {
    if ((skin_mm[t[0]] - bone_mm).norm() > nearest + kLongestEdge_mm) continue;
    const auto first = static_cast<std::uint32_t>(part.vertices_mm.size());
    for (const std::uint32_t v : t) part.vertices_mm.push_back(skin_mm[v]);
    part.triangles.push_back({first, first + 1, first + 2});
  }
  return geometry::NearestSurface(part).nearest(bone_mm).position_mm;
}

Points ScanFitter::landmarks_mm(const std::vector<Pick>& picks, const PlacedLimb& placed,
                                const Points& skin_mm) const {
  Points result;
  for (const Pick& pick : picks) {
    const ScanLandmark& landmark = limb_->landmarks().all()[pick.landmark];
    const Vector3d bone = placed.to_scan * landmark.posed_mm(placed.frames, placed.space);
    result.push_back(on_skin_mm(bone, skin_mm));
  }
  return result;
}

Vector3d ScanFitter::landmark_mm(std::size_t landmark, const LimbState& state) const {
  const PlacedLimb placed = limb_->place(state);
  return landmarks_mm({Pick{landmark, Vector3d::Zero()}}, placed, skin_.placed_mm(placed)).front();
}

Expected<LimbState> ScanFitter::start_of(const std::vector<Pick>& picks) const {
  if (picks.size() < kLeastLandmarks) {
    return std::unexpected(Error::input(flat(
        fmt::format("{} landmarks are picked, {} are needed", picks.size(), kLeastLandmarks))));
  }
  LimbState start;
  start.scale = scale_of(prior_.size_mean);
  start.pose = pose_of(prior_.angle_mean);
  Points seen;
  for (const Pick& pick : picks) seen.push_back(pick.position_mm);
  const PlacedLimb placed = limb_->place(start);
  const Points ours = landmarks_mm(picks, placed, skin_.placed_mm(placed));
  for (const Points& points : {ours, seen}) {
    const int spans = geometry::dimension_of(geometry::columns_of(points), kLeastThickness);
    if (spans == 3) continue;
    return std::unexpected(Error::input(
        flat(spans < 2 ? "the landmarks lie on one line" : "the landmarks lie in one plane")));
  }
  const auto similarity = geometry::fit_similarity(ours, seen);
  if (!similarity) return std::unexpected(Error::input(flat(similarity.error().what)));
  const auto& [rotation, scale, translation_mm] = similarity->similarity;
  start.scale.arm *= scale;
  start.scale.forearm *= scale;
  start.scale.hand *= scale;
  start.scale.breadth *= scale;
  start.humerus_to_scan = Eigen::Translation3d(translation_mm) * Eigen::Quaterniond(rotation);
  return start;
}

PoseFit ScanFitter::fitted_pose(const std::vector<Pick>& picks, const LimbState& start,
                                bool surface) const {
  const SkinModel none = skin_.sample({});
  const SkinModel sample = skin_.sample(spread_);
  PoseFit fit;
  fit.state = start;
  const int rounds = kLandmarkRounds + (surface ? static_cast<int>(std::size(kReach_mm)) : 0);
  for (int round = 0; round < rounds; ++round) {
    const PlacedLimb placed = limb_->place(fit.state);
    const Points skin_mm = skin_.placed_mm(placed);
    const Points ours = landmarks_mm(picks, placed, skin_mm);
    std::vector<SeenLandmark> landmarks;
    for (std::size_t i = 0; i < picks.size(); ++i) {
      const ScanLandmark& landmark = limb_->landmarks().all()[picks[i].landmark];
      const Vector3d bone = placed.to_scan * landmark.posed_mm(placed.frames, placed.space);
      landmarks.push_back({picks[i].landmark,
                           fit.state.humerus_to_scan.linear().transpose() * (ours[i] - bone),
                           picks[i].position_mm, landmark_sd_mm(landmark)});
    }
    std::vector<TouchedPlane> planes;
    if (round >= kLandmarkRounds) {
      const double reach_mm = kReach_mm[round - kLandmarkRounds];
      const Points normals = normals_of(skin_mm, skin_.triangles());
      for (std::size_t i = 0; i < spread_.size(); ++i) {
        const auto place = surface_->nearest(skin_mm[spread_[i]]);
        if (place.on_rim || place.distance_mm > reach_mm ||
            place.normal.dot(normals[spread_[i]]) < kSameWay) {
          continue;
        }
        const double weight = std::min(1.0, kHuber_mm / std::max(place.distance_mm, 1e-9));
        planes.push_back({i, place.position_mm, place.normal, kPlane_mm / std::sqrt(weight)});
      }
    }
    fit = fit_pose(*limb_, planes.empty() ? none : sample, prior_, landmarks, planes, fit.state);
  }
  return fit;
}

std::vector<double> ScanFitter::variances_mm2(const ScanFit& fit, const PointsOf& points_of) {
  constexpr double kStep = 1e-4;
  const Points points = points_of(fit.state);
  std::vector<Eigen::Matrix<double, 3, kUnknowns>> slopes(points.size());
  for (Eigen::Index k = 0; k < kUnknowns; ++k) {
    const Points high = points_of(moved(fit.state, Unknowns(kStep * Unknowns::Unit(k))));
    const Points low = points_of(moved(fit.state, Unknowns(-kStep * Unknowns::Unit(k))));
    for (std::size_t i = 0; i < points.size(); ++i) {
      slopes[i].col(k) = (high[i] - low[i]) / (2.0 * kStep);
    }
  }
  std::vector<double> variances;
  for (std::size_t i = 0; i < points.size(); ++i) {
    variances.push_back((slopes[i] * fit.covariance * slopes[i].transpose()).trace() +
                        3.0 * kRoughness_mm * fit.variance(points[i]));
  }
  return variances;
}

Expected<double> ScanFitter::landmark_rms_mm(const std::vector<Pick>& picks) const {
  const auto start = start_of(picks);
  if (!start) return std::unexpected(start.error());
  const PoseFit fit = fitted_pose(picks, *start, false);
  double squares = 0.0;
  for (const Pick& pick : picks) {
    squares += (landmark_mm(pick.landmark, fit.state) - pick.position_mm).squaredNorm();
  }
  return std::sqrt(squares / static_cast<double>(picks.size()));
}

Expected<ScanFit> ScanFitter::fit(const std::vector<Pick>& picks, Method method) const {
  const auto start = start_of(picks);
  if (!start) return std::unexpected(start.error());
  ScanFit result;
  result.start = *start;
  result.state = *start;
  result.covariance.setZero();
  if (method != Method::similarity_and_spline) {
    const PoseFit pose = fitted_pose(picks, *start, method == Method::fitted_to_surface);
    result.state = pose.state;
    result.covariance = pose.covariance;
  }

  const PlacedLimb placed = limb_->place(result.state);
  const Points skin_mm = skin_.placed_mm(placed);
  Points from = landmarks_mm(picks, placed, skin_mm);
  Points to;
  std::vector<double> smoothing;
  const bool plain = method == Method::similarity_and_spline;
  for (const Pick& pick : picks) {
    to.push_back(pick.position_mm);
    const ScanLandmark& landmark = limb_->landmarks().all()[pick.landmark];
    smoothing.push_back(plain ? 0.0 : smoothing_mm(landmark_sd_mm(landmark)));
  }
  const auto affine = plain ? geometry::AffinePart::free : geometry::AffinePart::identity;
  const auto fit_spline =
      [&](const Points& a, const Points& b,
          const std::vector<double>& each) -> Expected<geometry::ThinPlateSpline> {
    auto warp = geometry::ThinPlateSpline::fit(a, b, each, affine);
    if (!warp) return std::unexpected(Error::input(flat(warp.error().what)));
    return *std::move(warp);
  };
  auto warp = fit_spline(from, to, smoothing);
  if (!warp) return std::unexpected(warp.error());

  if (method == Method::fitted_to_surface) {
    const Points normals = normals_of(skin_mm, skin_.triangles());
    const std::size_t landmarks = from.size();
    for (int round = 0; round < kSplineRounds; ++round) {
      from.resize(landmarks);
      to.resize(landmarks);
      smoothing.resize(landmarks);
      std::vector<double> distances_mm;
      for (const std::uint32_t v : spread_) {
        const Vector3d& p = skin_mm[v];
        const auto place = surface_->nearest((*warp)(p));
        if (place.on_rim || place.distance_mm > kReach_mm[std::size(kReach_mm) - 1] ||
            place.normal.dot(normals[v]) < kSameWay) {
          continue;
        }
        distances_mm.push_back(place.distance_mm);
        // The spline has no two points at one place, and a landmark's own pick says more.
        const auto near = std::ranges::any_of(
            from.begin(), from.begin() + static_cast<std::ptrdiff_t>(landmarks),
            [&](const Vector3d& q) { return (p - q).norm() < kBesideLandmark_mm; });
        if (near) continue;
        from.push_back(p);
        to.push_back(place.position_mm);
        smoothing.push_back(smoothing_mm(kNearest_mm));
      }
      result.matched_share =
          static_cast<double>(distances_mm.size()) / static_cast<double>(spread_.size());
      result.surface_rms_mm = root_mean_square(distances_mm);
      if (!distances_mm.empty()) result.surface_p95_mm = summarise_sample(distances_mm).p95;
      warp = fit_spline(from, to, smoothing);
      if (!warp) return std::unexpected(warp.error());
    }
  }
  result.warp = *std::move(warp);
  auto variance = geometry::ThinPlateVariance::of(from, smoothing, affine);
  if (!variance) return std::unexpected(Error::input(flat(variance.error().what)));
  result.variance = *std::move(variance);
  return result;
}

}  // namespace endplate::scan
