#include "models/evidence/pool.hpp"

#include <algorithm>
#include <cmath>

namespace endplate::evidence {
namespace {

struct LimbSpread {
  double sd_mm = 0.0;
  bool imputed = false;
};

// Of the studies that tell it; imputed only where none does.
LimbSpread between_limbs(const std::vector<StudyEffect>& studies, double d_mm,
                         const SpreadModel& spread) {
  double squares = 0.0;
  double degrees = 0.0;
  for (const StudyEffect& s : studies) {
    if (s.sd_source == SpreadSource::imputed || s.n <= 1.0) continue;
    squares += (s.n - 1.0) * s.sd_mm * s.sd_mm;
    degrees += s.n - 1.0;
  }
  if (degrees > 0.0) return {std::sqrt(squares / degrees), false};
  return {spread.between_limbs().at(d_mm), true};
}

Provenance weakest(const Quantity& quantity) {
  Provenance result = Provenance::read;
  for (const Measurement& row : quantity.rows) {
    if (row.left_out.empty()) result = std::max(result, row.provenance);
  }
  return result;
}

}  // namespace

std::optional<PooledQuantity> pool(const Quantity& quantity, const SpreadModel& spread) {
  if (quantity.measure == Measure::prevalence) return std::nullopt;
  auto studies = study_effects(quantity, spread.imputation());
  if (studies.empty()) return std::nullopt;

  const auto effects = effects_of(studies);
  const double d_mm = size_mm(studies);
  const LogNormalPrior prior = spread.tau_prior(d_mm);
  TauMixture mixture(effects, prior);
  const LimbSpread limbs = between_limbs(studies, d_mm, spread);

  Estimate estimate;
  estimate.mean = mixture.mean();
  estimate.standard_error = mixture.standard_error();
  estimate.between_study_sd = mixture.median_tau();
  estimate.between_limb_sd = limbs.sd_mm;
  estimate.unit = "mm";
  estimate.provenance = weakest(quantity);
  for (const StudyEffect& s : studies) {
    estimate.evidence.insert(estimate.evidence.end(), s.rows.begin(), s.rows.end());
    if (s.n_assumed) {
      estimate.assumptions.push_back(s.study +
                                     " states no number of limbs: taken as the lower quartile of "
                                     "the numbers that other rows state");
    }
  }
  if (limbs.imputed) {
    estimate.assumptions.push_back(
        "no row prints the spread between limbs: taken from the fit over the rows that do");
  }

  auto weights = mixture.weights();
  return PooledQuantity{std::move(studies),
                        std::move(weights),
                        std::move(estimate),
                        random_effects(effects, TauMethod::reml),
                        random_effects(effects, TauMethod::dersimonian_laird),
                        random_effects(effects, TauMethod::paule_mandel),
                        prior.median,
                        std::move(mixture)};
}

}  // namespace endplate::evidence
