#include "models/incision/rules_near.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "models/incision/approach_plans.hpp"

namespace endplate::incision {
namespace {

using evidence::Row;

// Skin that faces within 60 degrees of the same way.
constexpr double kSameSide = 0.5;

bool beside(const Theatre& theatre, const Cut& cut, const ApproachPlan& plan) {
  return std::ranges::any_of(plan.cut.marks, [&](const AtSkin& mark) {
    const auto place = theatre.place(mark);
    return place && std::ranges::any_of(cut.stations, [&](const Station& station) {
             return (station.skin.position_mm - place->position_mm).norm() <= kBeside_mm &&
                    station.skin.inward.dot(place->inward) >= kSameSide;
           });
  });
}

std::string figure_of(const Row& row) {
  const auto mean = row.number("published_distance_mm_mean");
  const auto sd = row.number("published_distance_mm_sd");
  const auto low = row.number("published_distance_mm_min");
  const auto high = row.number("published_distance_mm_max");
  std::string text = mean ? fmt::format("{:g} mm", *mean) : "";
  const auto add = [&](const std::string& more) { text += (text.empty() ? "" : ", ") + more; };
  if (sd) add(fmt::format("SD {:g}", *sd));
  if (low && high) add(fmt::format("{:g} to {:g}", *low, *high));
  if (low && !high) add(fmt::format("at least {:g} mm", *low));
  return text;
}

}  // namespace

Expected<std::vector<QuotedRule>> rules_near(const evidence::DataPackage& package,
                                             const Theatre& theatre, const Cut& cut,
                                             std::string_view approach) {
  const auto plans = ApproachPlans::from(package);
  if (!plans) return std::unexpected(plans.error());
  std::set<std::string, std::less<>> speaking;
  if (approach.empty()) {
    for (const ApproachPlan& plan : plans->plans()) {
      if (beside(theatre, cut, plan)) speaking.insert(plan.cut.label);
    }
  } else {
    speaking.emplace(approach);
  }
  std::vector<QuotedRule> rules;
  for (const Row row : package.table("approaches")) {
    const std::string rule(row.text("safe_rule"));
    if (rule.empty() || !speaking.contains(row.text("approach"))) continue;
    QuotedRule quoted{std::string(row.text("id")),
                      std::string(row.text("approach")),
                      rule,
                      std::string(row.text("tree_node")),
                      std::string(row.text("surface")),
                      std::string(row.text("posture")),
                      figure_of(row),
                      std::string(row.text("source"))};
    // Several rows of one study may repeat a rule, each for another figure.
    const bool repeated = std::ranges::any_of(rules, [&](const QuotedRule& other) {
      return other.rule == quoted.rule && other.source == quoted.source;
    });
    if (!repeated) rules.push_back(std::move(quoted));
  }
  return rules;
}

}  // namespace endplate::incision
