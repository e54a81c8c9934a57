#include "models/calibration/approach_prediction.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <utility>

#include "models/limb/fit_summary.hpp"

namespace endplate::calibration {

using incision::ApproachMeasure;
using incision::LimbDistance;

Expected<FittedLimb> shipped_fit(const evidence::DataPackage& package) {
  auto atlas = limb::Atlas::fitted(package);
  if (!atlas) return std::unexpected(atlas.error());
  const auto summary = limb::FitSummary::from(package);
  FittedLimb fit{
      std::move(*atlas), summary.inflation, summary.between_studies, summary.between_limbs, {}, {}};
  for (const auto& [id, measure] : summary.measures) fit.measure_sd_mm[id] = measure.model_sd_mm;
  for (const auto& [id, sd_mm] : summary.knot_sd_mm) fit.point_sd_mm[id] = sd_mm;
  return fit;
}

FittedLimb fitted_limb(const limb::Atlas& unfitted, const LeftOutFit& left_out) {
  FittedLimb fit{apply(unfitted, left_out.fit.state),
                 left_out.inflation,
                 left_out.spread.between_studies(),
                 left_out.spread.between_limbs(),
                 {},
                 {}};
  for (const Observation& o : left_out.rest) {
    const limb::NerveMeasure& measure = unfitted.measures()[o.measure];
    fit.measure_sd_mm[measure.id] = left_out.fit.predicted_sd_mm[o.measure];
    for (const auto& point : {measure.point, measure.other}) {
      if (!point) continue;
      fit.point_sd_mm[unfitted.courses()[measure.course].points[*point].id] =
          left_out.fit.knot_sd_mm[measure.course][*point];
    }
  }
  return fit;
}

std::optional<LimbDistance> predicted(const ApproachMeasure& m, const FittedLimb& fit,
                                      const limb::LimbJoints& joints,
                                      const limb::BodyEnvelope& envelope) {
  if (m.track) return std::nullopt;
  double model_sd_mm = 0.0;
  for (const auto& point : {m.measure.point, m.measure.other}) {
    if (!point) continue;
    const auto held = fit.point_sd_mm.find(fit.atlas.courses()[m.measure.course].points[*point].id);
    if (held == fit.point_sd_mm.end()) return std::nullopt;
    model_sd_mm = std::hypot(model_sd_mm, held->second);
  }
  const auto observed = fit.measure_sd_mm.find(m.fitted_as);
  double landmark_sd_mm = 0.0;
  if (observed != fit.measure_sd_mm.end()) {
    model_sd_mm = observed->second;
  } else if (const auto* landmark = fit.atlas.landmarks().find(m.measure.landmark)) {
    landmark_sd_mm = landmark->sd_mm;
  }
  const auto taken = incision::taken_mm(m, fit.atlas, joints, envelope);
  if (!taken) return std::nullopt;
  const double size_mm = std::abs(*taken);
  const double error_mm = fit.inflation * std::hypot(model_sd_mm, fit.between_studies.at(size_mm));
  return LimbDistance::normal(*taken,
                              std::hypot(error_mm, landmark_sd_mm, fit.between_limbs.at(size_mm)));
}

Expected<std::vector<ApproachPrediction>> predict_with_shipped_fit(
    const evidence::DataPackage& package, const std::vector<ApproachMeasure>& measures) {
  const auto joints = limb::LimbJoints::from(package);
  if (!joints) return std::unexpected(joints.error());
  const auto envelope = limb::BodyEnvelope::from(package);
  if (!envelope) return std::unexpected(envelope.error());
  const auto tree = anatomy::NerveTree::from(package);
  if (!tree) return std::unexpected(tree.error());
  const auto fit = shipped_fit(package);
  if (!fit) return std::unexpected(fit.error());
  auto samples =
      incision::track_samples_mm(package, *tree, measures, kApproachLimbs, kApproachSeed);
  if (!samples) return std::unexpected(samples.error());
  std::vector<ApproachPrediction> predictions(measures.size());
  for (std::size_t i = 0; i < measures.size(); ++i) {
    predictions[i].full = measures[i].track
                              ? std::optional(LimbDistance::of_samples(std::move((*samples)[i])))
                              : predicted(measures[i], *fit, *joints, *envelope);
    if (measures[i].fit_study.empty()) predictions[i].without = predictions[i].full;
  }
  return predictions;
}

std::optional<Error> predict_without_studies(const evidence::DataPackage& package,
                                             const limb::Atlas& unfitted, const FitState& start,
                                             const std::vector<ApproachMeasure>& measures,
                                             std::vector<ApproachPrediction>& predictions) {
  const auto joints = limb::LimbJoints::from(package);
  if (!joints) return joints.error();
  const auto envelope = limb::BodyEnvelope::from(package);
  if (!envelope) return envelope.error();
  std::set<std::string> names;
  for (const ApproachMeasure& m : measures) {
    if (!m.fit_study.empty()) names.insert(m.fit_study);
  }
  const std::vector<std::string> studies(names.begin(), names.end());
  const evidence::Table& distances = package.table("landmark_distances");
  std::vector<std::optional<Error>> errors(studies.size());
  tbb::parallel_for(std::size_t{0}, studies.size(), [&](std::size_t s) {
    const auto left_out = fit_without(unfitted, distances, start, studies[s]);
    if (!left_out) {
      errors[s] = left_out.error();
      return;
    }
    const FittedLimb fit = fitted_limb(unfitted, *left_out);
    for (std::size_t i = 0; i < measures.size(); ++i) {
      if (measures[i].fit_study != studies[s]) continue;
      // The parameters of its points are those of this fit.
      predictions[i].without = predicted(measures[i], fit, *joints, *envelope);
    }
  });
  for (const auto& error : errors) {
    if (error) return error;
  }
  return std::nullopt;
}

std::vector<ApproachPrediction> shipped_predictions(const evidence::DataPackage& package,
                                                    const std::vector<ApproachMeasure>& measures) {
  std::map<std::string, ApproachPrediction, std::less<>> by_row;
  for (const evidence::Row row : package.table("approach_predicted")) {
    ApproachPrediction& p = by_row[std::string(row.text("row"))];
    p.full = LimbDistance{
        *row.number("full_mm"), 0.0, *row.number("full_low_mm"), *row.number("full_high_mm"), {}};
    if (const auto mean_mm = row.number("without_mm")) {
      p.without = LimbDistance{*mean_mm,
                               *row.number("without_sd_mm"),
                               *row.number("without_low_mm"),
                               *row.number("without_high_mm"),
                               {}};
    }
  }
  std::vector<ApproachPrediction> predictions;
  for (const ApproachMeasure& m : measures) predictions.push_back(by_row[m.published.row]);
  return predictions;
}

std::optional<bool> within_printed(const ApproachMeasure& m,
                                   const std::optional<LimbDistance>& limb) {
  return limb ? m.published.holds(limb->mean_mm) : std::nullopt;
}

std::optional<bool> mean_covered(const ApproachMeasure& m,
                                 const std::optional<LimbDistance>& limb) {
  if (!limb || !m.published.mean_mm) return std::nullopt;
  return limb->low_mm <= *m.published.mean_mm && *m.published.mean_mm <= limb->high_mm;
}

ApproachShares approach_shares(const std::vector<ApproachMeasure>& measures,
                               const std::vector<ApproachPrediction>& predictions, bool full) {
  ApproachShares s;
  s.expressed = measures.size();
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const auto& limb = full ? predictions[i].full : predictions[i].without;
    if (!limb) continue;
    ++s.predicted;
    if (const auto holds = within_printed(measures[i], limb)) {
      ++s.scored;
      s.within += *holds ? 1 : 0;
    }
    if (const auto covered = mean_covered(measures[i], limb)) {
      ++s.with_mean;
      s.covered += *covered ? 1 : 0;
    }
  }
  return s;
}

double expected_within(const std::vector<ApproachMeasure>& measures,
                       const std::vector<ApproachPrediction>& predictions,
                       const evidence::ScaleCurve& between_studies) {
  double expected = 0.0;
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const incision::Published& p = measures[i].published;
    if (!within_printed(measures[i], predictions[i].without)) continue;
    const bool by_sd = p.mean_mm && p.sd_mm;
    const double low_mm = by_sd ? *p.mean_mm - *p.sd_mm : *p.min_mm;
    const double high_mm = by_sd ? *p.mean_mm + *p.sd_mm : *p.max_mm;
    const double mean_mm = p.mean_mm.value_or((low_mm + high_mm) / 2.0);
    const double sampling_mm = by_sd && p.limbs ? *p.sd_mm / std::sqrt(*p.limbs) : 0.0;
    const boost::math::normal true_mean(
        mean_mm, std::hypot(between_studies.at(std::abs(mean_mm)), sampling_mm));
    expected += cdf(true_mean, high_mm) - cdf(true_mean, low_mm);
  }
  return expected;
}

}  // namespace endplate::calibration
