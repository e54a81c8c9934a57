#pragma once
// What one study says of one quantity: its rows brought to a single mean.
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "models/evidence/quantity.hpp"

namespace endplate::evidence {

enum class SpreadSource {
  printed,
  from_range,  // by Wan 2014
  imputed      // from the fit over all rows that print one
};

struct StudyEffect {
  std::string study;
  std::vector<std::string> rows;  // ids that went into it
  double mean_mm = 0.0;
  double sd_mm = 0.0;  // between its limbs
  SpreadSource sd_source = SpreadSource::printed;
  double n = 0.0;
  bool n_assumed = false;
  double standard_error_mm = 0.0;  // sd / sqrt(n)
};

// Fills in a spread (in mm, at a mean of so many mm) and a number of limbs where a row lacks them.
struct Imputation {
  std::function<double(double)> sd_mm;
  double n = 0.0;
};

// The spread of a row as printed, or recovered from its range.
struct RowSpread {
  double sd_mm = 0.0;
  SpreadSource source = SpreadSource::printed;
};
std::optional<RowSpread> row_spread(const Measurement& row);

// One effect a study, in the order of the rows. Rows of a study on different limbs (men and women,
// or the limbs on either side of the landmark) are put together as one sample (Cochrane Handbook
// for Systematic Reviews, section 6.5.2.10); rows on the same limbs (left and right, two borders)
// count as one look at them: their mean, with the sampling error of one. Either way the study keeps
// one bias.
std::vector<StudyEffect> study_effects(const Quantity& quantity, const Imputation& impute);

}  // namespace endplate::evidence
