#pragma once
// The answer of `transfer` as the contract's JSON document.
#include "command.hpp"
#include "models/core/side.hpp"
#include "models/transfer/transfers.hpp"

namespace endplate::cli {

Json transfer_json(const transfer::TransferAnswer& answer, const CommonOptions& options, Side side);

}  // namespace endplate::cli
