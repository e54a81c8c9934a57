#include <algorithm>
#include <cmath>

#include "models/limb/case_limb.hpp"
#include "models/limb/case_limb_parts.hpp"
#include "models/limb/limb_normals.hpp"

namespace endplate::limb {
namespace {

// Keeps these random numbers apart from those of other questions asked with the same seed.
constexpr std::uint64_t kStream = 0x726f757465730001;
// Of points that were found on the patient.
constexpr std::uint64_t kFoundStream = 0x726f757465730002;

// Lengths of a limb against those of the mean one.
Eigen::Vector3d ratio_of(const SegmentScale& limb, const SegmentScale& mean) {
  return {limb.arm / mean.arm, limb.forearm / mean.forearm, limb.hand / mean.hand};
}

}  // namespace

std::vector<anatomy::NerveMetrics> CaseLimb::sample(int count, std::uint64_t seed) const {
  const std::vector<Level>& levels = parts_->levels;
  const std::vector<double>& lengths = parts_->layout.lengths_mm();
  std::vector<double> correlation(levels.size(), 0.0);  // with the level before, on its course
  for (std::size_t k = 1; k < levels.size(); ++k) {
    if (levels[k].course != levels[k - 1].course) continue;
    correlation[k] = level_correlation(levels[k - 1].arc_mm, levels[k].arc_mm);
  }
  // Log-normal, so that no length is negative, with the mean kept.
  std::vector<double> log_sd(lengths.size(), 0.0);
  for (std::size_t node = 0; node < lengths.size(); ++node) {
    if (lengths[node] <= 0.0) continue;
    const double variation = parts_->layout.length_sds_mm()[node] / lengths[node];
    log_sd[node] = std::sqrt(std::log1p(variation * variation));
  }

  const std::vector<SizedLimb> sizes = parts_->size.sample(count, seed);
  std::vector<anatomy::NerveMetrics> limbs(sizes.size(), metrics_);
  std::vector<double> levels_mm(levels.size());
  std::vector<double> lengths_mm(lengths.size());
  Eigen::VectorXd moved(static_cast<Eigen::Index>(levels.size()));
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const Eigen::Vector3d ratio = ratio_of(sizes[i].scale, parts_->frames.scale());
    LimbNormals normals(seed, kStream, static_cast<int>(i));
    for (std::size_t k = 0; k < levels.size(); ++k) {
      const auto at = static_cast<Eigen::Index>(k);
      const double rho = correlation[k];
      const double before = k == 0 ? 0.0 : moved[at - 1];
      moved[at] = rho * before + std::sqrt(1.0 - rho * rho) * normals.next();
    }
    if (!parts_->found.empty()) {
      LimbNormals of_points(seed, kFoundStream, static_cast<int>(i));
      Eigen::VectorXd drawn(2 * static_cast<Eigen::Index>(parts_->found.points().size()));
      for (double& normal : drawn) normal = of_points.next();
      moved = parts_->found.correct(moved, ratio, drawn);
    }
    for (std::size_t k = 0; k < levels.size(); ++k) {
      const Level& level = levels[k];
      const double length_mm = parts_->layout.courses()[level.course].total_parts_mm().dot(ratio);
      const double scale = ratio[static_cast<Eigen::Index>(level.segment)];
      levels_mm[k] = std::clamp(
          level.parts_mm.dot(ratio) + scale * level.sd_mm * moved[static_cast<Eigen::Index>(k)],
          0.0, length_mm);
    }
    keep_in_order(levels, levels_mm);
    for (std::size_t node = 0; node < lengths.size(); ++node) {
      if (lengths[node] <= 0.0) continue;
      const auto segment = static_cast<Eigen::Index>(parts_->layout.length_segment(node));
      const double sd = log_sd[node];
      lengths_mm[node] =
          ratio[segment] * lengths[node] * std::exp(sd * normals.next() - 0.5 * sd * sd);
    }
    parts_->layout.measure(levels_mm, lengths_mm, limbs[i]);
  }
  return limbs;
}

Expected<std::vector<double>> CaseLimb::sample_places_mm(const std::string& nerve,
                                                         const casefile::Place& at, int count,
                                                         std::uint64_t seed) const {
  const auto lesion = place(nerve, at);
  if (!lesion) return std::unexpected(lesion.error());
  const double mean_mm = lesion->at.from_start_mm;
  std::vector<double> places_mm;
  const auto* landmark = std::get_if<casefile::AtLandmark>(&at);
  const PassedLandmark* passed =
      landmark == nullptr ? nullptr : parts_->passed(lesion->at.nerve, landmark->landmark);
  if (passed != nullptr) {
    const double there_mm = passed->share * metrics_.length_mm[lesion->at.nerve];
    for (const anatomy::NerveMetrics& limb : sample(count, seed)) {
      const double length_mm = limb.length_mm[lesion->at.nerve];
      places_mm.push_back(
          std::clamp(passed->share * length_mm + mean_mm - there_mm, 0.0, length_mm));
    }
  } else if (landmark != nullptr) {
    // The landmark's level grows with the limb, the offset from it does not.
    const Stretch stretch = *parts_->layout.stretch(lesion->at.nerve);
    const std::vector<Level>& levels = parts_->layout.levels();
    const double sign = landmark->toward == casefile::Toward::distal ? 1.0 : -1.0;
    const double arc_mm = levels[stretch.from].arc_mm + mean_mm;
    const CaseLimbCourse& course = parts_->layout.courses()[stretch.course];
    const Eigen::Vector3d from_start = course.parts_at(arc_mm) - levels[stretch.from].parts_mm;
    const auto segment =
        static_cast<Eigen::Index>(segment_of(course.position_at(arc_mm), parts_->frames));
    for (const SizedLimb& limb : parts_->size.sample(count, seed)) {
      const Eigen::Vector3d ratio = ratio_of(limb.scale, parts_->frames.scale());
      const double offset = sign * landmark->offset_mm * (1.0 - ratio[segment]);
      places_mm.push_back(std::max(0.0, from_start.dot(ratio) + offset));
    }
  } else if (std::holds_alternative<casefile::AtBranch>(at)) {
    places_mm.assign(static_cast<std::size_t>(std::max(0, count)), mean_mm);
  } else {
    const double share = mean_mm / metrics_.length_mm[lesion->at.nerve];
    for (const anatomy::NerveMetrics& limb : sample(count, seed)) {
      places_mm.push_back(share * limb.length_mm[lesion->at.nerve]);
    }
  }
  return places_mm;
}

}  // namespace endplate::limb
