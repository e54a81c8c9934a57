#pragma once
// The answer of `transfer` for people.
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/transfer/transfers.hpp"

namespace endplate::cli {

// `with_unpublished`: also the pairs that nobody has published, under a heading of their own.
std::string transfer_text(const transfer::TransferAnswer& answer, const CommonOptions& options,
                          Side side, bool with_unpublished);

// Two candidates side by side, point by point.
std::string compare_text(const transfer::TransferCandidate& a, const transfer::TransferCandidate& b,
                         const CommonOptions& options, Side side);

}  // namespace endplate::cli
