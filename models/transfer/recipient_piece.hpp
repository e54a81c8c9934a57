#pragma once
// Where a recipient of which some muscles still work can be sewn without cutting what works.
#include <optional>
#include <string>
#include <vector>

#include "models/transfer/candidate.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

// The part of `recipient` beyond the last branch to a working muscle. Where all that is lost hangs
// on that branch itself, and it is a named nerve, the part of that one. `targets` are the branches
// to lost muscles beyond; nothing where there is none: then a working muscle would be cut. By usual
// parents, on the limb of the case.
std::optional<SewnBeyond> sewn_beyond(anatomy::NodeIndex recipient, const Situation& now);

}  // namespace endplate::transfer
