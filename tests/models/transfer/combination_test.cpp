// The best set of transfers against exhaustive search: every subset is tried, and the order of the
// objectives is written down a second time, without the solver.
#include "models/transfer/combination.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <ctime>
#include <map>
#include <set>
#include <thread>

#include "random_tasks.hpp"

using namespace transfer_tests;

namespace {

using Chosen = std::vector<const CombinationOption*>;

std::string whole_of(const std::string& donor) {
  return donor.substr(0, donor.find('/'));
}

bool names(const std::vector<std::string>& list, const std::string& donor) {
  return std::ranges::find(list, donor) != list.end() ||
         std::ranges::find(list, whole_of(donor)) != list.end();
}

// Two parts of one donor are two donors; the whole is each of its parts.
bool share(const std::vector<std::string>& one, const std::vector<std::string>& other) {
  const auto in = [](const std::vector<std::string>& list) {
    return [&list](const std::string& donor) { return names(list, donor); };
  };
  return std::ranges::any_of(one, in(other)) || std::ranges::any_of(other, in(one));
}

std::vector<std::string> used(const CombinationOption& option) {
  std::set<std::string> all(option.spends.begin(), option.spends.end());
  all.insert(option.shares.begin(), option.shares.end());
  return {all.begin(), all.end()};
}

bool allowed(const CombinationTask& task, const Chosen& chosen) {
  for (std::size_t k = 0; k < chosen.size(); ++k) {
    for (std::size_t m = 0; m < k; ++m) {
      if (share(used(*chosen[k]), used(*chosen[m]))) return false;
      for (const std::string& place : chosen[k]->receives) {
        if (std::ranges::find(chosen[m]->receives, place) != chosen[m]->receives.end())
          return false;
      }
      for (const ForbiddenPair& pair : task.forbidden) {
        const std::set pair_ids{pair.a, pair.b};
        if (pair_ids == std::set{chosen[k]->id, chosen[m]->id}) return false;
      }
    }
  }
  for (const BalanceRule& rule : task.rules) {
    int left = 0;
    bool spends_strong = false;
    for (const std::string& donor : std::set(rule.donors.begin(), rule.donors.end())) {
      if (!names(task.strong_now, donor)) continue;
      if (std::ranges::any_of(chosen, [&](const auto* one) { return names(one->spends, donor); })) {
        spends_strong = true;
      } else {
        ++left;
      }
    }
    if (spends_strong && left < rule.keep) return false;
  }
  return true;
}

int served(const CombinationOption& option, const std::string& target) {
  int times = 0;
  for (const Service& service : option.serves)
    times += service.target == target ? service.transfers : 0;
  return times;
}

// Smaller is better. The ids stand last: 0 for an id that is in the set, by bytes.
std::vector<int> standing(const CombinationTask& task, const Chosen& chosen) {
  std::vector<int> all;
  std::map<int, int> met;
  std::map<int, std::map<int, int, std::greater<>>> ranks;  // tier, rank from the worst
  for (const Demand& demand : task.demands) {
    int times = 0;
    for (const CombinationOption* option : chosen) times += served(*option, demand.target);
    met[demand.tier] += times >= demand.transfers ? 1 : 0;
    for (int rank = 1; rank <= 4; ++rank) ranks[demand.tier][rank] = 0;
  }
  int donors = 0;
  std::map<std::string, int> in_set;
  for (const CombinationOption& option : task.options) in_set[option.id] = 1;
  for (const CombinationOption* option : chosen) {
    std::set<int> tiers;
    for (const Demand& demand : task.demands) {
      if (served(*option, demand.target) > 0) tiers.insert(demand.tier);
    }
    for (const int tier : tiers) ++ranks[tier][option->rank];
    donors += static_cast<int>(used(*option).size());
    in_set[option->id] = 0;
  }
  for (const auto& [tier, number] : met) {
    all.push_back(-number);
    for (const auto& [rank, count] : ranks[tier]) {
      if (rank > 1) all.push_back(count);
    }
  }
  for (const auto& [tier, by_rank] : ranks) all.push_back(by_rank.at(1));
  all.push_back(donors);
  for (const auto& [id, out] : in_set) all.push_back(out);
  return all;
}

struct Exhaustive {
  std::set<std::string> ids;
  bool tie = false;  // an equal set lost by its ids alone
};

Exhaustive search(const CombinationTask& task) {
  // What serves nothing that is asked for is never done.
  Chosen options;
  for (const CombinationOption& option : task.options) {
    if (std::ranges::any_of(task.demands, [&](const Demand& demand) {
          return served(option, demand.target) > 0;
        })) {
      options.push_back(&option);
    }
  }
  std::vector<int> best;
  Exhaustive found;
  for (unsigned subset = 0; subset < 1U << options.size(); ++subset) {
    Chosen chosen;
    for (std::size_t k = 0; k < options.size(); ++k) {
      if ((subset >> k & 1U) != 0) chosen.push_back(options[k]);
    }
    if (!allowed(task, chosen)) continue;
    auto one = standing(task, chosen);
    const auto without_ids = static_cast<std::ptrdiff_t>(one.size() - task.options.size());
    const bool equal =
        !best.empty() && std::equal(one.begin(), one.begin() + without_ids, best.begin());
    if (best.empty() || one < best) {
      best = std::move(one);
      found = {{}, equal};
      for (const CombinationOption* option : chosen) found.ids.insert(option->id);
    } else if (equal) {
      found.tie = true;
    }
  }
  return found;
}

std::set<std::string> ids_of(const Combination& answer) {
  std::set<std::string> ids;
  for (const ChosenOption& option : answer.chosen) ids.insert(option.id);
  return ids;
}

const CombinationOption& option_of(const CombinationTask& task, const std::string& id) {
  return *std::ranges::find(task.options, id, &CombinationOption::id);
}

// Every option is either chosen or left out for a reason that holds.
void check_reasons(const CombinationTask& task, const Combination& answer,
                   std::map<LeftOutBy, int>& seen) {
  CHECK(answer.chosen.size() + answer.left_out.size() == task.options.size());
  const auto ids = ids_of(answer);
  Chosen chosen;
  for (const std::string& id : ids) chosen.push_back(&option_of(task, id));
  for (const LeftOut& out : answer.left_out) {
    CAPTURE(out.id, out.cause, static_cast<int>(out.by));
    ++seen[out.by];
    CHECK_FALSE(ids.contains(out.id));
    for (const std::string& id : out.beside) CHECK(ids.contains(id));
    const CombinationOption& option = option_of(task, out.id);
    Chosen with = chosen;
    with.push_back(&option);
    const bool alone = allowed(task, {&option});
    Chosen beside{&option};
    for (const std::string& id : out.beside) beside.push_back(&option_of(task, id));
    const auto has = [](const std::vector<std::string>& names, const std::string& name) {
      return std::ranges::find(names, name) != names.end();
    };
    switch (out.by) {
      case LeftOutBy::serves_nothing_asked:
        for (const Demand& demand : task.demands) CHECK(served(option, demand.target) == 0);
        break;
      case LeftOutBy::rule_alone:
        CHECK_FALSE(alone);
        break;
      case LeftOutBy::donor_used:
        CHECK(alone);
        CHECK(names(used(option), out.cause));
        CHECK(names(used(*beside.at(1)), out.cause));
        break;
      case LeftOutBy::place_taken:
        CHECK(has(option.receives, out.cause));
        CHECK(has(beside.at(1)->receives, out.cause));
        break;
      case LeftOutBy::forbidden_pair:
        CHECK_FALSE(allowed(task, {&option, beside.at(1)}));
        break;
      case LeftOutBy::rule:
        CHECK(alone);
        CHECK(beside.size() > 1);
        CHECK_FALSE(allowed(task, beside));
        break;
      case LeftOutBy::already_served:
      case LeftOutBy::falls_short:
        CHECK(allowed(task, with));
        CHECK(served(option, out.cause) > 0);
        break;
    }
  }
}

}  // namespace

