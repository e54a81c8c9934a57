#include "models/transfer/unpublished.hpp"

#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>

#include <set>
#include <utility>

#include "models/transfer/donor.hpp"
#include "models/transfer/spends.hpp"
#include "models/transfer/timing.hpp"
#include "models/transfer/unpublished_donors.hpp"
#include "models/transfer/verdict.hpp"

namespace endplate::transfer {
namespace {

using anatomy::NodeIndex;
using evidence::Row;

// How much worse the mean limb may be than the middle of the sampled ones (assumed).
constexpr double kMeanLimbMargin_mm = 5.0;

struct LostBranch {
  NodeIndex node = 0;
  std::vector<std::size_t> muscles;
  std::vector<std::string> movements;  // that have no mover left
};

struct PublishedPair {
  std::set<std::string> donors;  // muscles
  std::vector<NodeIndex> recipients;
};

bool hang_together(const anatomy::NerveTree& tree, NodeIndex a, NodeIndex b) {
  const auto below_a = tree.descendants(a);
  const auto below_b = tree.descendants(b);
  return std::ranges::find(below_a, b) != below_a.end() ||
         std::ranges::find(below_b, a) != below_b.end();
}

class UnpublishedPairs {
 public:
  UnpublishedPairs(const Situation& now, const evidence::DataPackage& package,
                   const ReachModel& model, const ReachJoiner& joiner)
      : now_(now), package_(package), model_(model), joiner_(joiner) {
    for (const Row row : package.table("transfers")) {
      published_.push_back({donor_muscles(row, donor_rule(package, row.text("id")), now),
                            nodes(row, "recipient_node", now.anatomy().tree())});
    }
  }

  Expected<std::vector<TransferCandidate>> answer() const {
    std::vector<TransferCandidate> found;
    const auto recipients = lost_branches();
    for (const SpareBranch& donor : spare_branches(now_, package_)) {
      for (const LostBranch& recipient : recipients) {
        if (is_published(donor, recipient)) continue;
        const auto slack_mm = model_.most_slack_mm(donor.node, recipient.node);
        if (!slack_mm || *slack_mm < -kMeanLimbMargin_mm) continue;
        auto joined = joiner_.join(candidate(donor, recipient));
        if (!joined) return std::unexpected(joined.error());
        if (joined->joined->reach.state == ReachState::reaches) found.push_back(std::move(*joined));
      }
    }
    std::ranges::stable_sort(found, {}, [](const TransferCandidate& one) {
      return std::pair(one.judged.synergy == Synergy::antagonist, -one.joined->reach.slack_mm->p50);
    });
    // Of two branches to the same muscle the one that leaves more.
    std::set<std::string> seen;
    std::erase_if(found,
                  [&](const TransferCandidate& one) { return !seen.insert(one.judged.id).second; });
    return found;
  }

 private:
  std::vector<LostBranch> lost_branches() const {
    const anatomy::NerveTree& tree = now_.anatomy().tree();
    std::vector<LostBranch> found;
    for (NodeIndex node = 0; node < tree.size(); ++node) {
      if (tree.node(node).kind != anatomy::NodeKind::motor) continue;
      if (now_.injured_at_or_below(node)) continue;
      LostBranch branch{node, now_.muscles_below(node), {}};
      const auto lost = [&](std::size_t muscle) { return now_.muscle_lost(muscle); };
      if (branch.muscles.empty() || !std::ranges::all_of(branch.muscles, lost)) continue;
      for (const anatomy::Movement& movement : now_.anatomy().movements()) {
        const auto& movers = movement.prime_movers;
        const bool theirs = std::ranges::any_of(movers, [&](std::size_t muscle) {
          return std::ranges::find(branch.muscles, muscle) != branch.muscles.end();
        });
        if (theirs && std::ranges::all_of(movers, lost)) branch.movements.push_back(movement.name);
      }
      if (!branch.movements.empty()) found.push_back(std::move(branch));
    }
    return found;
  }

