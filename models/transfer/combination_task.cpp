#include "models/transfer/combination_task.hpp"

#include <algorithm>
#include <set>

#include "models/transfer/functions.hpp"

namespace endplate::transfer {
namespace {

const std::string kSensation = "sensation of the hand";

bool movement_lost(const Situation& now, const evidence::Row& movement) {
  const auto movers = movement.list("prime_movers");
  return !movers.empty() && std::ranges::all_of(movers, [&](const std::string& key) {
    const auto muscle = now.anatomy().find_muscle(key);
    return muscle && now.muscle_lost(*muscle);
  });
}

std::vector<std::string> lost_movements(const Situation& now,
                                        const evidence::DataPackage& package) {
  std::vector<std::string> lost;
  for (const evidence::Row row : package.table("movements")) {
    if (movement_lost(now, row)) lost.emplace_back(row.text("movement"));
  }
  return lost;
}

bool may_be_chosen(const Candidate& candidate, Admitted admitted) {
  switch (candidate.verdict) {
    case Verdict::feasible:
    case Verdict::marginal:
      return true;
    case Verdict::not_judged:
      return admitted == Admitted::not_judged_too;
    case Verdict::not_feasible:
      break;
  }
  return false;
}

// A branch and all that hangs on it: when it is sewn, each of them has its axons from there.
std::vector<std::string> with_all_below(const anatomy::NerveTree& tree,
                                        const std::vector<std::string>& names) {
  std::set<std::string> places(names.begin(), names.end());
  for (const anatomy::NodeIndex node : tree.topological_order()) {
    for (const anatomy::NodeIndex parent : tree.node(node).parents) {
      if (places.contains(tree.node(parent).name)) places.insert(tree.node(node).name);
    }
  }
  return {places.begin(), places.end()};
}

// Classes and no places in a row: among candidates of one class a donor may go where it does more,
// as the accessory nerve to the suprascapular nerve while intercostals bend the elbow.
int class_of(const Candidate& candidate) {
  int worse = 1;
  if (candidate.better_exists) worse += 1;
  if (candidate.synergy == Synergy::antagonist) worse += 1;
  if (candidate.verdict == Verdict::marginal) worse += 2;
  if (candidate.through_graft) worse += 4;
  return worse;
}

CombinationOption option_of(const Candidate& candidate, int place, const anatomy::NerveTree& tree,
                            const evidence::DataPackage& package,
                            const std::vector<std::string>& lost) {
  CombinationOption option;
  option.id = candidate.id;
  option.kind = candidate.way == Way::nerve ? OperationKind::nerve : OperationKind::tendon;
  option.rank = class_of(candidate);
  option.place = place;
  option.receives = with_all_below(tree, candidate.recipient_nodes);
  if (candidate.coaptation == Coaptation::end_to_side) {
    option.shares = candidate.donor_nodes;
  } else {
    option.spends = candidate.donor_nodes;
    // A fascicle out of a nerve that goes on working costs its muscle nothing.
    const bool whole =
        candidate.way == Way::tendon ||
        std::ranges::any_of(candidate.cuts, [](const Cut& cut) { return !cut.muscles.empty(); });
    if (whole) {
      option.spends.insert(option.spends.end(), candidate.spends.begin(), candidate.spends.end());
    }
    option.shares.insert(option.shares.end(), candidate.shares.begin(), candidate.shares.end());
  }
  // Each nerve that a coupled operation joins counts.
  const int times = candidate.together == Together::one
                        ? 1
                        : std::max(1, static_cast<int>(candidate.recipient_nodes.size()));
  if (candidate.skin) {
    option.serves.push_back({kSensation, 1});
  } else if (const auto row = function_row(package, candidate.function)) {
    for (const std::string& movement : row->list("movements")) {
      if (std::ranges::find(lost, movement) != lost.end())
        option.serves.push_back({movement, times});
    }
  }
  return option;
}

}  // namespace

PalsyPattern pattern_of(const Situation& now) {
  const anatomy::NerveTree& tree = now.anatomy().tree();
  std::set<std::string> roots;
  for (const examination::TreeInjury& injury : now.injuries()) {
    const std::string& name = tree.node(injury.lesion.at.nerve).name;
    if (name == "superior trunk") roots.insert({"C5", "C6"});
    if (name == "middle trunk") roots.insert("C7");
    if (name == "inferior trunk") roots.insert({"C8", "T1"});
    for (const char* root : {"C5", "C6", "C7", "C8", "T1"}) {
      if (name.starts_with(root)) roots.insert(root);
    }
  }
  const bool upper = roots.contains("C5") || roots.contains("C6");
  const bool lower = roots.contains("C8") || roots.contains("T1");
  if (upper && lower) return PalsyPattern::complete;
  if (upper) return PalsyPattern::upper;
  return lower ? PalsyPattern::lower : PalsyPattern::other;
}

namespace {

// Parts of one muscle that make a movement together are graded together: who finds the triceps
// strong has graded each of its heads that this injury spares.
bool graded_with_a_strong_part(const Situation& now, const evidence::DataPackage& package,
                               std::size_t muscle) {
  const auto& muscles = now.anatomy().muscles();
  if (!now.muscle_kept(muscle)) return false;
  for (const evidence::Row row : package.table("movements")) {
    const auto movers = row.list("prime_movers");
    if (std::ranges::find(movers, muscles[muscle].id) == movers.end()) continue;
    for (const std::string& key : movers) {
      const auto other = now.anatomy().find_muscle(key);
      std::string why;
      if (other && muscles[*other].name == muscles[muscle].name &&
          now.donor(*other, why) == DonorState::strong) {
        return true;
      }
    }
  }
  return false;
}

// A shoulder or elbow is given a muscle only where no nerve can be given.
bool is_second_to_a_nerve(const Candidate& candidate, const Group& group, Admitted admitted) {
  if (candidate.way != Way::tendon || group.region == "hand") return false;
  return std::ranges::any_of(group.candidates, [&](const Candidate& other) {
    return other.way == Way::nerve && may_be_chosen(other, admitted);
  });
}

}  // namespace

CombinationTask combination_task(const Situation& now, const evidence::DataPackage& package,
                                 std::vector<Group> groups, Admitted admitted) {
  std::vector<std::string> lost = lost_movements(now, package);
  CombinationTask task;
  bool skin = false;
  for (Group& group : groups) {
    if (admitted == Admitted::not_judged_too) {
      for (Candidate& candidate : group.candidates) {
        if (candidate.verdict == Verdict::not_judged) candidate.verdict = Verdict::feasible;
      }
    }
    int place = 0;
    for (const Candidate& candidate : group.candidates) {
      ++place;
      if (!may_be_chosen(candidate, admitted)) continue;
      if (is_second_to_a_nerve(candidate, group, admitted)) continue;
      const bool known = std::ranges::any_of(
          task.options, [&](const CombinationOption& one) { return one.id == candidate.id; });
      if (known) continue;
      task.options.push_back(option_of(candidate, place, now.anatomy().tree(), package, lost));
      skin = skin || candidate.skin;
      if (candidate.donor_state != DonorState::strong && admitted == Admitted::shown) continue;
      for (const auto* donors : {&candidate.donor_nodes, &candidate.donor_muscles}) {
        task.strong_now.insert(task.strong_now.end(), donors->begin(), donors->end());
      }
    }
  }
  const auto& muscles = now.anatomy().muscles();
  for (std::size_t m = 0; m < muscles.size(); ++m) {
    if (graded_with_a_strong_part(now, package, m)) task.strong_now.push_back(muscles[m].id);
  }
  if (skin) lost.push_back(kSensation);
  task.demands = demands_of(package, pattern_of(now), now.patient().priorities, lost);
  task.forbidden = forbidden_pairs(package);
  task.rules = balance_rules(package);
  return task;
}

}  // namespace endplate::transfer
