#pragma once
// The published distances of approaches.csv as fits of the courses predict them: the full fit, and
// for a study that entered it the fit without that study.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "models/calibration/cross_validation.hpp"
#include "models/evidence/scale_curve.hpp"
#include "models/incision/approach_measures.hpp"
#include "models/incision/approach_rules.hpp"

namespace endplate::calibration {

// What a fit says of limbs.
struct FittedLimb {
  limb::Atlas atlas;
  double inflation = 1.0;
  evidence::ScaleCurve between_studies;
  evidence::ScaleCurve between_limbs;
  std::map<std::string, double> measure_sd_mm;  // of the mean limb, of each measure it observed
  std::map<std::string, double> point_sd_mm;    // of each point that a measure holds
};

// The shipped fit.
Expected<FittedLimb> shipped_fit(const evidence::DataPackage& package);

// That of fit_without().
FittedLimb fitted_limb(const limb::Atlas& unfitted, const LeftOutFit& left_out);

// For one limb of a population like the studied ones, as models/limb/distance.hpp has it for what
// no study measured: the error that fits make on studies that they did not see, the spread between
// limbs and, where the fit observed no such measure, how far the landmark may stand from its place.
// Nothing for a track, and where the fit holds the point no more or the crossing is not there.
std::optional<incision::LimbDistance> predicted(const incision::ApproachMeasure& measure,
                                                const FittedLimb& fit,
                                                const limb::LimbJoints& joints,
                                                const limb::BodyEnvelope& envelope);

struct ApproachPrediction {
  std::optional<incision::LimbDistance> full;
  // By the fit without its study; the same as `full` where the study did not enter the fit.
  std::optional<incision::LimbDistance> without;
};

inline constexpr int kApproachLimbs = 1000;
inline constexpr std::uint64_t kApproachSeed = 1;

// Of the shipped fit, tracks included, by measure; `without` only of studies outside the fit.
Expected<std::vector<ApproachPrediction>> predict_with_shipped_fit(
    const evidence::DataPackage& package, const std::vector<incision::ApproachMeasure>& measures);

// Fills in the rest with one refit a study, in parallel. `start` as for leave_one_study_out().
std::optional<Error> predict_without_studies(const evidence::DataPackage& package,
                                             const limb::Atlas& unfitted, const FitState& start,
                                             const std::vector<incision::ApproachMeasure>& measures,
                                             std::vector<ApproachPrediction>& predictions);

// As approach_predicted.csv has them: intervals, and of tracks no samples.
std::vector<ApproachPrediction> shipped_predictions(
    const evidence::DataPackage& package, const std::vector<incision::ApproachMeasure>& measures);

// Whether a prediction meets its row: by Published::holds, and whether the printed mean lies in the
// 90 % interval. Nothing where there is no prediction or nothing to meet.
std::optional<bool> within_printed(const incision::ApproachMeasure& measure,
                                   const std::optional<incision::LimbDistance>& limb);
std::optional<bool> mean_covered(const incision::ApproachMeasure& measure,
                                 const std::optional<incision::LimbDistance>& limb);

// How many of the published distances the limb meets.
struct ApproachShares {
  std::size_t expressed = 0;
  std::size_t predicted = 0;  // by a fit without their study
  std::size_t scored = 0;     // of these, with a printed deviation or range
  std::size_t within = 0;
  std::size_t with_mean = 0;
  std::size_t covered = 0;  // mean in the 90 % interval for one limb
};

// By the fit without the study, or by the full fit.
ApproachShares approach_shares(const std::vector<incision::ApproachMeasure>& measures,
                               const std::vector<calibration::ApproachPrediction>& predictions,
                               bool full);

// How many of the scored rows a limb could expect to meet that stood exactly at the mean of all
// studies of every quantity: the printed mean of one study is drawn about that mean with the spread
// between studies (of the shipped fit, at that distance) and its own sampling error. Counts no
// sampling error where a row prints no deviation or no number of limbs, which makes it larger.
double expected_within(const std::vector<incision::ApproachMeasure>& measures,
                       const std::vector<ApproachPrediction>& predictions,
                       const evidence::ScaleCurve& between_studies);

}  // namespace endplate::calibration