TEST_CASE("the best set equals exhaustive search on 500 random tasks, ties included",
          "[transfer][combination]") {
  RandomTasks tasks(20260131);
  int ties = 0, several = 0, unmet = 0;
  std::map<LeftOutBy, int> seen;
  for (int n = 0; n < 500; ++n) {
    const CombinationTask task = tasks.task(n % 5 == 0 ? 1 + n % 7 : 8 + n % 7);
    CAPTURE(n, task.options.size());
    const auto answer = combine(task);
    REQUIRE(answer);
    const Exhaustive expected = search(task);
    REQUIRE(ids_of(*answer) == expected.ids);
    ties += expected.tie ? 1 : 0;
    several += expected.ids.size() > 2 ? 1 : 0;
    for (const DemandAnswer& demand : answer->demands) {
      int times = 0;
      for (const auto& id : expected.ids)
        times += served(option_of(task, id), demand.demand.target);
      CHECK(demand.met == (times >= demand.demand.transfers));
      unmet += demand.met ? 0 : 1;
    }
    check_reasons(task, *answer, seen);
  }
  // The tasks are hard enough to tell a wrong answer from a right one.
  CHECK(ties > 40);
  CHECK(several > 150);
  CHECK(unmet > 100);
  for (int by = 0; by <= static_cast<int>(LeftOutBy::falls_short); ++by) {
    CAPTURE(by);
    CHECK(seen[static_cast<LeftOutBy>(by)] > 5);
  }
}

