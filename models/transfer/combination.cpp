#include "models/transfer/combination.hpp"

#include <functional>
#include <set>
#include <utility>

#include "models/transfer/combination_parts.hpp"
#include "models/transfer/combination_reasons.hpp"
#include "models/transfer/zero_one.hpp"

namespace endplate::transfer {
namespace {

constexpr int kBestRank = 1;

Expected<void> check(const CombinationTask& task) {
  Error error{Fault::internal, {}};
  const auto wrong = [&](const std::string& place, std::string what) {
    error.problems.push_back({"combination, " + place, std::move(what),
                              "Mend the list of options or the table that it comes from"});
  };
  std::set<std::string> ids;
  for (const CombinationOption& option : task.options) {
    if (!ids.insert(option.id).second) wrong("option " + option.id, "the id stands twice");
    for (const Service& service : option.serves) {
      if (service.transfers < 1) wrong("option " + option.id, "serves a target less than once");
    }
  }
  for (const Demand& demand : task.demands) {
    if (demand.transfers < 1) wrong("demand " + demand.target, "asks for less than one transfer");
  }
  for (const BalanceRule& rule : task.rules) {
    if (rule.keep < 1) wrong("rule " + rule.id, "keeps less than one donor");
  }
  if (!error.problems.empty()) return std::unexpected(std::move(error));
  return {};
}

// The options that serve what is asked for, by id: the variables of the programme. After them
// comes one variable a demand, which may be 1 only where the demand is met.
Options eligible(const CombinationTask& task) {
  Options options;
  for (const CombinationOption& option : task.options) {
    const bool asked = std::ranges::any_of(task.demands, [&](const Demand& demand) {
      return transfers_to(option, demand.target) > 0;
    });
    if (asked) options.push_back(&option);
  }
  std::ranges::sort(options, [](const CombinationOption* a, const CombinationOption* b) {
    return std::tie(a->place, a->id) < std::tie(b->place, b->id);
  });
  return options;
}

// The sum over the options that `factor` does not map to zero.
Sum sum_over(const Options& options, const std::function<int(const CombinationOption&)>& factor) {
  Sum sum;
  for (std::size_t k = 0; k < options.size(); ++k) {
    if (const int value = factor(*options[k]); value != 0) {
      sum.push_back({static_cast<int>(k), value});
    }
  }
  return sum;
}

// Each donor is used once, a part of it also by whoever uses the whole, and each place receives
// once.
void add_once_rows(ZeroOneProgram& program, const Options& options) {
  std::set<std::string> donors, places;
  for (const CombinationOption* option : options) {
    donors.insert(option->spends.begin(), option->spends.end());
    donors.insert(option->shares.begin(), option->shares.end());
    places.insert(option->receives.begin(), option->receives.end());
  }
  const auto add = [&](Sum sum) {
    if (sum.size() > 1) program.rows.push_back({std::move(sum), 1});
  };
  for (const std::string& donor : donors) {
    add(sum_over(options, [&](const CombinationOption& option) {
      return covered(option.spends, donor) || covered(option.shares, donor) ? 1 : 0;
    }));
  }
  for (const std::string& place : places) {
    add(sum_over(options, [&](const CombinationOption& option) {
      return has(option.receives, place) ? 1 : 0;
    }));
  }
}

void add_rows(ZeroOneProgram& program, const Options& options, const CombinationTask& task,
              const std::vector<Demand>& demands) {
  add_once_rows(program, options);
  for (const ForbiddenPair& pair : task.forbidden) {
    if (pair.a == pair.b) continue;
    Sum sum = sum_over(options, [&](const CombinationOption& option) {
      return option.id == pair.a || option.id == pair.b ? 1 : 0;
    });
    if (sum.size() == 2) program.rows.push_back({std::move(sum), 1});
  }
  for (const BalanceRule& rule : task.rules) {
    const auto strong = strong_of(rule, task);
    Sum sum = sum_over(options, [&](const CombinationOption& o) { return spent_of(strong, o); });
    if (!sum.empty()) program.rows.push_back({std::move(sum), may_be_spent(rule, strong)});
  }
  for (std::size_t k = 0; k < demands.size(); ++k) {
    Sum sum = sum_over(options, [&](const CombinationOption& option) {
      return -transfers_to(option, demands[k].target);
    });
    sum.push_back({static_cast<int>(options.size() + k), demands[k].transfers});
    program.rows.push_back({std::move(sum), 0});
  }
}

void add_objectives(ZeroOneProgram& program, const Options& options,
                    const std::vector<Demand>& demands) {
  // An objective that was already asked has its value; asking again only costs time.
  const auto add = [&](Sum sum) {
    if (!sum.empty() && std::ranges::find(program.objectives, sum) == program.objectives.end()) {
      program.objectives.push_back(std::move(sum));
    }
  };
  std::set<int> tiers;
  std::set<int, std::greater<>> ranks;  // the worst first
  for (const Demand& demand : demands) tiers.insert(demand.tier);
  for (const CombinationOption* option : options) ranks.insert(option->rank);
  const auto add_rank = [&](int tier, int rank) {
    const auto serves = [&](const CombinationOption& option) {
      return std::ranges::any_of(demands, [&](const Demand& demand) {
        return demand.tier == tier && transfers_to(option, demand.target) > 0;
      });
    };
    add(sum_over(options, [&](const CombinationOption& option) {
      return option.rank == rank && serves(option) ? -1 : 0;
    }));
  };
  for (const int tier : tiers) {
    Sum met;
    for (std::size_t k = 0; k < demands.size(); ++k) {
      if (demands[k].tier == tier) met.push_back({static_cast<int>(options.size() + k), 1});
    }
    add(std::move(met));
    for (const int rank : ranks) {
      if (rank > kBestRank) add_rank(tier, rank);
    }
  }
  for (const int tier : tiers) add_rank(tier, kBestRank);
  add(sum_over(options, [](const CombinationOption& option) {
    return -static_cast<int>(used_by(option).size());
  }));
  for (std::size_t k = 0; k < options.size(); ++k) add({{static_cast<int>(k), 1}});
}

// By the first tier that each serves, then by id.
Options in_order(Options chosen, const std::vector<Demand>& demands) {
  std::ranges::stable_sort(chosen, {}, [&](const CombinationOption* option) {
    return std::ranges::find_if(
               demands,
               [&](const Demand& demand) { return transfers_to(*option, demand.target) > 0; })
        ->tier;
  });
  return chosen;
}

DemandAnswer answer_of(const Demand& demand, const CombinationTask& task, const Options& chosen) {
  DemandAnswer answer{demand, false, {}, {}};
  int transfers = 0;
  for (const CombinationOption* option : chosen) {
    const int of_option = transfers_to(*option, demand.target);
    transfers += of_option;
    if (of_option > 0) answer.by.push_back(option->id);
  }
  answer.met = transfers >= demand.transfers;
  for (const CombinationOption& option : task.options) {
    if (transfers_to(option, demand.target) > 0 && !has(answer.by, option.id)) {
      answer.left_out.push_back(option.id);
    }
  }
  return answer;
}

Combination answer_of(const CombinationTask& task, const Options& chosen,
                      const std::vector<Demand>& demands) {
  Combination answer;
  std::vector<std::string> ids, spent;
  for (const CombinationOption* option : chosen) {
    std::vector<std::string> serves;
    for (const Demand& demand : demands) {
      if (transfers_to(*option, demand.target) > 0) serves.push_back(demand.target);
    }
    answer.chosen.push_back(
        {option->id, option->kind, distinct(serves), option->cuts_working_fibres});
    ids.push_back(option->id);
    spent.insert(spent.end(), option->spends.begin(), option->spends.end());
  }
  for (const CombinationOption& option : task.options) {
    if (!has(ids, option.id)) {
      answer.left_out.push_back(reason_left_out(option, chosen, task, demands));
    }
  }
  std::ranges::sort(answer.left_out, {}, &LeftOut::id);
  for (const Demand& demand : demands) answer.demands.push_back(answer_of(demand, task, chosen));
  for (const BalanceRule& rule : task.rules) {
    auto strong = strong_of(rule, task);
    const bool short_before = static_cast<int>(strong.size()) < rule.keep;
    std::erase_if(strong, [&](const std::string& donor) { return covered(spent, donor); });
    answer.rules.push_back({rule.id, std::move(strong), short_before});
  }
  return answer;
}

}  // namespace

Expected<Combination> combine(const CombinationTask& task) {
  if (auto sound = check(task); !sound) return std::unexpected(std::move(sound.error()));
  const auto demands = by_tier(task.demands);
  const Options options = eligible(task);
  ZeroOneProgram program;
  program.variables = static_cast<int>(options.size() + demands.size());
  add_rows(program, options, task, demands);
  add_objectives(program, options, demands);
  const auto best = maximise_in_order(program);
  if (!best) return std::unexpected(best.error());
  if (!*best) {
    return std::unexpected(Error::internal(
        {"combination", "not even the empty set keeps the rows", "Report it with the case file"}));
  }
  Options chosen;
  for (std::size_t k = 0; k < options.size(); ++k) {
    if ((**best)[k]) chosen.push_back(options[k]);
  }
  return answer_of(task, in_order(std::move(chosen), demands), demands);
}

}  // namespace endplate::transfer
