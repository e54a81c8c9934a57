#pragma once
#include <string>
#include <vector>

#include "models/evidence/provenance.hpp"

namespace endplate::evidence {

// A pooled quantity. The uncertainty of its mean, the spread between studies and the spread between
// limbs are kept apart: which of them an answer needs depends on the question.
struct Estimate {
  double mean = 0.0;
  double standard_error = 0.0;    // of the mean over all studies
  double between_study_sd = 0.0;  // tau: how far one study's true mean strays from it
  double between_limb_sd = 0.0;
  std::string unit;
  std::vector<std::string> evidence;         // ids of the rows that were pooled
  Provenance provenance = Provenance::read;  // the weakest among them
  std::vector<std::string> assumptions;      // what was filled in, in words
};

}  // namespace endplate::evidence
