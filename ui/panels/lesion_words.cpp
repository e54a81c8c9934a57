#include "ui/panels/lesion_words.hpp"

#include <QCoreApplication>
#include <algorithm>

#include "models/recovery/recover.hpp"
#include "ui/panels/time_words.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("endplate::ui", text);
}

QString fate_words(const recovery::RecoveryAnswer& answer, const recovery::RecoveryLesion& lesion) {
  const auto& chance = lesion.grade_chance;
  const bool mixed = std::ranges::count_if(chance, [](double c) { return c > 0.0; }) > 1;
  if (lesion.preganglionic) return tr("torn from the cord, no axons to grow");
  if (lesion.repaired) return tr("forecast %1").arg(told(lesion.operation));
  if (answer.no_forecast.empty() && mixed) {
    QString words =
        tr("without repair, grade not known: conduction block %1, axons grow %2, "
           "nothing grows %3")
            .arg(chance_words(chance[0]), chance_words(chance[1]), chance_words(chance[2]));
    if (answer.findings_used) words += tr(", given the findings");
    return words;
  }
  if (lesion.grade == "unknown") return tr("grade not known");
  return told(lesion.grade).replace('_', ' ');
}

}  // namespace

QStringList lesion_words(const recovery::RecoveryAnswer& answer) {
  QStringList lines;
  bool block = false;
  for (const recovery::RecoveryLesion& lesion : answer.lesions) {
    // A trunk or a root is its own place.
    const QString name =
        lesion.place.contains(lesion.nerve) ? QString() : told(lesion.nerve) + ", ";
    lines << name + told(lesion.place) + "; " + told(lesion.mechanism) + "; " +
                 fate_words(answer, lesion);
    block = block || lesion.grade_chance[0] >= 0.05;
  }
  if (answer.block_first_days && answer.block_useful_days && block) {
    const auto weeks = [](double days) { return QString::number(days / 7.0, 'f', 0); };
    lines << tr("If it is a conduction block, everything returns together: first movement %1 to "
                "%2 weeks, useful %3 to %4 weeks after the injury.")
                 .arg(weeks(answer.block_first_days->p05), weeks(answer.block_first_days->p95),
                      weeks(answer.block_useful_days->p05), weeks(answer.block_useful_days->p95));
  }
  return lines;
}

}  // namespace endplate::ui