  bool is_published(const SpareBranch& donor, const LostBranch& recipient) const {
    return std::ranges::any_of(published_, [&](const PublishedPair& pair) {
      const bool same = std::ranges::any_of(donor.muscles, [&](std::size_t muscle) {
        return pair.donors.contains(now_.anatomy().muscles()[muscle].id);
      });
      return same && std::ranges::any_of(pair.recipients, [&](NodeIndex node) {
               return hang_together(now_.anatomy().tree(), node, recipient.node);
             });
    });
  }

  // What the muscles of a donor make; where they lead no movement, what they help in.
  std::vector<std::string> movements_of(const std::vector<std::size_t>& muscles) const {
    for (const auto list : {&anatomy::Movement::prime_movers, &anatomy::Movement::substitutes}) {
      std::vector<std::string> names;
      for (const anatomy::Movement& movement : now_.anatomy().movements()) {
        const bool theirs = std::ranges::any_of(movement.*list, [&](std::size_t muscle) {
          return std::ranges::find(muscles, muscle) != muscles.end();
        });
        if (theirs) names.push_back(movement.name);
      }
      if (!names.empty()) return names;
    }
    return {};
  }

  Candidate candidate(const SpareBranch& donor, const LostBranch& recipient) const {
    const anatomy::NerveTree& tree = now_.anatomy().tree();
    const auto& muscles = now_.anatomy().muscles();
    Candidate made;
    made.published = false;
    made.function = fmt::format("{}", fmt::join(recipient.movements, ", "));
    made.donor = tree.node(donor.node).name;
    made.recipient = tree.node(recipient.node).name;
    made.what = fmt::format("{} to {}", made.donor, made.recipient);
    made.donor_nodes = {made.donor};
    made.recipient_nodes = {made.recipient};
    std::vector<std::string> given;
    for (const std::size_t muscle : donor.muscles) {
      made.donor_muscles.push_back(muscles[muscle].id);
      given.push_back(now_.muscle_name(muscle));
      if (auto doubt = now_.doubt_by_emg(muscle); !doubt.empty()) {
        made.doubts.push_back(std::move(doubt));
      }
    }
    for (const std::size_t muscle : recipient.muscles) {
      made.targets.push_back(now_.muscle_name(muscle));
      made.target_keys.push_back(muscles[muscle].id);
    }
    made.id = fmt::format("unpublished_{}_to_{}", fmt::join(made.donor_muscles, "+"),
                          fmt::join(made.target_keys, "+"));
    std::ranges::transform(made.id, made.id.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    made.spends = made.donor_muscles;
    made.coaptation = Coaptation::end_to_end;
    made.cuts = {cut_at(donor.node, now_)};
    made.donor_state = DonorState::strong;
    made.donor_reasons = donor.why;
    made.donor_cost = fmt::format("the own work of {}", fmt::join(given, ", "));
    made.also_spends = tendon_options_spent(made.spends, "", package_, now_);
    made.synergy = synergy_between(movements_of(donor.muscles), recipient.movements, package_);
    made.synergy_words = relearning(made.synergy);
    made.doubts.insert(made.doubts.begin(), "not published: geometry only");
    say_timing(now_, package_, {joiner_.days()}, made);
    give_verdict(made);
    return made;
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  const ReachModel& model_;
  const ReachJoiner& joiner_;
  std::vector<PublishedPair> published_;
};

}  // namespace

Synergy synergy_between(const std::vector<std::string>& from, const std::vector<std::string>& to,
                        const evidence::DataPackage& package) {
  const auto among = [](const std::vector<std::string>& names, std::string_view name) {
    return std::ranges::find(names, name) != names.end();
  };
  bool together = std::ranges::any_of(from, [&](const std::string& one) { return among(to, one); });
  for (const Row row : package.table("movement_pairs")) {
    const std::string_view a = row.text("a");
    const std::string_view b = row.text("b");
    if (!(among(from, a) && among(to, b)) && !(among(from, b) && among(to, a))) continue;
    if (row.text("relation") == "opposed") return Synergy::antagonist;
    together = true;
  }
  return together ? Synergy::synergist : Synergy::neutral;
}

Expected<std::vector<TransferCandidate>> unpublished(const Situation& now,
                                                     const evidence::DataPackage& package,
                                                     const ReachModel& model,
                                                     const ReachJoiner& joiner) {
  return UnpublishedPairs(now, package, model, joiner).answer();
}

}  // namespace endplate::transfer
