#include "models/transfer/combination_reasons.hpp"

#include <optional>

namespace endplate::transfer {
namespace {

// The first donor that a chosen option uses as well, whole or in part.
std::optional<LeftOut> donor_used(const CombinationOption& option, const Options& chosen) {
  for (const std::string& donor : used_by(option)) {
    for (const CombinationOption* other : chosen) {
      for (const std::string& used : used_by(*other)) {
        if (!covers(used, donor) && !covers(donor, used)) continue;
        const std::string& part = covers(used, donor) ? donor : used;
        return LeftOut{option.id, LeftOutBy::donor_used, part, {other->id}};
      }
    }
  }
  return std::nullopt;
}

std::optional<LeftOut> place_taken(const CombinationOption& option, const Options& chosen) {
  for (const std::string& place : option.receives) {
    for (const CombinationOption* other : chosen) {
      if (has(other->receives, place)) {
        return LeftOut{option.id, LeftOutBy::place_taken, place, {other->id}};
      }
    }
  }
  return std::nullopt;
}

std::optional<LeftOut> forbidden(const CombinationOption& option, const Options& chosen,
                                 const CombinationTask& task) {
  for (const CombinationOption* other : chosen) {
    for (const ForbiddenPair& pair : task.forbidden) {
      const bool together = (pair.a == option.id && pair.b == other->id) ||
                            (pair.b == option.id && pair.a == other->id);
      if (together) return LeftOut{option.id, LeftOutBy::forbidden_pair, pair.id, {other->id}};
    }
  }
  return std::nullopt;
}

// The first rule that `option` breaks beside `others`; none of them: by itself.
std::optional<LeftOut> broken_rule(const CombinationOption& option, const Options& others,
                                   const CombinationTask& task, LeftOutBy by) {
  for (const BalanceRule& rule : task.rules) {
    const auto strong = strong_of(rule, task);
    int spent = spent_of(strong, option);
    if (spent == 0) continue;
    LeftOut answer{option.id, by, rule.id, {}};
    for (const CombinationOption* other : others) {
      const int by_other = spent_of(strong, *other);
      if (by_other > 0) answer.beside.push_back(other->id);
      spent += by_other;
    }
    if (spent > may_be_spent(rule, strong)) return answer;
  }
  return std::nullopt;
}

// Nothing stands in its way, so it was not needed, or does not suffice.
LeftOut not_needed(const CombinationOption& option, const Options& chosen,
                   const std::vector<Demand>& demands) {
  std::optional<LeftOut> served;
  for (const Demand& demand : demands) {
    if (transfers_to(option, demand.target) == 0) continue;
    int transfers = 0;
    std::vector<std::string> by;
    for (const CombinationOption* other : chosen) {
      const int of_other = transfers_to(*other, demand.target);
      transfers += of_other;
      if (of_other > 0) by.push_back(other->id);
    }
    if (transfers < demand.transfers) {
      return {option.id, LeftOutBy::falls_short, demand.target, std::move(by)};
    }
    if (!served) served = {option.id, LeftOutBy::already_served, demand.target, std::move(by)};
  }
  return served.value_or(LeftOut{option.id, LeftOutBy::serves_nothing_asked, "", {}});
}

}  // namespace

LeftOut reason_left_out(const CombinationOption& option, const Options& chosen,
                        const CombinationTask& task, const std::vector<Demand>& demands) {
  const bool asked = std::ranges::any_of(
      demands, [&](const Demand& demand) { return transfers_to(option, demand.target) > 0; });
  if (!asked) return {option.id, LeftOutBy::serves_nothing_asked, "", {}};
  if (auto alone = broken_rule(option, {}, task, LeftOutBy::rule_alone)) return *alone;
  if (auto one = donor_used(option, chosen)) return *one;
  if (auto one = place_taken(option, chosen)) return *one;
  if (auto one = forbidden(option, chosen, task)) return *one;
  if (auto one = broken_rule(option, chosen, task, LeftOutBy::rule)) return *one;
  return not_needed(option, chosen, demands);
}

}  // namespace endplate::transfer
