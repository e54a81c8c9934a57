#pragma once
// Words of a transfer that its table and its JSON share.
#include <string>

#include "models/transfer/combination.hpp"

namespace endplate::cli {

// One reason.
std::string left_out_words(const transfer::LeftOut& left);

}  // namespace endplate::cli
