#pragma once
// How far points of the nerves lie from landmarks on one limb.
//
// Where studies measured the same distance the answer leans on them; where none did it is the
// fitted limb's, with the error that fits without a study make on that study. The fit behind it is
// described in docs/limb-fit.md. A point that ultrasound found on the patient corrects that point's
// distances and, by the correlation along its course, those of its neighbours.
#include <optional>
#include <string>
#include <vector>

#include "models/casefile/case.hpp"
#include "models/core/error.hpp"
#include "models/core/summary.hpp"
#include "models/evidence/data_package.hpp"
#include "models/evidence/provenance.hpp"
#include "models/evidence/quantity.hpp"

namespace endplate::limb {

// What an answer rests on.
enum class Basis {
  studies,            // pooled published distances only: the nerve has no course in the model
  studies_and_model,  // both
  model               // the fitted limb only
};

struct Distance {
  std::string nerve;      // standard term
  std::string point;      // as named in the tables
  std::string landmark;   // standard term
  std::string posture;    // empty: the anatomical position
  std::string direction;  // proximal, distal, lateral, medial, anterior, posterior; empty: unsigned
  std::string definition;  // how the published distance was measured, in a word of the tables

  // For one limb of a population like the studied ones, mm; along `direction` where it has a sign.
  std::optional<Summary> along_nerve_mm;  // arc length from the landmark's level on the nerve
  std::optional<Summary> straight_mm;
  std::optional<Summary> along_limb_mm;   // along the segment's long axis
  std::optional<Summary> across_limb_mm;  // across it

  // 90 % interval for the mean over limbs of the published kind of distance, mm.
  double mean_low_mm = 0.0;
  double mean_high_mm = 0.0;

  Basis basis = Basis::studies;
  std::size_t studies = 0;
  evidence::Provenance provenance = evidence::Provenance::read;  // the weakest of the rows
  std::vector<std::string> sources;                              // ids of landmark_distances.csv
  std::string assumed;  // what of it is assumed and why; empty when nothing is
};

struct DistanceQuery {
  std::optional<std::string> nerve;     // standard term
  std::optional<std::string> landmark;  // standard term
  std::string point;                    // words that the point's name must contain
};

struct DistanceAnswer {
  std::vector<Distance> distances;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;  // where the limb lies outside what was published
};

// Published distances that fit the query, and for a query that names a landmark also the modelled
// points of the nerve that no study measured from it. Nothing found is Fault::outside_model.
Expected<DistanceAnswer> distances(const evidence::DataPackage& package, const casefile::Limb& limb,
                                   const DistanceQuery& query);

}  // namespace endplate::limb
