#include "models/followup/on_course.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace endplate::followup {

using recovery::Progress;
using State = recovery::Course::State;

ProgressChances progress_chances(std::span<const Growth> patients, std::span<const double> weights,
                                 const FollowupParameters& parameters) {
  ProgressChances chances;
  double total = 0.0;
  for (std::size_t i = 0; i < patients.size(); ++i) {
    const Growth& growth = patients[i];
    if (growth.state == State::not_below) continue;
    total += weights[i];
    const bool grows = growth.state == State::growth;  // else a block, which has no rate
    if (growth.state == State::none) {
      chances.no_advance += weights[i];
    } else if (grows && growth.rate < parameters.slow_mm_per_day) {
      chances.late += weights[i];
    } else if (grows && growth.rate > parameters.fast_mm_per_day) {
      chances.ahead += weights[i];
    } else {
      chances.on_course += weights[i];
    }
  }
  if (total > 0.0) {
    for (double* chance :
         {&chances.ahead, &chances.on_course, &chances.late, &chances.no_advance}) {
      *chance /= total;
    }
  }
  return chances;
}

namespace {

double odds(double chance) {
  return chance / std::max(1.0 - chance, 1e-12);
}

// A repair lets nothing through so seldom that even telling points leave this less likely than not:
// then what they say counts and not the chance.
std::optional<Call> still(const ProgressChances& chances, const Basis& basis,
                          const FollowupParameters& parameters) {
  if (chances.no_advance >= parameters.call_chance) return Call{Progress::no_advance, ""};
  const double before = odds(basis.chance_no_growth_before);
  if (before <= 0.0 || odds(chances.no_advance) < parameters.call_evidence * before) return {};
  return Call{Progress::no_advance,
              fmt::format("growth is still the likelier, but what was seen has raised the odds "
                          "that nothing grows {:.0f} times",
                          odds(chances.no_advance) / before)};
}

}  // namespace

Call call(const ProgressChances& chances, const Basis& basis,
          const FollowupParameters& parameters) {
  if (!basis.anything_seen) {
    if (!basis.tappable) {
      return {Progress::not_informative,
              "no skin fibres run in the nerve beyond the lesion, so there is nothing to tap, and "
              "no muscle or EMG below it was examined: examine the muscles in their order"};
    }
    return {Progress::cannot_tell_yet,
            "nothing below the lesion was examined on a known date: tap the nerve, grade the "
            "muscles"};
  }
  if (basis.misfit) {
    return {Progress::cannot_tell_yet,
            "the findings fit no course of growth: examine again before anything is built on "
            "them"};
  }
  const bool series = basis.visits >= static_cast<int>(parameters.fewest_visits) &&
                      basis.span_days >= parameters.shortest_gap_days;
  if (!series && !basis.telling_finding) {
    return {Progress::cannot_tell_yet,
            basis.tappable
                ? fmt::format("too few points: {} visit(s) with a Tinel point, {:.0f} are needed, "
                              "{:.0f} days apart, and no muscle was examined that is due by now",
                              basis.visits, parameters.fewest_visits, parameters.shortest_gap_days)
                : std::string("no muscle was examined that is due by now, and there is nothing to "
                              "tap")};
  }
  if (basis.last_days < parameters.earliest_call_days) {
    return {Progress::cannot_tell_yet,
            fmt::format("the last finding that tells anything is {:.0f} days from the injury or "
                        "the repair; before {:.0f} nothing is called",
                        basis.last_days, parameters.earliest_call_days)};
  }
  if (auto none_grows = still(chances, basis, parameters)) return *none_grows;
  const std::array<std::pair<double, Progress>, 3> states{{
      {chances.late, Progress::late},
      {chances.on_course, Progress::on_course},
      {chances.ahead, Progress::ahead},
  }};
  for (const auto& [chance, progress] : states) {
    if (chance >= parameters.call_chance) return {progress, ""};
  }
  return {Progress::cannot_tell_yet, "no state is more likely than not"};
}

}  // namespace endplate::followup
