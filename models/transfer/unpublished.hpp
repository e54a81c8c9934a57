#pragma once
// Pairs of branches that meet although nobody has published them: geometry only, on request only.
//
// A donor is one motor branch, shown to be strong in each of its muscles, whose loss leaves every
// movement that it makes another strong prime mover, what transfer_balance.csv keeps, and what the
// published transfers of the same muscle ask for (transfer_conditions.csv). A recipient is one
// motor branch whose muscles are all lost and whose movement has no mover left. Pairs whose donor
// muscle and recipient, or one above or below it, stand in transfers.csv are left out.
#include "models/transfer/reach_joiner.hpp"

namespace endplate::transfer {

// Those that reach without a graft, each marginal at best. Antagonists last, then by spare length.
Expected<std::vector<TransferCandidate>> unpublished(const Situation& now,
                                                     const evidence::DataPackage& package,
                                                     const ReachModel& model,
                                                     const ReachJoiner& joiner);

// Whether `from` and `to` oppose one another, go together or neither, by movement_pairs.csv; the
// first of these where movements of both kinds are among them.
Synergy synergy_between(const std::vector<std::string>& from, const std::vector<std::string>& to,
                        const evidence::DataPackage& package);

}  // namespace endplate::transfer
