#include "ui/panels/time_words.hpp"

#include <QCoreApplication>
#include <cmath>

#include "models/casefile/words.hpp"
#include "models/recovery/decision.hpp"
#include "src/output/dates.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr double kMonth_days = 365.25 / 12.0;

QString tr(const char* text) {
  return QCoreApplication::translate("endplate::ui", text);
}

}  // namespace

QString date_words(casefile::Date date) {
  return text_of(casefile::to_string(date));
}

QString span_words(double days) {
  if (days < 31.0) {
    const int whole = static_cast<int>(days + 0.5);
    return whole == 1 ? tr("1 day") : tr("%1 days").arg(whole);
  }
  if (days < 183.0) return tr("%1 weeks").arg(static_cast<int>(days / 7.0 + 0.5));
  return tr("%1 months").arg(QString::number(days / kMonth_days, 'f', 0));
}

// Whole phrases, since a language may bend the word for the unit.
QString age_words(casefile::Date date, casefile::Date today) {
  const double days = recovery::days_between(date, today);
  const double span = std::abs(days);
  const bool ahead = days < 0.0;
  if (days == 0.0) return tr("today");
  if (span < 31.0) {
    const int whole = static_cast<int>(span + 0.5);
    if (whole == 1) return ahead ? tr("tomorrow") : tr("yesterday");
    return (ahead ? tr("in %1 days") : tr("%1 days ago")).arg(whole);
  }
  if (span < 183.0) {
    return (ahead ? tr("in %1 weeks") : tr("%1 weeks ago")).arg(static_cast<int>(span / 7.0 + 0.5));
  }
  return (ahead ? tr("in %1 months") : tr("%1 months ago"))
      .arg(QString::number(span / kMonth_days, 'f', 0));
}

QString months_words(const Summary& days) {
  return text_of(cli::months(days));
}

QString months_words(double days) {
  return text_of(cli::months(days));
}

QString chance_words(double chance) {
  const std::string step = cli::per_cent(chance);
  if (step.starts_with('<')) return tr("under 5 %");
  if (step.starts_with('>')) return tr("over 95 %");
  return text_of(step) + " %";
}

QString short_chance(double chance) {
  return text_of(cli::per_cent(chance)) + " %";
}

QString day_words(const std::optional<casefile::Date>& injury, double days) {
  if (injury) return date_words(recovery::plus_days(*injury, days));
  return days < 1.0 ? tr("the day of injury") : tr("%1 after the injury").arg(span_words(days));
}

}  // namespace endplate::ui
