#pragma once
// Axons of the donor to those of the recipient, from transfers.csv and axon_counts.csv. For show:
// standard transfers work with less than a third.
#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"

namespace endplate::transfer {

// Nothing where the row lacks one of the counts. One study counted both: the ratio with the 90 %
// range that the two standard deviations leave, donor and recipient taken as independent (assumed;
// in one limb both are large or small together, so the true range is narrower). Otherwise the
// ratio across studies, with the range of all counts of both nerves.
std::optional<AxonRatio> axon_ratio(const evidence::Row& transfer,
                                    const evidence::DataPackage& package);

}  // namespace endplate::transfer
