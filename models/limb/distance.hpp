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
  std::string posture;    // of the studies; empty: the anatomical position, or `in_pose`
  bool in_pose = false;   // in the pose of the case
  std::string direction;  // proximal, distal, lateral, medial, anterior, posterior; empty: unsigned
  std::string definition;  // how the published distance was measured, in a word of the tables

  // For one limb of a population like the studied ones, mm; along `direction` where it has a sign.
  std::optional<Summary> along_nerve_mm;  // arc length from the landmark's level on the nerve
  std::optional<Summary> straight_mm;
  std::optional<Summary> along_limb_mm;   // along the segment's long axis
  std::optional<Summary> across_limb_mm;  // across it
  std::optional<Summary> over_skin_mm;    // as a tape over the skin measures it
  std::string over_skin_absent;           // why there is none
  // Of the mean of the published kind, by the pose of the case and its operations.
  double moved_mm = 0.0;

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
  // Over the skin too, which takes half a second; a question that names a landmark and one with few
  // answers have it in any case.
  bool over_skin = false;
};
inline constexpr std::size_t kFewDistances = 30;

struct DistanceAnswer {
  std::vector<Distance> distances;
  std::vector<std::string> assumptions;
  std::vector<std::string> warnings;  // where the limb lies outside what was published
};

// Published distances that fit the query, and for a query that names a landmark also the modelled
// points of the nerve that no study measured from it. Nothing found is Fault::outside_model.
//
// In a pose, and with the ulnar nerve transposed, the answer for the limb at rest is moved by what
// the model's own figure moves: the studies keep their weight. Distances that no model holds, and
// crossings that are not there in the pose, stay those of the anatomical position and say so.
Expected<DistanceAnswer> distances(const evidence::DataPackage& package, const casefile::Limb& limb,
                                   const DistanceQuery& query,
                                   const std::vector<casefile::Operation>& operations = {});

}  // namespace endplate::limb
