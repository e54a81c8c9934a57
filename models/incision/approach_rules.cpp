#include "models/incision/approach_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <limits>
#include <utility>

#include "models/core/summary.hpp"

namespace endplate::incision {
namespace {

constexpr std::array<std::pair<std::string_view, RuleCheck>, 7> kChecks{
    {{"beyond", RuleCheck::beyond},
     {"before", RuleCheck::before},
     {"band", RuleCheck::band},
     {"place", RuleCheck::place},
     {"possible", RuleCheck::possible},
     {"change", RuleCheck::change},
     {"none", RuleCheck::none}}};

// The figures that a check cannot do without.
bool complete(const ApproachRule& rule) {
  switch (rule.check) {
    case RuleCheck::beyond:
      return rule.low_mm && !rule.high_mm;
    case RuleCheck::before:
      return rule.high_mm && !rule.low_mm;
    case RuleCheck::band:
    case RuleCheck::place:
      return rule.low_mm && rule.high_mm;
    case RuleCheck::possible:
      return rule.high_mm.has_value();
    case RuleCheck::change:
      return (rule.low_mm || rule.high_mm) && !rule.from_row.empty();
    case RuleCheck::none:
      return rule.of_row.empty() && !rule.reason.empty();
  }
  return false;
}

constexpr double kZ90 = 1.6448536269514722;  // half-width of a central normal interval of 90 %

}  // namespace

LimbDistance LimbDistance::normal(double mean_mm, double sd_mm) {
  return {mean_mm, sd_mm, mean_mm - kZ90 * sd_mm, mean_mm + kZ90 * sd_mm, {}};
}

LimbDistance LimbDistance::of_samples(std::vector<double> samples_mm) {
  const Summary summary = summarise_sample(samples_mm);
  return {summary.mean, summary.sd, summary.p05, summary.p95, std::move(samples_mm)};
}

double LimbDistance::chance(std::optional<double> from_mm, std::optional<double> to_mm) const {
  const double from = from_mm.value_or(-std::numeric_limits<double>::infinity());
  const double to = to_mm.value_or(std::numeric_limits<double>::infinity());
  if (!samples_mm.empty()) {
    const auto count =
        std::ranges::count_if(samples_mm, [&](double mm) { return from <= mm && mm <= to; });
    return static_cast<double>(count) / static_cast<double>(samples_mm.size());
  }
  const boost::math::normal limbs(mean_mm, sd_mm);
  const double below = std::isinf(from) ? 0.0 : boost::math::cdf(limbs, from);
  const double above = std::isinf(to) ? 0.0 : boost::math::cdf(boost::math::complement(limbs, to));
  return 1.0 - below - above;
}

Expected<std::vector<ApproachRule>> approach_rules(const evidence::DataPackage& package) {
  std::vector<ApproachRule> rules;
  std::vector<Problem> problems;
  for (const evidence::Row row : package.table("approach_rules")) {
    ApproachRule rule;
    rule.row = row.text("row");
    const auto check = std::ranges::find(kChecks, row.text("check"),
                                         &std::pair<std::string_view, RuleCheck>::first);
    if (check != kChecks.end()) rule.check = check->second;
    rule.low_mm = row.number("low_mm");
    rule.high_mm = row.number("high_mm");
    rule.of_row = row.text("of_row");
    rule.from_row = row.text("from_row");
    rule.reason = row.text("reason");
    if (!complete(rule) || (rule.check != RuleCheck::none && rule.of_row.empty())) {
      problems.push_back({fmt::format("approach_rules.csv, row {}", row.line()),
                          "the check lacks a figure or a row, or has one too many",
                          "Give what the description of the table asks of that check."});
    }
    rules.push_back(std::move(rule));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return rules;
}

RuleVerdict judge(const ApproachRule& rule, const LimbDistance& of, const LimbDistance* from) {
  RuleVerdict verdict;
  switch (rule.check) {
    case RuleCheck::beyond:
      verdict.figure = of.chance(std::nullopt, rule.low_mm);
      verdict.confirmed = verdict.figure <= kRareLimb;
      break;
    case RuleCheck::before:
      verdict.figure = of.chance(rule.high_mm, std::nullopt);
      verdict.confirmed = verdict.figure <= kRareLimb;
      break;
    case RuleCheck::band:
      verdict.figure = of.chance(rule.low_mm, rule.high_mm);
      verdict.confirmed = verdict.figure >= kCommonLimb;
      break;
    case RuleCheck::possible:
      verdict.figure = of.chance(rule.low_mm, rule.high_mm);
      verdict.confirmed = verdict.figure > kSeenLimb;
      break;
    case RuleCheck::place: {
      const double off = std::abs(*rule.low_mm - of.mean_mm);
      verdict.figure = 1.0 - of.chance(of.mean_mm - off, of.mean_mm + off);
      verdict.confirmed = of.low_mm <= *rule.low_mm && *rule.high_mm <= of.high_mm;
      break;
    }
    case RuleCheck::change: {
      verdict.figure = from == nullptr ? 0.0 : of.mean_mm - from->mean_mm;
      const bool above = !rule.low_mm || verdict.figure > *rule.low_mm;
      const bool below = !rule.high_mm || verdict.figure < *rule.high_mm;
      verdict.confirmed = from != nullptr && above && below;
      break;
    }
    case RuleCheck::none:
      break;
  }
  return verdict;
}

}  // namespace endplate::incision
