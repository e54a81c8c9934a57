#pragma once
// The Tinel points of a case, as ways along the nerves from the lesion that they belong to.
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/followup/growth.hpp"
#include "models/followup/parameters.hpp"
#include "models/limb/case_limb.hpp"
#include "models/recovery/forecast.hpp"

namespace endplate::followup {

struct TinelPoint {
  casefile::Date date{};
  double days = 0.0;  // from the injury
  std::string nerve;
  std::string place;        // in words
  double advance_mm = 0.0;  // along the nerve from the lesion, on the mean limb
  double error_mm = 0.0;    // one SD of the observer
};

// The points below one lesion, one a date, in order of time.
struct TinelSeries {
  std::size_t lesion = 0;  // of ForecastQuestion::lesions
  std::size_t target = 0;  // of ForecastQuestion::targets: the farthest area along the tapped nerve
  std::vector<TinelPoint> points;
  Eigen::MatrixXd covariance;  // mm^2, see TinelEvidence
  bool went_back = false;      // further than the errors allow: not to be used

  TinelEvidence evidence() const;
};

struct TinelReading {
  std::vector<TinelSeries> series;   // by lesion
  std::vector<std::string> remarks;  // points that were left out, and why
};

// Errors, at the pointer of the point: a place outside its nerve, and one proximal to the lesion by
// more than the errors allow. Left out with a remark: a point without a date, before the operation
// that counts, on a nerve without skin fibres from below the lesion, and all but the farthest of
// one date.
Expected<TinelReading> read_tinel(const casefile::Case& patient, casefile::Date day_zero,
                                  const recovery::ForecastQuestion& question,
                                  const limb::CaseLimb& limb, const FollowupParameters& parameters);

}  // namespace endplate::followup
