#include "models/transfer/unpublished_donors.hpp"

#include <algorithm>

#include "models/transfer/combination_parts.hpp"
#include "models/transfer/combination_tables.hpp"
#include "models/transfer/conditions.hpp"
#include "models/transfer/donor.hpp"

namespace endplate::transfer {
namespace {

using anatomy::NodeIndex;
using evidence::Row;

class SpareBranches {
 public:
  SpareBranches(const Situation& now, const evidence::DataPackage& package)
      : now_(now), package_(package), rules_(balance_rules(package)) {
    for (const Row row : package.table("plan_donors")) {
      if (row.text("judged_by") != "emg") continue;
      for (std::string& id : row.list("muscles")) by_emg_.insert(std::move(id));
    }
    const auto& muscles = now.anatomy().muscles();
    for (std::size_t m = 0; m < muscles.size(); ++m) {
      std::string why;
      if (state(m, why) == DonorState::strong) strong_.push_back(muscles[m].id);
    }
  }

  std::vector<SpareBranch> all() const {
    const anatomy::NerveTree& tree = now_.anatomy().tree();
    std::vector<SpareBranch> found;
    for (NodeIndex node = 0; node < tree.size(); ++node) {
      if (tree.node(node).kind != anatomy::NodeKind::motor) continue;
      if (now_.unavailable(tree.node(node).name) || now_.injured_at_or_below(node)) continue;
      SpareBranch branch{node, now_.muscles_below(node), {}};
      if (branch.muscles.empty() || !now_.areas_below(node).empty() || is_trunk(node, now_)) {
        continue;
      }
      std::vector<std::string> keys;
      bool strong = true;
      for (const std::size_t muscle : branch.muscles) {
        std::string why;
        const std::string& id = now_.anatomy().muscles()[muscle].id;
        strong = strong && state(muscle, why) == DonorState::strong && !now_.unavailable(id);
        branch.why.push_back(std::move(why));
        keys.push_back(id);
      }
      if (strong && leaves_a_mover(keys) && keeps_the_balance(keys) && holds_what_is_asked(keys)) {
        found.push_back(std::move(branch));
      }
    }
    return found;
  }

 private:
  DonorState state(std::size_t muscle, std::string& why) const {
    return by_emg_.contains(now_.anatomy().muscles()[muscle].id) ? now_.donor_by_emg(muscle, why)
                                                                 : now_.donor(muscle, why);
  }

  // Of every movement that they make another prime mover is strong.
  bool leaves_a_mover(const std::vector<std::string>& spent) const {
    const auto& muscles = now_.anatomy().muscles();
    return std::ranges::all_of(now_.anatomy().movements(), [&](const anatomy::Movement& movement) {
      const auto& movers = movement.prime_movers;
      const bool theirs = std::ranges::any_of(
          movers, [&](std::size_t muscle) { return has(spent, muscles[muscle].id); });
      return !theirs || std::ranges::any_of(movers, [&](std::size_t muscle) {
        return has(strong_, muscles[muscle].id) && !has(spent, muscles[muscle].id);
      });
    });
  }

  bool keeps_the_balance(const std::vector<std::string>& spent) const {
    return std::ranges::all_of(rules_, [&](const BalanceRule& rule) {
      int left = 0;
      bool touched = false;
      for (const std::string& donor : distinct(rule.donors)) {
        const bool goes = covered(spent, donor);
        touched = touched || goes;
        if (!goes && covered(strong_, donor)) ++left;
      }
      return !touched || left >= rule.keep;
    });
  }

  // What published transfers of the same muscles ask for beside them.
  bool holds_what_is_asked(const std::vector<std::string>& spent) const {
    for (const Row row : package_.table("transfer_conditions")) {
      const Row transfer = row_with_id(package_.table("transfers"), row.text("transfer"));
      const auto muscles =
          donor_muscles(transfer, donor_rule(package_, row.text("transfer")), now_);
      const bool same = std::ranges::any_of(
          muscles, [&](const std::string& muscle) { return has(spent, muscle); });
      if (!same) continue;
      const auto texts = row.list("conditions");
      const auto holds = [&](const std::string& text) {
        const auto condition = parse_condition(text, now_.anatomy());
        std::string why;
        // "ECRL<4" is about the recipient.
        return !condition || !condition->at_least ||
               hold(*condition, now_, why) == Condition::Found::holds;
      };
      const bool met = row.text("rule") == "any" ? std::ranges::any_of(texts, holds)
                                                 : std::ranges::all_of(texts, holds);
      if (!met) return false;
    }
    return true;
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  std::vector<BalanceRule> rules_;
  std::set<std::string> by_emg_;
  std::vector<std::string> strong_;
};

}  // namespace

std::vector<SpareBranch> spare_branches(const Situation& now,
                                        const evidence::DataPackage& package) {
  return SpareBranches(now, package).all();
}

}  // namespace endplate::transfer
