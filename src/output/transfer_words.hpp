#pragma once
// Words of a transfer that its table and its JSON share.
#include <string>
#include <string_view>

#include "models/transfer/combination.hpp"
#include "models/transfer/reach.hpp"

namespace endplate::cli {

// As the contract spells it.
std::string_view state_words(transfer::ReachState state);
// One reason.
std::string left_out_words(const transfer::LeftOut& left);

}  // namespace endplate::cli
