#include "models/incision/approach_plans.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <ranges>
#include <utility>

#include "models/casefile/words.hpp"

namespace endplate::incision {
namespace {

std::optional<CutKind> kind_from(std::string_view word) {
  for (const auto& kind : casefile::kCutKinds) {
    if (kind.text == word) return kind.value;
  }
  return std::nullopt;
}

std::optional<Aside> aside_from(std::string_view word) {
  constexpr std::array<std::pair<std::string_view, Aside>, 4> kWords{
      {{"anterior", Aside::anterior},
       {"posterior", Aside::posterior},
       {"medial", Aside::medial},
       {"lateral", Aside::lateral}}};
  const auto found = std::ranges::find(kWords, word, &std::pair<std::string_view, Aside>::first);
  return found == kWords.end() ? std::nullopt : std::optional(found->second);
}

AtSkin mark_from(const evidence::Row& row) {
  AtSkin mark;
  mark.landmark = row.text("landmark");
  mark.along_mm = row.number("along_mm").value_or(0.0);
  mark.toward =
      row.text("toward") == "proximal" ? casefile::Toward::proximal : casefile::Toward::distal;
  mark.aside_mm = row.number("aside_mm").value_or(0.0);
  mark.aside = aside_from(row.text("aside"));
  mark.surface = aside_from(row.text("surface"));
  return mark;
}

Problem wrong(std::string_view table, const evidence::Row& row, std::string_view column,
              std::string what, std::string mend) {
  return {fmt::format("{}.csv, row {}, column {}", table, row.line(), column), std::move(what),
          std::move(mend)};
}

}  // namespace

std::optional<std::map<std::string, double>> pose_from_text(std::string_view text) {
  std::map<std::string, double> pose;
  for (const auto part : std::views::split(text, ';')) {
    const std::string_view item(part.begin(), part.end());
    if (item.empty()) continue;
    const std::size_t sign = item.find('=');
    if (sign == std::string_view::npos || sign == 0) return std::nullopt;
    double angle = 0.0;
    const auto [end, fault] =
        std::from_chars(item.data() + sign + 1, item.data() + item.size(), angle);
    if (fault != std::errc() || end != item.data() + item.size()) return std::nullopt;
    pose.emplace(item.substr(0, sign), angle);
  }
  return pose;
}

Expected<ApproachPlans> ApproachPlans::from(const evidence::DataPackage& package) {
  ApproachPlans all;
  std::vector<Problem> problems;
  std::map<std::string, std::size_t, std::less<>> index_of;
  for (const evidence::Row row : package.table("approach_plans")) {
    ApproachPlan plan;
    plan.cut.label = row.text("approach");
    const auto kind = kind_from(row.text("kind"));
    auto pose = pose_from_text(row.text("pose"));
    if (!kind) {
      problems.push_back(wrong("approach_plans", row, "kind", "no such kind",
                               "Write line, portal, pin or injection."));
      continue;
    }
    if (!pose) {
      problems.push_back(wrong("approach_plans", row, "pose", "this is no pose",
                               "Write keys of a case's pose, \"key=degrees\", between ';'."));
      continue;
    }
    plan.cut.kind = *kind;
    plan.cut.depth_mm = row.number("depth_mm");
    plan.pose_deg = std::move(*pose);
    plan.surface = row.text("surface");
    plan.provenance =
        evidence::provenance_from(row.text("provenance")).value_or(evidence::Provenance::assumed);
    plan.reason = row.text("reason");
    plan.rows = row.list("rows");
    index_of.emplace(plan.cut.label, all.plans_.size());
    all.plans_.push_back(std::move(plan));
  }
  std::map<std::size_t, double> last_order;
  for (const evidence::Row row : package.table("approach_marks")) {
    const auto found = index_of.find(row.text("approach"));
    if (found == index_of.end()) continue;  // the package knows no dangling names
    const double order = row.number("order").value_or(0.0);
    double& last = last_order[found->second];
    if (order != last + 1.0) {
      problems.push_back(wrong("approach_marks", row, "order", "the marks are out of order",
                               "Number the marks of an approach 1, 2, 3, one below the other."));
    }
    last = order;
    PlannedCut& cut = all.plans_[found->second].cut;
    if (row.text("role") == "aim") {
      cut.aimed_at = mark_from(row);
    } else {
      cut.marks.push_back(mark_from(row));
    }
  }
  for (const evidence::Row row : package.table("approach_plans_left_out")) {
    all.left_out_.emplace(std::string(row.text("approach")), std::string(row.text("reason")));
  }
  if (!problems.empty()) return std::unexpected(Error{Fault::internal, std::move(problems)});
  return all;
}

const ApproachPlan* ApproachPlans::find(std::string_view approach) const {
  const auto found = std::ranges::find_if(
      plans_, [&](const ApproachPlan& plan) { return plan.cut.label == approach; });
  return found == plans_.end() ? nullptr : &*found;
}

std::string_view ApproachPlans::why_not(std::string_view approach) const {
  const auto found = left_out_.find(approach);
  return found == left_out_.end() ? std::string_view() : std::string_view(found->second);
}

Expected<PlannedCut> lay_approach(const evidence::DataPackage& package, std::string_view name,
                                  const std::string& option, casefile::Limb& limb,
                                  std::vector<std::string>& assumptions) {
  const auto plans = ApproachPlans::from(package);
  if (!plans) return std::unexpected(plans.error());
  const ApproachPlan* plan = plans->find(name);
  if (plan == nullptr) {
    const std::string_view reason = plans->why_not(name);
    if (!reason.empty()) {
      return std::unexpected(Error::outside_model(
          {option, fmt::format("the approach '{}' cannot be drawn: {}", name, reason),
           "Mark the cut with --line or --portal."}));
    }
    std::vector<std::string> names;
    for (const ApproachPlan& one : plans->plans()) names.push_back(one.cut.label);
    return std::unexpected(
        Error::input({option, fmt::format("there is no approach '{}' in the tables", name),
                      fmt::format("Choose one of: {}.", fmt::join(names, "; "))}));
  }
  limb.pose_deg = plan->pose_deg;
  assumptions.push_back(fmt::format("The approach is laid as approach_plans.csv has it: {}.",
                                    plan->reason.empty() ? "as its studies say" : plan->reason));
  return plan->cut;
}

}  // namespace endplate::incision
