#include <fmt/format.h>

#include <map>
#include <set>

#include "models/plan/function_groups.hpp"
#include "models/plan/series.hpp"

namespace endplate::plan {
namespace {

using evidence::Row;

struct Judged {
  DonorState state = DonorState::not_judged;
  std::string why;
};

// As the series behind the chances were grouped (recovery_series.csv, column donor).
std::string_view donor_kind(std::string_view nerve) {
  if (nerve.contains("intercostal nerve")) return "intercostal donor";
  for (const std::string_view far : {"phrenic", "accessory", "contralateral"}) {
    if (nerve.contains(far)) return "distant donor";
  }
  return "near donor";
}

// Of several donors that must all work the worst counts, of those that may stand in the best.
Judged joined(const std::vector<Judged>& parts, bool any) {
  constexpr auto rank = [](const Judged& judged) {
    switch (judged.state) {
      case DonorState::dead:
        return 0;
      case DonorState::weak:
        return 1;
      case DonorState::not_judged:
        return 2;
      case DonorState::strong:
        break;
    }
    return 3;
  };
  if (parts.empty()) return {};
  return any ? *std::ranges::max_element(parts, {}, rank)
             : *std::ranges::min_element(parts, {}, rank);
}

class NerveTransfers {
 public:
  NerveTransfers(const Situation& now, const evidence::DataPackage& package,
                 const Regrowth& regrowth, double today_days, std::uint64_t seed)
      : now_(now), package_(package), regrowth_(regrowth), today_days_(today_days), seed_(seed) {}

  Transfers answer() {
    for (const Row row : package_.table("transfers")) consider(row);
    put_in_order(result_);
    mention_conflicts();
    return std::move(result_);
  }

 private:
  void reject(const Row& row, std::string reason, bool donor_dead = false) {
    result_.rejected.push_back(
        {std::string(row.text("id")),
         fmt::format("{} to {}", row.text("donor_muscle_or_area"), row.text("recipient_target")),
         std::move(reason), donor_dead});
  }

  std::vector<anatomy::NodeIndex> nodes(const Row& row, const char* column) const {
    std::vector<anatomy::NodeIndex> found;
    for (const std::string& name : row.list(column)) {
      if (const auto node = now_.anatomy().tree().find(name)) found.push_back(*node);
    }
    return found;
  }

  // The muscles (or areas) that the transfer is for, when they are lost; nothing otherwise.
  std::vector<std::size_t> lost_targets(const std::vector<anatomy::NodeIndex>& recipients,
                                        bool skin) const {
    std::set<std::size_t> lost;
    for (const anatomy::NodeIndex node : recipients) {
      for (const std::size_t target : skin ? now_.areas_below(node) : now_.muscles_below(node)) {
        if (skin ? now_.area_kept(target) : now_.muscle_kept(target)) return {};
        if (skin ? now_.area_lost(target) : now_.muscle_lost(target)) lost.insert(target);
      }
    }
    return {lost.begin(), lost.end()};
  }

  // A recipient far up feeds more muscles than those of the function.
  void keep_those_of(const Row& function, std::vector<std::size_t>& lost) const {
    const auto wanted = function.list("lost_when");
    if (wanted.empty()) return;
    std::erase_if(lost, [&](std::size_t muscle) {
      return std::ranges::find(wanted, now_.anatomy().muscles()[muscle].id) == wanted.end();
    });
  }

  std::optional<Row> donor_row(std::string_view id) const {
    for (const Row row : package_.table("plan_donors")) {
      if (row.text("transfer") == id) return row;
    }
    return std::nullopt;
  }

  Judged judge(const Row& row, const std::optional<Row>& rule, bool skin) const {
    std::vector<Judged> parts;
    if (rule) {
      if (rule->text("judged_by") == "none")
        return {DonorState::not_judged, std::string(rule->text("ask"))};
      for (const std::string& id : rule->list("muscles")) {
        const std::size_t muscle = *now_.anatomy().find_muscle(id);
        Judged part;
        part.state = rule->text("judged_by") == "emg" ? now_.donor_by_emg(muscle, part.why)
                                                      : now_.donor(muscle, part.why);
        parts.push_back(std::move(part));
      }
      return joined(parts, rule->text("rule") == "any");
    }
    for (const anatomy::NodeIndex node : nodes(row, "donor_node")) {
      for (const std::size_t target : skin ? now_.areas_below(node) : now_.muscles_below(node)) {
        Judged part;
        part.state = skin ? now_.donor_area(target, part.why) : now_.donor(target, part.why);
        parts.push_back(std::move(part));
      }
    }
    if (parts.empty()) return {DonorState::not_judged, "nothing in the case file judges the donor"};
    return joined(parts, false);
  }

  // The donor's muscles by their keys, to see which tendon transfers they are needed for.
  std::set<std::string> donor_muscles(const Row& row, const std::optional<Row>& rule) const {
    std::set<std::string> keys;
    if (rule) {
      for (std::string& id : rule->list("muscles")) keys.insert(std::move(id));
      return keys;
    }
    for (const anatomy::NodeIndex node : nodes(row, "donor_node")) {
      for (const std::size_t m : now_.muscles_below(node)) {
        keys.insert(now_.anatomy().muscles()[m].id);
      }
    }
    return keys;
  }

