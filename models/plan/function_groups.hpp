#pragma once
// The functions of plan_functions.csv, and the filling of one group after another.
#include <algorithm>
#include <optional>
#include <utility>

#include "models/plan/transfers.hpp"

namespace endplate::plan {

// The row of plan_functions.csv for a function, if it is a function at all.
inline std::optional<evidence::Row> function_row(const evidence::DataPackage& package,
                                                 std::string_view function) {
  for (const evidence::Row row : package.table("plan_functions")) {
    if (row.text("function") == function) return row;
  }
  return std::nullopt;
}

// The group of a function, made when it is met for the first time.
inline FunctionGroup& group_of(Transfers& transfers, const evidence::Row& function,
                               const Situation& now) {
  const std::string_view shown = function.text("shown_as");
  const auto found = std::ranges::find(transfers.groups, shown, &FunctionGroup::function);
  if (found != transfers.groups.end()) return *found;
  FunctionGroup group;
  group.function = shown;
  group.region = function.text("region");
  const auto movements = function.list("movements");
  group.priority = std::ranges::any_of(movements, [&](const std::string& movement) {
    return std::ranges::find(now.patient().priorities, movement) != now.patient().priorities.end();
  });
  transfers.groups.push_back(std::move(group));
  return transfers.groups.back();
}

// Without the full stop of the table, since it goes into a longer sentence.
inline std::string_view without_stop(std::string_view words) {
  return words.ends_with('.') ? words.substr(0, words.size() - 1) : words;
}

inline void add_target(FunctionGroup& group, const std::string& name) {
  if (std::ranges::find(group.targets, name) == group.targets.end()) group.targets.push_back(name);
}

// Whether every muscle of a function that a tendon or muscle transfer restores is lost.
inline bool is_lost(const evidence::Row& function, const Situation& now) {
  const auto muscles = function.list("lost_when");
  return !muscles.empty() && std::ranges::all_of(muscles, [&](const std::string& id) {
    return now.muscle_lost(*now.anatomy().find_muscle(id));
  });
}

// "fcr_edc (finger extension)", where this case lacks that function; else nothing.
inline std::optional<std::string> tendon_option_words(const evidence::DataPackage& package,
                                                      const evidence::Row& tendon,
                                                      const Situation& now) {
  const auto function = function_row(package, tendon.text("function_restored"));
  if (!function || !is_lost(*function, now)) return std::nullopt;
  return std::string(tendon.text("id")) + " (" + std::string(tendon.text("function_restored")) +
         ")";
}

// Working donors first, of these the ones to which no better is known, then those that must be
// examined; within that the order of the table.
inline void put_in_order(Transfers& transfers) {
  std::ranges::stable_sort(transfers.groups, std::ranges::greater{}, &FunctionGroup::priority);
  for (FunctionGroup& group : transfers.groups) {
    std::ranges::stable_sort(group.candidates, {}, [](const Candidate& candidate) {
      return std::pair(candidate.donor_state != DonorState::strong, candidate.better_exists);
    });
  }
}

}  // namespace endplate::plan
