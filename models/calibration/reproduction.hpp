#pragma once
// How well the fitted limb reproduces the published quantities, against the spread between limbs.
#include <optional>
#include <string>
#include <vector>

#include "models/calibration/cross_validation.hpp"

namespace endplate::calibration {

// One measure pooled over its studies, against the model.
struct Reproduced {
  std::size_t measure = 0;  // of the atlas
  std::vector<std::string> studies;
  double pooled_mm = 0.0;
  double pooled_se_mm = 0.0;  // its whole spread between studies counted, not only this fit's
  double limb_sd_mm = 0.0;
  bool sd_printed = false;  // by at least one study, or recovered from its range; else imputed
  double model_mm = 0.0;
  double model_sd_mm = 0.0;
  Support support = Support::tested;

  double standard_deviations() const;  // |model - pooled| over the spread between limbs
};

// In the order of the atlas's measures; measures without an observation are left out.
std::vector<Reproduced> reproduction(const limb::Atlas& atlas,
                                     const std::vector<Observation>& observations,
                                     const FitResult& fit,
                                     const evidence::ScaleCurve& between_studies);

struct Shares {
  std::size_t count = 0;
  std::size_t within_one = 0;
  std::size_t within_two = 0;
};
// Over the tested ones; `printed` picks those whose spread is printed or imputed, if given.
Shares shares_of(const std::vector<Reproduced>& reproduced, std::optional<bool> printed);

}  // namespace endplate::calibration
