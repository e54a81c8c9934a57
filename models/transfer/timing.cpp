#include "models/transfer/timing.hpp"

#include <fmt/format.h>

namespace endplate::transfer {
namespace {

constexpr double kDaysPerMonth = 30.4375;

// From this day on the decision rules speak of tendons instead of nerves.
double window_days(const evidence::DataPackage& package) {
  return row_with_id(package.table("decision_rules"), "late_complete").number("min_days").value();
}

}  // namespace

void say_timing(const Situation& now, const evidence::DataPackage& package,
                const JudgeOptions& options, Candidate& candidate) {
  if (options.days_since_injury) {
    const double months = *options.days_since_injury / kDaysPerMonth;
    candidate.timing.push_back(fmt::format("{:.0f} months after the injury", months));
    if (candidate.longest_delay_months && months > *candidate.longest_delay_months) {
      candidate.timing.push_back(fmt::format("later than any in the series ({:.0f} months)",
                                             *candidate.longest_delay_months));
    }
    const bool late = *options.days_since_injury >= window_days(package);
    if (late && candidate.way == Way::nerve && !candidate.skin) {
      candidate.doubts.push_back(fmt::format(
          "{:.0f} months after the injury a nerve seldom gives a useful muscle", months));
      candidate.sources.emplace_back("late_complete");
    }
  } else {
    candidate.timing.emplace_back("the date of the injury is not given");
  }
  if (const auto& age = now.patient().limb.age_years) {
    candidate.timing.push_back(fmt::format("age {:.0f} years", *age));
  }
}

}  // namespace endplate::transfer
