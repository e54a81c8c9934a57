#pragma once
// The donor of a nerve transfer: whether it works, and what dies where it is cut.
#include <set>

#include "models/evidence/data_package.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/situation.hpp"

namespace endplate::transfer {

struct JudgedDonor {
  DonorState state = DonorState::not_judged;
  std::string why;
};

// The nodes that a column of transfers.csv names; names that are not in the tree are left out.
std::vector<anatomy::NodeIndex> nodes(const evidence::Row& row, const char* column,
                                      const anatomy::NerveTree& tree);

// The row of plan_donors.csv for a transfer, where what hangs on the donor does not judge it.
std::optional<evidence::Row> donor_rule(const evidence::DataPackage& package,
                                        std::string_view transfer);

// `skin`: the donor is judged by its skin.
JudgedDonor judge_donor(const evidence::Row& row, const std::optional<evidence::Row>& rule,
                        bool skin, const Situation& now);

// The donor's muscles by their keys.
std::set<std::string> donor_muscles(const evidence::Row& row,
                                    const std::optional<evidence::Row>& rule, const Situation& now);

// All that loses its nerve where the node is cut at its beginning.
Cut cut_at(anatomy::NodeIndex node, const Situation& now);

// A root, trunk, division or cord of this limb, or a named nerve with more than one muscle, or
// with muscle and skin: never cut as a donor.
bool is_trunk(anatomy::NodeIndex node, const Situation& now);

}  // namespace endplate::transfer
