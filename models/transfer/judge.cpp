#include "models/transfer/judge.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>

#include "models/transfer/functions.hpp"

namespace endplate::transfer {
namespace {

using evidence::Row;

Group& group_of(std::vector<Group>& groups, const Row& function, const Situation& now) {
  const std::string_view shown = function.text("shown_as");
  const auto found = std::ranges::find(groups, shown, &Group::function);
  Group& group = found != groups.end() ? *found : groups.emplace_back();
  group.function = shown;
  group.region = function.text("region");
  group.priority = group.priority || is_priority(function, now);
  return group;
}

void mention_conflicts(Judgement& judgement, const evidence::DataPackage& package) {
  std::map<std::string, Candidate*, std::less<>> by_id;
  for (Group& group : judgement.groups) {
    for (Candidate& candidate : group.candidates) by_id[candidate.id] = &candidate;
  }
  for (const Row row : package.table("transfer_conflicts")) {
    const auto a = by_id.find(row.text("a"));
    const auto b = by_id.find(row.text("b"));
    if (a == by_id.end() || b == by_id.end()) continue;
    const auto say = [&](Candidate& one, const Candidate& other) {
      one.reasons.push_back(fmt::format("not together with {}: {}", other.id, row.text("reason")));
      one.sources.emplace_back(row.text("id"));
    };
    say(*a->second, *b->second);
    say(*b->second, *a->second);
  }
}

}  // namespace

Judgement judge(const Situation& now, const evidence::DataPackage& package,
                const JudgeOptions& options) {
  Judgement judgement;
  for (auto* candidates : {&nerve_candidates, &tendon_candidates}) {
    for (Candidate& candidate : candidates(now, package, options)) {
      if (candidate.rejection) {
        judgement.rejected.push_back(std::move(candidate));
        continue;
      }
      const Row function = *function_row(package, candidate.function);
      group_of(judgement.groups, function, now).candidates.push_back(std::move(candidate));
    }
  }
  mention_conflicts(judgement, package);
  std::ranges::stable_sort(judgement.groups, std::ranges::greater{}, &Group::priority);
  for (Group& group : judgement.groups) rank(group);
  return judgement;
}

}  // namespace endplate::transfer
