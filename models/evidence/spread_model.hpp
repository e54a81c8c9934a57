#pragma once
// What the whole table says about spread, for the quantities that say too little themselves.
#include <span>
#include <string>
#include <vector>

#include "models/evidence/quantity.hpp"
#include "models/evidence/scale_curve.hpp"
#include "models/evidence/study_effect.hpp"
#include "models/evidence/tau_mixture.hpp"

namespace endplate::evidence {

class SpreadModel {
 public:
  // Estimated from the distances among `quantities` (diameters and prevalences aside) in three
  // steps: the spread between limbs from every row that prints one, by maximum likelihood; the
  // number of limbs of a row that states none (the lower quartile of those stated); the spread
  // between studies from every quantity of two or more studies, by marginal maximum likelihood
  // (expectation and maximisation over the restricted likelihood of tau). Rows of `without_study`
  // are set aside, which makes a hold-out honest.
  static SpreadModel estimate(const std::vector<Quantity>& quantities,
                              const std::string& without_study = "");

  // Standard deviation between limbs at a distance of d mm, for a row that prints none.
  const ScaleCurve& between_limbs() const { return between_limbs_; }
  // Standard deviation between studies at a distance of d mm, and how much it varies by quantity.
  const ScaleCurve& between_studies() const { return between_studies_; }
  LogNormalPrior tau_prior(double d_mm) const;
  Imputation imputation() const;

  // Correlation of the errors that one study makes in two different quantities (one-way analysis of
  // variance of standardised errors): for whoever fits many quantities at once.
  double study_intraclass_correlation() const { return intraclass_correlation_; }

  std::size_t rows_with_spread() const { return rows_with_spread_; }
  std::size_t quantities_with_studies() const { return quantities_with_studies_; }

 private:
  ScaleCurve between_limbs_;
  ScaleCurve between_studies_;
  double assumed_n_ = 0.0;
  double intraclass_correlation_ = 0.0;
  std::size_t rows_with_spread_ = 0;
  std::size_t quantities_with_studies_ = 0;
};

// Size on which the spread of a quantity depends: the mean of the studies' distances, signs aside.
double size_mm(std::span<const StudyEffect> studies);

// Means and their sampling variances, for random_effects().
std::vector<Effect> effects_of(std::span<const StudyEffect> studies);

}  // namespace endplate::evidence
