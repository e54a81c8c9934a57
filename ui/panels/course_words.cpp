#include "ui/panels/course_words.hpp"

#include <QCoreApplication>

#include "models/followup/follow_up.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

using followup::LesionProgress;
constexpr double kShownBlock = 0.05;

QString tr(const char* text) {
  return QCoreApplication::translate("endplate::ui", text);
}

QString call_words(const followup::Call& call) {
  const QString words = told(recovery::progress_words(call.progress)).toUpper();
  return call.why.empty() ? words : words + ": " + told(call.why);
}

QString chances_words(const LesionProgress& lesion) {
  QString words =
      tr("ahead %1, on course %2, late %3, no advance %4")
          .arg(chance_words(lesion.chances.ahead), chance_words(lesion.chances.on_course),
               chance_words(lesion.chances.late), chance_words(lesion.chances.no_advance));
  if (lesion.chance_block >= kShownBlock) {
    words +=
        tr("; a conduction block, %1, counts as on course").arg(chance_words(lesion.chance_block));
  }
  return words;
}

QString tinel_words(const LesionProgress& lesion) {
  if (!lesion.tappable) return tr("no skin fibres beyond the lesion: tapping says nothing here");
  QStringList points;
  for (const followup::TinelPoint& point : lesion.points) {
    points << tr("%1 mm beyond the lesion on %2")
                  .arg(point.advance_mm, 0, 'f', 0)
                  .arg(date_words(point.date));
  }
  return points.isEmpty() ? tr("no Tinel point that could be used") : points.join("; ");
}

QString range(const Summary& rate) {
  const auto figure = [](double value) { return QString::number(value, 'f', 1); };
  return QString("%1 (%2-%3)").arg(figure(rate.p50), figure(rate.p05), figure(rate.p95));
}

QString rate_words(const LesionProgress& lesion) {
  const QString usual =
      tr("patients like this one: %1 mm a day").arg(range(lesion.usual_rate_mm_per_day));
  if (!lesion.rate_mm_per_day) {
    return tr("hardly any chance of growth, so there is no rate; %1").arg(usual);
  }
  return tr("if it grows, %1 mm a day; %2").arg(range(*lesion.rate_mm_per_day), usual);
}

}  // namespace

QStringList course_words(const followup::FollowupAnswer& answer) {
  QStringList lines;
  if (answer.lesions.empty()) lines << call_words(answer.call);
  for (std::size_t k = 0; k < answer.lesions.size(); ++k) {
    const LesionProgress& lesion = answer.lesions[k];
    const QString of =
        answer.lesions.size() > 1 ? text_of(answer.recovery.lesions[k].nerve) + ": " : QString();
    lines << of + call_words(lesion.call) << chances_words(lesion) << tinel_words(lesion)
          << rate_words(lesion);
  }
  for (const std::string& remark : answer.remarks) lines << told(remark);
  return lines;
}

}  // namespace endplate::ui
