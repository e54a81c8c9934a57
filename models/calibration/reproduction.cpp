#include "models/calibration/reproduction.hpp"

#include <cmath>

namespace endplate::calibration {

double Reproduced::standard_deviations() const {
  return std::abs(model_mm - pooled_mm) / limb_sd_mm;
}

std::vector<Reproduced> reproduction(const limb::Atlas& atlas,
                                     const std::vector<Observation>& observations,
                                     const FitResult& fit,
                                     const evidence::ScaleCurve& between_studies) {
  const std::vector<Support> support = support_of(atlas, observations);
  std::vector<Reproduced> result;
  for (std::size_t m = 0; m < atlas.measures().size(); ++m) {
    Reproduced r;
    r.measure = m;
    r.model_mm = fit.predicted_mm[m];
    r.model_sd_mm = fit.predicted_sd_mm[m];
    r.support = support[m];
    double sum = 0.0;
    double weights = 0.0;
    double variance = 0.0;
    double limbs = 0.0;
    double precision = 0.0;
    for (std::size_t i = 0; i < observations.size(); ++i) {
      if (observations[i].measure != m) continue;
      const evidence::StudyEffect& effect = observations[i].effect;
      const double weight = std::pow(fit.observations[i].sigma_mm, -2.0);
      sum += weight * effect.mean_mm;
      weights += weight;
      const double tau = between_studies.at(std::abs(effect.mean_mm));
      precision += 1.0 / (tau * tau + std::pow(effect.standard_error_mm, 2.0));
      // Printed spreads outrank imputed ones.
      const bool printed = effect.sd_source != evidence::SpreadSource::imputed;
      if (printed && !r.sd_printed) {
        variance = 0.0;
        limbs = 0.0;
        r.sd_printed = true;
      }
      if (printed == r.sd_printed) {
        variance += effect.n * effect.sd_mm * effect.sd_mm;
        limbs += effect.n;
      }
      r.studies.push_back(effect.study);
    }
    if (r.studies.empty()) continue;
    r.pooled_mm = sum / weights;
    r.pooled_se_mm = 1.0 / std::sqrt(precision);
    r.limb_sd_mm = std::sqrt(variance / limbs);
    result.push_back(std::move(r));
  }
  return result;
}

Shares shares_of(const std::vector<Reproduced>& reproduced, std::optional<bool> printed) {
  Shares shares;
  for (const Reproduced& r : reproduced) {
    if (r.support == Support::free_point || (printed && r.sd_printed != *printed)) continue;
    ++shares.count;
    shares.within_one += r.standard_deviations() <= 1.0 ? 1 : 0;
    shares.within_two += r.standard_deviations() <= 2.0 ? 1 : 0;
  }
  return shares;
}

}  // namespace endplate::calibration
