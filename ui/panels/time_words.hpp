#pragma once
// Days, dates and chances as people read them.
#include <QString>
#include <optional>

#include "models/casefile/case.hpp"
#include "models/core/summary.hpp"

namespace endplate::ui {

QString date_words(casefile::Date date);  // "2026-06-01"
// "today", "5 days ago", "26 weeks ago", "14 months ago", "in 3 weeks"
QString age_words(casefile::Date date, casefile::Date today);
// A span: up to a month as days, up to half a year as weeks, then months.
QString span_words(double days);
// Months with the 90 per cent interval: "5.2 (3.1-8.7)".
QString months_words(const Summary& days);
QString months_words(double days);
// In steps of five: "85 %", "under 5 %", "over 95 %".
QString chance_words(double chance);
// The same where there is little room: ">95 %".
QString short_chance(double chance);
// A day counted from the injury: its date where the injury's is known, else the span.
QString day_words(const std::optional<casefile::Date>& injury, double days);

}  // namespace endplate::ui
