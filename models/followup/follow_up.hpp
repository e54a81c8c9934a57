#pragma once
// The question of the followup command: what the serial Tinel points, muscles and EMG say of this
// patient's own growth, whether the nerve is on course, and what to decide now.
#include <optional>
#include <string>
#include <vector>

#include "models/followup/lesion_progress.hpp"
#include "models/recovery/recover.hpp"

namespace endplate::followup {

struct FollowupAnswer {
  // The decision and the forecast as they are after what was seen.
  recovery::RecoveryAnswer recovery;
  std::vector<LesionProgress> lesions;  // by injury; empty without a forecast
  std::size_t worst = 0;                // the lesion whose call counts for the limb
  Call call;                            // of that lesion
  std::optional<double> chance_no_growth;
  std::optional<casefile::Date> last_seen;  // the last dated examination or test
  std::vector<std::string> remarks;         // on the findings
};

// As recovery::recover, and Fault::input for a Tinel point that cannot be (see read_tinel).
Expected<FollowupAnswer> follow_up(const casefile::Case& patient,
                                   const evidence::DataPackage& package,
                                   const anatomy::NerveTree& tree,
                                   const recovery::RecoveryOptions& options);

}  // namespace endplate::followup
