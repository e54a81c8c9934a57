#pragma once
// One study's reading of one measure, on the scale of the ledger limb.
#include <string>
#include <vector>

#include "models/evidence/spread_model.hpp"
#include "models/evidence/study_effect.hpp"
#include "models/evidence/table.hpp"
#include "models/limb/atlas.hpp"

namespace endplate::calibration {

struct Observation {
  std::size_t measure = 0;  // of the atlas
  evidence::StudyEffect effect;
};

// Rows of one study in one measure are one observation.
std::vector<Observation> observations(const limb::Atlas& atlas,
                                      const evidence::Table& landmark_distances,
                                      const evidence::SpreadModel& spread);

}  // namespace endplate::calibration
