#include "models/transfer/combination_tables.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "models/transfer/combination_parts.hpp"

namespace endplate::transfer {
namespace {

std::string text(const evidence::Row& row, std::string_view column) {
  return std::string(row.text(column));
}

int whole(const evidence::Row& row, std::string_view column) {
  return static_cast<int>(row.number(column).value());
}

std::string_view name_of(PalsyPattern pattern) {
  switch (pattern) {
    case PalsyPattern::upper:
      return "upper";
    case PalsyPattern::complete:
      return "complete";
    case PalsyPattern::lower:
      return "lower";
    case PalsyPattern::other:
      return "";
  }
  return "";
}

}  // namespace

std::vector<BalanceRule> balance_rules(const evidence::DataPackage& package) {
  std::vector<BalanceRule> rules;
  for (const evidence::Row row : package.table("transfer_balance")) {
    rules.push_back({text(row, "id"), row.list("donors"), whole(row, "keep"), text(row, "reason"),
                     text(row, "source"), text(row, "provenance")});
  }
  return rules;
}

std::vector<ForbiddenPair> forbidden_pairs(const evidence::DataPackage& package) {
  std::vector<ForbiddenPair> pairs;
  for (const evidence::Row row : package.table("transfer_conflicts")) {
    pairs.push_back({text(row, "id"), text(row, "a"), text(row, "b"), text(row, "reason"),
                     text(row, "source"), text(row, "provenance")});
  }
  std::set<std::pair<std::string, std::string>> seen;
  for (const evidence::Row row : package.table("tendon_transfers")) {
    for (const std::string& other : row.list("forbids_together")) {
      const std::string own = text(row, "id");
      const std::pair pair(std::min(own, other), std::max(own, other));
      if (!seen.insert(pair).second) continue;
      pairs.push_back({pair.first + "+" + pair.second, pair.first, pair.second,
                       "not both: the same muscle, the same function in two ways, or the last "
                       "strong muscle of its group",
                       "tendon_transfers.csv, forbids_together", "common practice"});
    }
  }
  return pairs;
}

std::vector<Demand> demands_of(const evidence::DataPackage& package, PalsyPattern pattern,
                               const std::vector<std::string>& wishes,
                               const std::vector<std::string>& lost) {
  std::vector<Demand> demands;
  int tier = 0;
  const auto asked = [&](std::string_view target, int transfers) {
    return std::ranges::any_of(demands, [&](const Demand& demand) {
      return demand.target == target && demand.transfers == transfers;
    });
  };
  for (const std::string& wish : wishes) {
    if (has(lost, wish) && !asked(wish, 1)) demands.push_back({wish, 1, ++tier, "", "", ""});
  }
  std::map<int, std::vector<Demand>> by_place;
  for (const evidence::Row row : package.table("transfer_priorities")) {
    const std::string target = text(row, "target");
    const int transfers = whole(row, "transfers");
    if (row.text("pattern") != name_of(pattern) || !has(lost, target)) continue;
    if (asked(target, transfers)) continue;
    by_place[whole(row, "place")].push_back(
        {target, transfers, 0, text(row, "id"), text(row, "source"), text(row, "provenance")});
  }
  for (auto& [place, rows] : by_place) {
    ++tier;
    for (Demand& demand : rows) {
      demand.tier = tier;
      demands.push_back(std::move(demand));
    }
  }
  ++tier;
  for (const std::string& target : lost) {
    if (!asked(target, 1)) demands.push_back({target, 1, tier, "", "", ""});
  }
  return demands;
}

}  // namespace endplate::transfer
