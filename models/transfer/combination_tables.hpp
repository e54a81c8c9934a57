#pragma once
// The rules of a combination from the evidence tables.
#include "models/evidence/data_package.hpp"
#include "models/transfer/combination.hpp"

namespace endplate::transfer {

enum class PalsyPattern {
  upper,     // C5 and C6, with or without C7
  complete,  // all roots
  lower,     // C8 and T1, with or without C7
  other      // single nerves: no order is common practice
};

// transfer_balance.csv.
std::vector<BalanceRule> balance_rules(const evidence::DataPackage& package);

// transfer_conflicts.csv, and forbids_together of tendon_transfers.csv, each pair once.
std::vector<ForbiddenPair> forbidden_pairs(const evidence::DataPackage& package);

// What is asked for, of the targets that this case has lost: first the wishes of the case, one tier
// each, in its order; then the rows of transfer_priorities.csv for the pattern, by place; then
// whatever else is lost, all in one last tier. Tiers count from 1 without gaps. `wishes` and `lost`
// are movements of movements.csv or `sensation of the hand`; a wish that is not lost is no demand.
std::vector<Demand> demands_of(const evidence::DataPackage& package, PalsyPattern pattern,
                               const std::vector<std::string>& wishes,
                               const std::vector<std::string>& lost);

}  // namespace endplate::transfer