  bool refused(const Row& row, const std::optional<Row>& rule,
               const std::vector<anatomy::NodeIndex>& recipients) {
    for (const anatomy::NodeIndex node : recipients) {
      if (now_.injured_at_or_below(node)) {
        reject(row,
               fmt::format("the injury lies on the {} itself, where it would be sewn, or beyond",
                           now_.anatomy().tree().node(node).name));
        return true;
      }
    }
    if (rule && !rule->list("needs_lost").empty()) {
      const auto needed = rule->list("needs_lost");
      if (!std::ranges::all_of(needed, [&](const std::string& id) {
            return now_.muscle_lost(*now_.anatomy().find_muscle(id));
          })) {
        reject(row, std::string(rule->text("needs_lost_words")));
        return true;
      }
    }
    for (const std::string& name : row.list("donor_node")) {
      if (now_.unavailable(name)) {
        reject(row, fmt::format("{} is not available in this case", name));
        return true;
      }
      if (name == "phrenic nerve" && now_.sign_present("diaphragm palsy")) {
        reject(row, "the diaphragm of this side is paralysed");
        return true;
      }
    }
    for (const std::string& id : donor_muscles(row, rule)) {
      if (now_.unavailable(id)) {
        reject(row, fmt::format("{} is not available in this case",
                                now_.muscle_name(*now_.anatomy().find_muscle(id))));
        return true;
      }
    }
    return false;
  }

  void consider(const Row& row) {
    const auto function = function_row(package_, row.text("function_restored"));
    if (!function) return;
    const bool skin = function->text("region") == "skin";
    const auto recipients = nodes(row, "recipient_node");
    auto lost = lost_targets(recipients, skin);
    keep_those_of(*function, lost);
    if (lost.empty()) return;
    const auto rule = donor_row(row.text("id"));
    if (refused(row, rule, recipients)) return;
    const Judged donor = judge(row, rule, skin);
    if (donor.state == DonorState::dead) return reject(row, donor.why, true);
    if (donor.state == DonorState::weak) {
      return reject(row, donor.why + ": a donor of M4 or better is asked for");
    }
    FunctionGroup& group = group_of(result_, *function, now_);
    std::vector<std::string> keys;
    for (const std::size_t target : lost) {
      add_target(group, skin ? now_.anatomy().areas()[target].name : now_.muscle_name(target));
      if (skin) {
        keys.push_back(now_.anatomy().areas()[target].name);
      } else {
        keys.push_back(now_.anatomy().muscles()[target].id);
      }
    }
    Candidate candidate = described(row, donor);
    // A skin nerve, or one sewn to its side, takes no muscle away.
    if (!skin) spend(row, rule, candidate);
    if (rule && rule->text("way") == "through a graft") {
      candidate.reasons.emplace_back(
          "the axons grow through a graft of unknown length first: no time and no chance of the "
          "model");
    } else {
      const Regrown regrown = regrowth_.into(recipients, keys, donor_kind(row.text("donor_nerve")),
                                             today_days_, now_.patient().limb.age_years, seed_);
      candidate.first_movement = regrown.first_movement;
      candidate.model_chance = regrown.chance;
    }
    group.candidates.push_back(std::move(candidate));
  }

  static Candidate described(const Row& row, const Judged& donor) {
    Candidate candidate;
    candidate.id = row.text("id");
    candidate.donor =
        fmt::format("{}, {}", row.text("donor_nerve"), row.text("donor_muscle_or_area"));
    candidate.recipient =
        fmt::format("{}, {}", row.text("recipient_nerve"), row.text("recipient_target"));
    candidate.donor_state = donor.state;
    candidate.published = published_transfer(row);
    candidate.donor_cost = without_stop(row.text("donor_downgrade"));
    candidate.provenance = row.text("provenance");
    candidate.better_exists =
        row.text("contraindication_relative").find("better") != std::string_view::npos;
    candidate.reasons.push_back(donor.why);
    const auto add = [&](const char* label, std::string_view words) {
      if (!words.empty())
        candidate.reasons.push_back(fmt::format("{}: {}", label, without_stop(words)));
    };
    add("needs", row.text("prerequisites"));
    add("not with", row.text("contraindication_absolute"));
    add("rather not with", row.text("contraindication_relative"));
    if (const auto months = row.number("longest_delay_months")) {
      candidate.reasons.push_back(
          fmt::format("longest delay in the series {:.0f} months", *months));
    }
    return candidate;
  }

  // The tendon and muscle transfers that need the same muscle.
  void spend(const Row& row, const std::optional<Row>& rule, Candidate& candidate) const {
    const auto keys = donor_muscles(row, rule);
    for (const Row tendon : package_.table("tendon_transfers")) {
      for (const std::string& condition : tendon.list("requires_examined")) {
        const auto end = condition.find(">=");
        if (end == std::string::npos || !keys.contains(condition.substr(0, end))) continue;
        if (auto words = tendon_option_words(package_, tendon, now_)) {
          candidate.also_spends.push_back(std::move(*words));
        }
        break;
      }
    }
  }

  void mention_conflicts() {
    std::map<std::string, Candidate*, std::less<>> by_id;
    for (FunctionGroup& group : result_.groups) {
      for (Candidate& candidate : group.candidates) by_id[candidate.id] = &candidate;
    }
    for (const Row row : package_.table("transfer_conflicts")) {
      const auto a = by_id.find(row.text("a"));
      const auto b = by_id.find(row.text("b"));
      if (a == by_id.end() || b == by_id.end()) continue;
      a->second->reasons.push_back(
          fmt::format("not together with {}: {}", b->first, row.text("reason")));
      b->second->reasons.push_back(
          fmt::format("not together with {}: {}", a->first, row.text("reason")));
    }
  }

  const Situation& now_;
  const evidence::DataPackage& package_;
  const Regrowth& regrowth_;
  double today_days_;
  std::uint64_t seed_;
  Transfers result_;
};

}  // namespace

Transfers nerve_transfers(const Situation& now, const evidence::DataPackage& package,
                          const Regrowth& regrowth, double today_days, std::uint64_t seed) {
  return NerveTransfers(now, package, regrowth, today_days, seed).answer();
}

}  // namespace endplate::plan
