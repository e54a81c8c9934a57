#include <algorithm>
#include <array>
#include <boost/math/distributions/beta.hpp>
#include <map>
#include <set>
#include <tuple>

#include "models/transfer/judge.hpp"

namespace endplate::transfer {
namespace {

struct Interval {
  double low = 0.0;
  double high = 1.0;
};

// 95 % by Jeffreys' prior (Brown, Cai and DasGupta 2001, Stat Sci 16:101).
std::optional<Interval> interval(const PublishedResult& result) {
  if (!result.n || *result.n <= 0.0) return std::nullopt;
  if (!result.count && !result.share) return std::nullopt;
  const double successes = result.count ? *result.count : *result.share * *result.n;
  if (successes < 0.0 || successes > *result.n) return std::nullopt;
  const boost::math::beta_distribution<> shares(successes + 0.5, *result.n - successes + 0.5);
  Interval found{boost::math::quantile(shares, 0.025), boost::math::quantile(shares, 0.975)};
  if (successes <= 0.0) found.low = 0.0;
  if (successes >= *result.n) found.high = 1.0;
  return found;
}

constexpr int verdict_rank(Verdict verdict) {
  switch (verdict) {
    case Verdict::feasible:
      return 0;
    case Verdict::marginal:
      return 1;
    case Verdict::not_judged:
      return 2;
    case Verdict::not_feasible:
      break;
  }
  return 3;
}

// A function that no table gives stands with the neutral ones.
constexpr int synergy_rank(Synergy synergy) {
  if (synergy == Synergy::synergist) return 0;
  return synergy == Synergy::antagonist ? 2 : 1;
}

// Of donors that are all cut the sum counts, of alternatives the dearest; of alternatives at each
// of several nerves the sum of the dearest.
int cut_whole(const Candidate& candidate, std::vector<std::string> Cut::*lost) {
  std::map<std::string, int, std::less<>> dearest;
  for (const Cut& cut : candidate.cuts) {
    std::string key;
    if (candidate.together == Together::all) key = cut.node;
    if (candidate.together == Together::one_of_each_nerve) key = cut.nerve;
    int& most = dearest[key];
    most = std::max(most, static_cast<int>((cut.*lost).size()));
  }
  int sum = 0;
  for (const auto& [key, most] : dearest) sum += most;
  return sum;
}

bool is_counted(const Candidate& candidate) {
  return std::ranges::any_of(candidate.results,
                             [](const PublishedResult& result) { return result.n.has_value(); });
}

// Smaller is better, each by itself.
std::array<int, 6> standing(const Candidate& candidate) {
  return {verdict_rank(candidate.verdict),
          synergy_rank(candidate.synergy),
          cut_whole(candidate, &Cut::muscles),
          cut_whole(candidate, &Cut::areas),
          static_cast<int>(candidate.also_spends.size()),
          is_counted(candidate) ? 0 : 1};
}

// How `a` stands to `b`: below zero worse, above better.
int by_result(const Candidate& a, const Candidate& b) {
  for (const PublishedResult& one : a.results) {
    for (const PublishedResult& other : b.results) {
      if (one.scale != other.scale || one.scale == "other") continue;
      const auto first = interval(one);
      const auto second = interval(other);
      if (!first || !second) continue;
      if (first->low > second->high) return 1;
      if (first->high < second->low) return -1;
    }
  }
  return 0;
}

bool restores_as_much(const Candidate& a, const Candidate& b) {
  const std::set<std::string> of_a(a.target_keys.begin(), a.target_keys.end());
  return std::ranges::all_of(b.target_keys,
                             [&](const std::string& key) { return of_a.contains(key); });
}

bool beats(const Candidate& a, const Candidate& b) {
  // Other operations let in other patients; only like is compared with like.
  if (a.way != b.way || a.coaptation != b.coaptation || !restores_as_much(a, b)) return false;
  if (a.distance_mm.has_value() != b.distance_mm.has_value()) return false;
  const auto of_a = standing(a);
  const auto of_b = standing(b);
  bool better = false;
  for (std::size_t i = 0; i < of_a.size(); ++i) {
    if (of_a[i] > of_b[i]) return false;
    better = better || of_a[i] < of_b[i];
  }
  const int result = by_result(a, b);
  if (result < 0) return false;
  if (a.distance_mm && *a.distance_mm > *b.distance_mm) return false;
  return better || result > 0 || (a.distance_mm && *a.distance_mm < *b.distance_mm);
}

using Operation = std::tuple<std::vector<std::string>, std::vector<std::string>, Way, Coaptation>;

Operation operation(const Candidate& candidate) {
  return {candidate.donor_nodes, candidate.recipient_nodes, candidate.way, candidate.coaptation};
}

}  // namespace

void rank(Group& group) {
  auto& candidates = group.candidates;
  for (Candidate& candidate : candidates) {
    candidate.beaten_by.clear();
    for (const Candidate& other : candidates) {
      if (&other == &candidate || !beats(other, candidate)) continue;
      candidate.beaten_by = other.id;
      break;
    }
  }
  std::map<std::string, bool> repeats;
  std::set<Operation> seen;
  for (const Candidate& candidate : candidates) {
    repeats[candidate.id] =
        candidate.way == Way::nerve && !seen.insert(operation(candidate)).second;
  }
  std::ranges::stable_sort(candidates, {}, [&](const Candidate& candidate) {
    return std::tuple(candidate.way, verdict_rank(candidate.verdict), candidate.better_exists,
                      repeats[candidate.id], !candidate.beaten_by.empty(),
                      synergy_rank(candidate.synergy), !is_counted(candidate));
  });
}

}  // namespace endplate::transfer