TEST_CASE("the order in which options, demands and rules are listed changes nothing",
          "[transfer][combination]") {
  RandomTasks tasks(7);
  for (int n = 0; n < 40; ++n) {
    CombinationTask task = tasks.task(12);
    const auto forward = combine(task);
    std::ranges::reverse(task.options);
    std::ranges::reverse(task.demands);
    std::ranges::reverse(task.rules);
    std::ranges::reverse(task.forbidden);
    const auto backward = combine(task);
    REQUIRE(forward);
    REQUIRE(backward);
    CHECK(ids_of(*forward) == ids_of(*backward));
  }
}

TEST_CASE("several threads at once get the answers of one", "[transfer][combination]") {
  RandomTasks tasks(11);
  std::vector<CombinationTask> all;
  for (int n = 0; n < 24; ++n) all.push_back(tasks.task(16));
  std::vector<std::set<std::string>> alone, together(all.size());
  for (const CombinationTask& task : all) alone.push_back(ids_of(combine(task).value()));
  std::vector<std::thread> threads;
  for (std::size_t part = 0; part < 3; ++part) {
    threads.emplace_back([&, part] {
      for (std::size_t n = part; n < all.size(); n += 3)
        together[n] = ids_of(combine(all[n]).value());
    });
  }
  for (std::thread& thread : threads) thread.join();
  CHECK(alone == together);
}

TEST_CASE("a task that contradicts itself is an error with every place",
          "[transfer][combination]") {
  CombinationTask task;
  CombinationOption option;
  option.id = "twice";
  option.serves = {{"elbow flexion", 0}};
  task.options = {option, option};
  task.demands = {{"elbow flexion", 0, 1, "", "", ""}};
  task.rules = {{"none", {"ECRB"}, 0, "", "", ""}};
  const auto answer = combine(task);
  REQUIRE_FALSE(answer);
  CHECK(answer.error().fault == endplate::Fault::internal);
  CHECK(answer.error().problems.size() == 5);
}

TEST_CASE("without options every target stays without", "[transfer][combination]") {
  CombinationTask task;
  task.demands = {{"elbow flexion", 1, 1, "", "", ""}};
  const auto answer = combine(task);
  REQUIRE(answer);
  CHECK(answer->chosen.empty());
  REQUIRE(answer->demands.size() == 1);
  CHECK_FALSE(answer->demands.front().met);
  REQUIRE(combine({}));
}

namespace {

// Milliseconds of processor time of each of `runs` tasks, sorted: what else the machine does at the
// time does not count.
std::vector<double> times_ms(int options, int runs) {
  RandomTasks tasks(static_cast<unsigned>(options));
  std::vector<double> times;
  for (int n = 0; n < runs; ++n) {
    const CombinationTask task = tasks.task(options);
    const std::clock_t begin = std::clock();
    const auto answer = combine(task);
    const std::clock_t end = std::clock();
    REQUIRE(answer);
    times.push_back(1000.0 * static_cast<double>(end - begin) / CLOCKS_PER_SEC);
  }
  std::ranges::sort(times);
  return times;
}

}  // namespace

TEST_CASE("forty options take well under 20 ms", "[transfer][combination]") {
  const auto times = times_ms(40, 41);
  CHECK(times[20] < 10.0);
  CHECK(times[38] < 20.0);
}

TEST_CASE("time against the number of options", "[.combination_timing]") {
  for (const int options : {5, 10, 20, 40, 80}) {
    const auto times = times_ms(options, 201);
    WARN(options << " options: median " << times[100] << " ms, 95 of 100 below " << times[190]
                 << " ms, longest " << times[200] << " ms");
  }
}
