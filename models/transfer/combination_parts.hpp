#pragma once
// What the programme of a combination and the reasons for its answer share: who serves, spends and
// counts what.
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "models/transfer/combination.hpp"

namespace endplate::transfer {

using Options = std::vector<const CombinationOption*>;

inline bool has(const std::vector<std::string>& names, std::string_view name) {
  return std::ranges::find(names, name) != names.end();
}

// Whether spending `spent` spends `donor`: the same, or the whole of which `donor` is a part.
inline bool covers(std::string_view spent, std::string_view donor) {
  return donor == spent ||
         (donor.starts_with(spent) && donor.substr(spent.size()).starts_with('/'));
}

inline bool covered(const std::vector<std::string>& names, std::string_view donor) {
  return std::ranges::any_of(names, [&](const std::string& name) { return covers(name, donor); });
}

inline int transfers_to(const CombinationOption& option, std::string_view target) {
  int transfers = 0;
  for (const Service& service : option.serves) {
    if (service.target == target) transfers += service.transfers;
  }
  return transfers;
}

// Each name once, in the order given: a donor named twice is still one donor.
inline std::vector<std::string> distinct(const std::vector<std::string>& names) {
  std::vector<std::string> once;
  for (const std::string& name : names) {
    if (!has(once, name)) once.push_back(name);
  }
  return once;
}

// All donors that an option needs for itself.
inline std::vector<std::string> used_by(const CombinationOption& option) {
  auto names = distinct(option.spends);
  names.insert(names.end(), option.shares.begin(), option.shares.end());
  return distinct(names);
}

// The donors of a rule that are strong now: the only ones that it counts.
inline std::vector<std::string> strong_of(const BalanceRule& rule, const CombinationTask& task) {
  auto strong = distinct(rule.donors);
  std::erase_if(strong, [&](const std::string& donor) { return !covered(task.strong_now, donor); });
  return strong;
}

// How many of `strong` may be spent.
inline int may_be_spent(const BalanceRule& rule, const std::vector<std::string>& strong) {
  return std::max(0, static_cast<int>(strong.size()) - rule.keep);
}

inline int spent_of(const std::vector<std::string>& strong, const CombinationOption& option) {
  return static_cast<int>(std::ranges::count_if(
      strong, [&](const std::string& donor) { return covered(option.spends, donor); }));
}

// By tier, then in the order given.
inline std::vector<Demand> by_tier(std::vector<Demand> demands) {
  std::ranges::stable_sort(demands, {}, &Demand::tier);
  return demands;
}

}  // namespace endplate::transfer
