#pragma once
// The functions of plan_functions.csv, and the filling of one group after another.
#include <algorithm>
#include <utility>

#include "models/plan/transfers.hpp"
#include "models/transfer/candidate.hpp"
#include "models/transfer/functions.hpp"

namespace endplate::plan {

// The group of a function, made when it is met for the first time.
inline FunctionGroup& group_of(Transfers& transfers, const evidence::Row& function,
                               const Situation& now) {
  const std::string_view shown = function.text("shown_as");
  const auto found = std::ranges::find(transfers.groups, shown, &FunctionGroup::function);
  if (found != transfers.groups.end()) return *found;
  FunctionGroup group;
  group.function = shown;
  group.region = function.text("region");
  group.priority = transfer::is_priority(function, now);
  transfers.groups.push_back(std::move(group));
  return transfers.groups.back();
}

inline void add_target(FunctionGroup& group, const std::string& name) {
  if (std::ranges::find(group.targets, name) == group.targets.end()) group.targets.push_back(name);
}

// A candidate as it was judged, without its published figures and its time.
Candidate taken_from(const transfer::TransferCandidate& judged);

// Whether it may be done as far as it was examined.
inline bool is_shown(const Candidate& candidate) {
  return candidate.verdict == transfer::Verdict::feasible ||
         candidate.verdict == transfer::Verdict::marginal;
}

// What was rejected, and candidates that turned out not to be feasible. One whose function is not
// lost is not thought of and not listed; nor is a tendon transfer for another palsy.
void reject_all(Transfers& transfers, const transfer::JudgedTransfers& judged, transfer::Way way);

// What was shown to work first, of these the ones to which no better is known, then what must be
// examined; within that as ranked.
inline void put_in_order(Transfers& transfers) {
  std::ranges::stable_sort(transfers.groups, std::ranges::greater{}, &FunctionGroup::priority);
  for (FunctionGroup& group : transfers.groups) {
    std::ranges::stable_sort(group.candidates, {}, [](const Candidate& candidate) {
      return std::pair(!is_shown(candidate), candidate.better_exists);
    });
  }
}

}  // namespace endplate::plan
