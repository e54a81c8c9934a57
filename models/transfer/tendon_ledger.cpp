#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/transfer/conditions.hpp"
#include "models/transfer/functions.hpp"
#include "models/transfer/judge.hpp"
#include "models/transfer/spends.hpp"
#include "models/transfer/timing.hpp"
#include "models/transfer/verdict.hpp"

namespace endplate::transfer {
namespace {

using evidence::Row;

// The injured nerves and those they come from, without the word nerve: "posterior interosseous",
// "radial". Empty when a plexus or more than one nerve is hurt: then every palsy of the table fits.
std::set<std::string> palsy_words(const Situation& now) {
  const anatomy::NerveTree& tree = now.anatomy().tree();
  std::set<anatomy::NodeIndex> nerves;
  std::set<std::string> words;
  for (const examination::TreeInjury& injury : now.injuries()) {
    const anatomy::NodeIndex nerve = injury.lesion.at.nerve;
    using enum anatomy::NodeKind;
    const anatomy::NodeKind kind = tree.node(nerve).kind;
    if (kind == root || kind == trunk || kind == division || kind == cord) return {};
    nerves.insert(nerve);
    for (anatomy::NodeIndex at = nerve;;) {
      std::string name = tree.node(at).name;
      if (name.ends_with(" nerve")) name.resize(name.size() - 6);
      words.insert(std::move(name));
      if (tree.node(at).parents.empty()) break;
      at = tree.node(at).parents.front();
    }
  }
  return nerves.size() == 1 ? words : std::set<std::string>{};
}

class TendonLedger {
 public:
  TendonLedger(const Situation& now, const evidence::DataPackage& package,
               const JudgeOptions& options)
      : now_(now), package_(package), options_(options), palsy_(palsy_words(now)) {}

  Candidate candidate(const Row& row, const Row& function) const {
    Candidate made = described(row);
    for (const std::string& id : function.list("lost_when")) {
      made.targets.push_back(now_.muscle_name(*now_.anatomy().find_muscle(id)));
      made.target_keys.push_back(id);
    }
    say_timing(now_, package_, options_, made);
    if (!is_for_this_palsy(row)) {
      reject(made, Rejection::other_lesion,
             fmt::format("for another palsy: {}", row.text("palsy")));
    } else if (!is_lost(function, now_)) {
      reject(made, Rejection::not_lost, fmt::format("{} is not lost", made.function));
    } else {
      judge_donors(row, made);
    }
    give_verdict(made);
    return made;
  }

 private:
  bool is_for_this_palsy(const Row& row) const {
    if (palsy_.empty()) return true;
    return std::ranges::any_of(palsy_, [&](const std::string& word) {
      return row.text("palsy").find(word) != std::string_view::npos;
    });
  }

  Candidate described(const Row& row) const {
    Candidate made;
    made.id = row.text("id");
    made.way = Way::tendon;
    made.function = row.text("function_restored");
    made.donor = row.text("donor_muscle");
    made.recipient = row.text("recipient");
    made.what = fmt::format("{} to {}", made.donor, made.recipient);
    made.synergy = synergy_of(row.text("synergy"));
    made.synergy_words = relearning(made.synergy);
    made.donor_cost = fmt::format("the own work of {}", made.donor);
    made.result_words = row.text("outcome");
    made.spends = row.list("spends");
    made.shares = row.list("shares");
    made.also_spends = tendon_options_spent(made.spends, made.id, package_, now_);
    made.said.push_back(fmt::format("needs: {}", without_stop(row.text("requirement"))));
    if (!row.text("timing").empty()) {
      made.said.push_back(fmt::format("when: {}", row.text("timing")));
    }
    made.study = row.text("study");
    made.provenance = row.text("provenance");
    made.sources.push_back(made.id);
    return made;
  }

  void judge_donors(const Row& row, Candidate& made) const {
    made.donor_state = DonorState::strong;
    const auto texts = row.list("requires_examined");
    if (texts.empty()) {
      made.donor_state = DonorState::not_judged;
      made.donor_reasons.emplace_back(
          "the muscle and its donor nerve lie outside what a case file tells");
    }
    const bool superficialis = std::ranges::any_of(
        texts, [](const std::string& text) { return text.starts_with("FDS>="); });
    std::string not_shown;
    for (const std::string& text : texts) {
      const auto condition = parse_condition(text, now_.anatomy());
      if (!condition) continue;
      std::string why;
      if (!condition->at_least) {
        // For the palsy in which this muscle is gone.
        if (hold(*condition, now_, why) == Condition::Found::fails) {
          return reject(made, Rejection::other_lesion, std::move(why));
        }
        continue;
      }
      const std::string& id = now_.anatomy().muscles()[condition->muscle].id;
      made.donor_muscles.push_back(id);
      if (now_.unavailable(id)) {
        return reject(
            made, Rejection::unavailable,
            fmt::format("{} is not available in this case", now_.muscle_name(condition->muscle)));
      }
      const DonorState donor = now_.donor(condition->muscle, why);
      if (donor == DonorState::dead) return reject(made, Rejection::donor_dead, std::move(why));
      if (donor == DonorState::weak) {
        return reject(made, Rejection::donor_weak, why + ": M4 or better is asked for");
      }
      if (donor == DonorState::not_judged && superficialis && is_deep_finger_flexor(id) &&
          not_shown.empty()) {
        not_shown = why;
      }
      if (donor == DonorState::not_judged) {
        made.donor_state = DonorState::not_judged;
        made.donor_reasons.insert(made.donor_reasons.begin(), std::move(why));
      } else {
        made.donor_reasons.push_back(std::move(why));
      }
    }
    // The finger might be left without a flexor.
    if (!not_shown.empty()) {
      reject(made, Rejection::not_shown,
             not_shown +
                 ": the superficialis of a finger is given only when its deep flexor is "
                 "shown to be strong");
    }
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  const JudgeOptions& options_;
  std::set<std::string> palsy_;
};

}  // namespace

std::vector<Candidate> tendon_candidates(const Situation& now, const evidence::DataPackage& package,
                                         const JudgeOptions& options) {
  const TendonLedger ledger(now, package, options);
  std::vector<Candidate> candidates;
  for (const Row row : package.table("tendon_transfers")) {
    // Rows without a function are rules of the trade, no operations.
    if (const auto function = function_row(package, row.text("function_restored"))) {
      candidates.push_back(ledger.candidate(row, *function));
    }
  }
  return candidates;
}

}  // namespace endplate::transfer
