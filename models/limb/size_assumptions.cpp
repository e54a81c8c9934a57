#include "models/limb/size_assumptions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>

#include "models/limb/segment_frames.hpp"
#include "models/limb/size_observation.hpp"

namespace endplate::limb {
namespace {

// The first age of a girth in limb_growth.csv.
constexpr double kFirstGirth_years = 3.0;

// The chance of lengths at least as far from the usual as these, for the sex that fits best.
double chance_of_misfit(const std::vector<const Conditioning*>& conditionings) {
  double chance = 0.0;
  for (const Conditioning* conditioning : conditionings) {
    if (conditioning->rank() == 0) return 1.0;
    const boost::math::chi_squared distribution(conditioning->rank());
    chance = std::max(chance,
                      boost::math::cdf(complement(distribution, conditioning->distance_squared())));
  }
  return chance;
}

}  // namespace

std::vector<std::string> size_assumptions(const casefile::Limb& limb, double chance_female) {
  std::vector<std::string> words;
  if (is_ledger_limb(limb)) {
    words.push_back(fmt::format(
        "Sex, age, stature and lengths are not given: the limb is the mean limb of the dissection "
        "series behind the published distances (arm {:g}, forearm {:g}, hand {:g} mm), with the "
        "spread of adults of both sexes.",
        kLedgerArm_mm, kLedgerForearm_mm, kLedgerHand_mm));
    return words;
  }
  if (!limb.sex) {
    words.push_back(fmt::format(
        "Sex is not given: both were taken as equally likely; what was given makes it {:.0f} % "
        "female.",
        100.0 * chance_female));
  }
  if (!limb.age_years) {
    words.emplace_back("Age is not given: an adult is assumed.");
  } else if (is_child(limb)) {
    words.emplace_back(
        "Child: means by age from surveys of the USA, 1975-77 and 2021-23; the ties between "
        "measures are those of adults (assumed).");
  }
  if (!limb.stature_mm && !limb.stature_percentile) {
    words.emplace_back("Stature is not given: the spread of statures at that age is taken.");
  }
  if (limb.measured_mm.empty() && limb.other_side_mm.empty()) {
    words.emplace_back("No length of the limb was measured: the lengths are expected ones.");
  } else {
    words.emplace_back("Given lengths are taken as exact.");
  }
  words.emplace_back(
      "The step from tape measures to the model's segments, breadths of elbow and wrist, and most "
      "ties between girths are assumed.");
  return words;
}

std::vector<std::string> size_warnings(const casefile::Limb& limb, const SizePrior& prior,
                                       const std::vector<const Conditioning*>& conditionings) {
  std::vector<std::string> words;
  if (is_child(limb)) {
    if (*limb.age_years < prior.youngest_years()) {
      words.push_back(
          fmt::format("{:g} years is below the youngest limbs measured, of {:g} years (Snyder et "
                      "al. 1977): from there they shrink with the length of the body (assumed).",
                      *limb.age_years, prior.youngest_years()));
    }
    if (*limb.age_years < kFirstGirth_years) {
      words.push_back(fmt::format(
          "No girths were found below {:g} years (Fryar et al. 2025): they shrink with the length "
          "of the body (assumed).",
          kFirstGirth_years));
    }
  } else if (limb.age_years && *limb.age_years > SizePrior::kOldestSurveyed_years) {
    words.push_back(fmt::format(
        "{:g} years is above the survey's {:g} (Gordon et al. 2014): the sizes of younger adults "
        "are taken.",
        *limb.age_years, SizePrior::kOldestSurveyed_years));
  }
  if (chance_of_misfit(conditionings) < 0.001) {
    words.emplace_back(
        "What is given of the size fits together in less than one limb in a thousand: measure "
        "again. If the lengths are right, what follows from them for the rest is a guess.");
  }
  return words;
}

}  // namespace endplate::limb
