#pragma once
// Rows that measure the same thing, brought to one sign and one unit.
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/evidence/provenance.hpp"
#include "models/evidence/table.hpp"

namespace endplate::evidence {

// The axis along which a distance was measured, and its positive direction.
enum class Axis {
  axial,       // + proximal, - distal
  transverse,  // + lateral or radial, - medial or ulnar
  sagittal,    // + anterior, - posterior
  along_nerve,
  unsigned_distance  // straight, nearest, or of unknown direction
};

enum class Measure {
  distance_mm,
  diameter_mm,
  prevalence  // share of limbs; pooled as counts
};

// "proximal", "distal", ... for a signed value; empty where the axis has no sign.
std::string_view direction_word(Axis axis, double value);

// One row of landmark_distances, with its sign applied.
struct Measurement {
  std::string id;
  std::string study;
  std::string population;
  Provenance provenance = Provenance::read;
  std::optional<double> mean_mm;
  std::optional<double> sd_mm;
  std::optional<double> min_mm;
  std::optional<double> max_mm;
  std::optional<double> n;
  std::optional<double> share;               // prevalence, 0 to 1
  bool from_fraction = false;                // mean_mm is a fraction times a length of its line
  std::optional<double> population_line_mm;  // length of the line below in the studied limbs
  std::string population_line;
  std::string left_out;  // why the row is shown but not pooled; empty when it is pooled
};

struct Quantity {
  std::string tree_node;  // as in the table; several joined by ';'
  std::string point;
  std::string landmark;
  std::string posture;  // empty: the anatomical position or none stated
  Axis axis = Axis::unsigned_distance;
  Measure measure = Measure::distance_mm;
  std::vector<Measurement> rows;

  std::string name() const;  // in words, unique among quantities()
};

// Length in mm of a line that a fraction refers to, in the limb one wants to answer for; nothing
// when it is not known.
using LineLength = std::function<std::optional<double>(std::string_view fraction_of)>;

// All quantities of table landmark_distances, in the order of their first rows. A row that states
// only a fraction of a line is brought to millimetres by the line's length in the studied limbs
// where the study states it, else by `line_length`; without either it is left out. Also left out,
// each with its reason in the row: stand-ins, fetal limbs, rows without a figure, and the second
// entry of one measurement.
std::vector<Quantity> quantities(const Table& landmark_distances,
                                 const LineLength& line_length = {});

}  // namespace endplate::evidence
