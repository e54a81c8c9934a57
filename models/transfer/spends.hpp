#pragma once
// Which tendon transfers are gone with a donor. A part of a muscle is a donor by itself: "FDS/ring"
// is the superficialis of the ring finger.
#include <string>
#include <string_view>
#include <vector>

#include "models/evidence/data_package.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

// Those rows of tendon_transfers.csv for functions that this case lacks which take one of the
// donors `spent`, or need it to be strong beside their own: "fcr_edc (finger extension)", with the
// finger where it is a superficialis. `own` is left out.
std::vector<std::string> tendon_options_spent(const std::vector<std::string>& spent,
                                              std::string_view own,
                                              const evidence::DataPackage& package,
                                              const Situation& now);

}  // namespace endplate::transfer
