#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/plan/function_groups.hpp"
#include "models/plan/planner.hpp"
#include "models/plan/series.hpp"

namespace endplate::plan {
namespace {

// Anywhere between two days with even chance.
Summary between(double low, double high) {
  const double width = high - low;
  return {0.5 * (low + high), width / std::sqrt(12.0), low + 0.05 * width, 0.5 * (low + high),
          low + 0.95 * width};
}

}  // namespace

void Planner::add_groups(const OptionRow& row, const Transfers& transfers, const Takes& takes) {
  for (const FunctionGroup& group : transfers.groups) {
    Option option = row.option;
    option.name = fmt::format("{}: {}", row.option.name, group.function);
    option.targets = group.targets;
    for (const Candidate& candidate : group.candidates) {
      if (takes(group, candidate)) option.candidates.push_back(candidate);
    }
    if (option.candidates.empty()) continue;
    finish_group(row, group, option);
  }
}

void Planner::finish_group(const OptionRow& row, const FunctionGroup& group, Option& option) {
  const Candidate& best = option.candidates.front();
  if (group.priority) option.reasons.emplace_back("the case names it as a priority");
  if (option.kind == "nerve transfer") {
    SeriesQuestion series{option.kind, nerves_, mechanisms_, group.function, {}};
    for (const Candidate& candidate : option.candidates) series.transfers.push_back(candidate.id);
    option.published = published_series(package_, series);
    option.first_movement = best.first_movement;
    option.model_chance = best.model_chance;
  }
  if (option.published.empty()) option.published = of_candidates(option.candidates);
  if (row.first_days_low) {
    option.first_movement = FirstMovement{
        between(today_days_ + *row.first_days_low, today_days_ + *row.first_days_high),
        fmt::format("operated today, when the cast or splint comes off, {:.0f} to {:.0f} days "
                    "later; evenly spread between them (assumed)",
                    *row.first_days_low, *row.first_days_high)};
  }
  std::set<std::string> costs;
  for (const Candidate& candidate : option.candidates) {
    if (!candidate.donor_cost.empty() && costs.insert(candidate.donor_cost).second &&
        costs.size() <= 2) {
      option.donor_cost += (option.donor_cost.empty() ? "" : "; ") + candidate.donor_cost;
    }
  }
  if (option.kind == "nerve transfer" && (!row.decided || option.state == OptionState::open)) {
    mark_unlikely(option);
  }
  if (group.region == "skin" && option.state == OptionState::unlikely) {
    option.state = OptionState::later;
    option.state_words = "for protective feeling, which has no such end of time as a muscle";
  }
  if (!is_shown(best)) {
    if (option.state == OptionState::open) {
      option.state = OptionState::not_judged;
      option.state_words.clear();
    }
    option.state_words += option.state_words.empty() ? "" : "; ";
    option.state_words +=
        "examine first: of no donor was it shown that it works and that what must hold beside it "
        "does";
  }
  push(std::move(option));
}

std::vector<PublishedResult> Planner::of_candidates(const std::vector<Candidate>& candidates) {
  const Candidate* largest = nullptr;
  for (const Candidate& candidate : candidates) {
    if (is_shown(candidate) != is_shown(candidates.front())) break;
    if (candidate.published.empty()) continue;
    const double n = candidate.published.front().n.value_or(0.0);
    if (largest == nullptr || n > largest->published.front().n.value_or(0.0)) {
      largest = &candidate;
    }
  }
  return largest == nullptr ? std::vector<PublishedResult>{} : largest->published;
}

void Planner::add_fusion(const OptionRow& row) {
  const auto fusion = shoulder_fusion(*now_);
  if (!fusion) return;
  Option option = row.option;
  option.targets = {"position of the arm"};
  option.candidates.push_back(*fusion);
  if (fusion->donor_state == DonorState::not_judged) {
    option.state = OptionState::not_judged;
    option.state_words = "examine trapezius and serratus anterior first";
  } else if (fusion->donor_state != DonorState::strong) {
    option.state = OptionState::closed;
    option.state_words = "what would carry the fused arm does not work";
  }
  push(std::move(option));
}

}  // namespace endplate::plan
