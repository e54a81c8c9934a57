#include <fmt/format.h>

#include <set>

#include "models/plan/function_groups.hpp"
#include "models/plan/series.hpp"

namespace endplate::plan {
namespace {

using evidence::Row;

// "PT>=4" or "ECRL<4"
struct Condition {
  std::size_t muscle = 0;
  bool at_least = false;
};

std::optional<Condition> parse(const std::string& text, const anatomy::Anatomy& anatomy) {
  const auto sign = text.find_first_of("<>");
  if (sign == std::string::npos) return std::nullopt;
  const auto muscle = anatomy.find_muscle(text.substr(0, sign));
  if (!muscle) return std::nullopt;
  return Condition{*muscle, text[sign] == '>'};
}

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

class TendonTransfers {
 public:
  TendonTransfers(const Situation& now, const evidence::DataPackage& package)
      : now_(now), package_(package), palsy_(palsy_words(now)) {}

  Transfers answer() {
    for (const Row row : package_.table("tendon_transfers")) consider(row);
    put_in_order(result_);
    return std::move(result_);
  }

 private:
  bool is_for_this_palsy(const Row& row) const {
    if (palsy_.empty()) return true;
    return std::ranges::any_of(palsy_, [&](const std::string& word) {
      return row.text("palsy").find(word) != std::string_view::npos;
    });
  }

  void consider(const Row& row) {
    const auto function = function_row(package_, row.text("function_restored"));
    if (!function || !is_for_this_palsy(row)) return;
    if (!is_lost(*function, now_)) return;
    DonorState state = DonorState::strong;
    std::vector<std::string> reasons;
    const auto conditions = row.list("requires_examined");
    if (conditions.empty()) {
      state = DonorState::not_judged;
      reasons.emplace_back("the muscle and its donor nerve lie outside what a case file tells");
    }
    for (const std::string& text : conditions) {
      const auto condition = parse(text, now_.anatomy());
      if (!condition) continue;
      std::string why;
      const DonorState donor = now_.donor(condition->muscle, why);
      if (!condition->at_least) {
        // For the palsy in which this muscle is gone.
        if (donor == DonorState::strong || now_.muscle_kept(condition->muscle)) return;
        continue;
      }
      if (now_.unavailable(now_.anatomy().muscles()[condition->muscle].id)) {
        return reject(row, fmt::format("{} is not available in this case",
                                       now_.muscle_name(condition->muscle)));
      }
      if (donor == DonorState::dead) return reject(row, why, true);
      if (donor == DonorState::weak) return reject(row, why + ": M4 or better is asked for");
      if (donor == DonorState::not_judged) {
        // What is missing stands first.
        state = DonorState::not_judged;
        reasons.insert(reasons.begin(), why);
      } else {
        reasons.push_back(why);
      }
    }
    add(row, *function, state, std::move(reasons));
  }

  void reject(const Row& row, std::string reason, bool donor_dead = false) {
    result_.rejected.push_back(
        {std::string(row.text("id")),
         fmt::format("{} to {}", row.text("donor_muscle"), row.text("recipient")),
         std::move(reason), donor_dead});
  }

  void add(const Row& row, const Row& function, DonorState state,
           std::vector<std::string> reasons) {
    FunctionGroup& group = group_of(result_, function, now_);
    for (const std::string& id : function.list("lost_when")) {
      add_target(group, now_.muscle_name(*now_.anatomy().find_muscle(id)));
    }
    Candidate candidate;
    candidate.id = row.text("id");
    candidate.donor = row.text("donor_muscle");
    candidate.recipient = row.text("recipient");
    candidate.donor_state = state;
    candidate.published = published_tendon(package_, row.text("id"));
    candidate.published_words = row.text("outcome");
    candidate.donor_cost = fmt::format("the own work of {}", row.text("donor_muscle"));
    for (const std::string& id : row.list("forbids_together")) {
      const Row other = row_with_id(package_.table("tendon_transfers"), id);
      if (auto words = tendon_option_words(package_, other, now_)) {
        candidate.also_spends.push_back(std::move(*words));
      }
    }
    candidate.provenance = row.text("provenance");
    candidate.reasons = std::move(reasons);
    candidate.reasons.push_back(fmt::format("needs: {}", without_stop(row.text("requirement"))));
    if (!row.text("timing").empty()) {
      candidate.reasons.push_back(fmt::format("when: {}", row.text("timing")));
    }
    if (row.text("synergy") == "antagonist") {
      candidate.reasons.emplace_back("the donor works against the function and must be retrained");
    }
    group.candidates.push_back(std::move(candidate));
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  std::set<std::string> palsy_;
  Transfers result_;
};

}  // namespace

Transfers tendon_transfers(const Situation& now, const evidence::DataPackage& package) {
  return TendonTransfers(now, package).answer();
}

std::optional<Candidate> shoulder_fusion(const Situation& now) {
  const anatomy::Anatomy& anatomy = now.anatomy();
  for (const char* id : {"DEL-A", "DEL-C", "SS", "IS"}) {
    if (!now.muscle_lost(*anatomy.find_muscle(id))) return std::nullopt;
  }
  Candidate candidate;
  candidate.id = "shoulder_fusion";
  candidate.donor = "movement of the shoulder blade";
  candidate.recipient = "the fused arm";
  candidate.donor_state = DonorState::strong;
  for (const char* id : {"TRAP-U", "SA"}) {
    std::string why;
    const DonorState state = now.donor(*anatomy.find_muscle(id), why);
    candidate.reasons.push_back("what carries the fused arm: " + why);
    if (state == DonorState::not_judged && candidate.donor_state == DonorState::strong) {
      candidate.donor_state = state;
    } else if (state == DonorState::weak || state == DonorState::dead) {
      candidate.donor_state = DonorState::weak;
    }
  }
  return candidate;
}

}  // namespace endplate::plan
