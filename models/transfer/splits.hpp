#pragma once
// How far donors and recipients can be split out of the nerves that they hang on, from
// transfer_splits.csv, and donors be followed into their muscles, from transfer_followed.csv.
#include <string_view>

#include "models/anatomy/nerve_metrics.hpp"
#include "models/evidence/data_package.hpp"
#include "models/examination/interruption.hpp"
#include "models/transfer/reach.hpp"

namespace endplate::transfer {

// 0 mm where no dissection printed it.
SplitOut recipient_split(const evidence::DataPackage& package, std::string_view recipient);
SplitOut donor_split(const evidence::DataPackage& package, std::string_view donor);

// How far beyond its entry into the muscle a donor is cut; 0 mm where no dissection printed it.
SplitOut donor_followed(const evidence::DataPackage& package, std::string_view donor);

// A recipient's split, ending below every injury of the nerve that the recipient hangs on: beyond
// it the fascicle is no longer of one piece. The zone of injury about it is not taken off.
SplitOut below_injuries(SplitOut split, anatomy::NodeIndex recipient,
                        const anatomy::NerveTree& tree, const anatomy::NerveMetrics& metrics,
                        const std::vector<examination::TreeInjury>& injuries);

}  // namespace endplate::transfer
