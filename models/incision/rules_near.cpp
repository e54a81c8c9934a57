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

// From a place to the straight way between two.
double distance_mm(const Eigen::Vector3d& p, const Eigen::Vector3d& from,
                   const Eigen::Vector3d& to) {
  const Eigen::Vector3d way = to - from;
  const double squared = way.squaredNorm();
  const double share = squared > 0.0 ? std::clamp((p - from).dot(way) / squared, 0.0, 1.0) : 0.0;
  return (from + share * way - p).norm();
}

bool beside(const Theatre& theatre, const Cut& cut, const ApproachPlan& plan) {
  std::vector<SkinPlace> places;
  for (const AtSkin& mark : plan.cut.marks) {
    auto place = theatre.place(mark);
    if (!place) return false;
    places.push_back(std::move(*place));
  }
  for (std::size_t k = 0; k < places.size(); ++k) {
    const SkinPlace& from = places[k];
    const SkinPlace& to = places[std::min(k + 1, places.size() - 1)];
    const Eigen::Vector3d inward = from.inward + to.inward;
    if (std::ranges::any_of(cut.stations, [&](const Station& station) {
          const Eigen::Vector3d& p = station.skin.position_mm;
          return distance_mm(p, from.position_mm, to.position_mm) <= kBeside_mm &&
                 station.skin.inward.dot(inward) >= kSameSide * inward.norm();
        })) {
      return true;
    }
  }
  return false;
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
