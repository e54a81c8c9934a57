#pragma once
#include <fmt/format.h>

#include <cmath>
#include <string>

#include "models/casefile/case.hpp"
#include "models/core/summary.hpp"

namespace endplate::cli {

// "2026-06-01"
inline std::string iso_date(casefile::Date date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

// Chances for people: steps of five per cent, the ends kept open. "85", "<5", ">95"
inline std::string per_cent(double chance) {
  if (chance <= 0.0) return "0";
  if (chance < 0.025) return "<5";
  if (chance > 0.975) return ">95";
  return fmt::format("{:.0f}", std::round(chance * 20.0) * 5.0);
}

// Days as months, one decimal below three.
inline std::string months(double days) {
  const double value = days / (365.25 / 12.0);
  return value < 2.95 ? fmt::format("{:.1f}", value) : fmt::format("{:.0f}", value);
}

// "5.2 (3.1-8.7)": the middle and the 90 per cent interval.
inline std::string months(const Summary& days) {
  return fmt::format("{} ({}-{})", months(days.p50), months(days.p05), months(days.p95));
}

// Up to a month as days, up to half a year as weeks, then months. "6 weeks"
inline std::string span_of(double days) {
  if (days < 31.0) return fmt::format("{:.0f} days", days);
  if (days < 183.0) return fmt::format("{:.0f} weeks", days / 7.0);
  return months(days) + " months";
}

}  // namespace endplate::cli
