#include "ui/lecture/step_facts.hpp"

#include <QCoreApplication>
#include <QMap>

#include "models/anatomy/supply_facts.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/muscle_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("endplate::ui::StepFacts", text);
}

// Parts of one muscle that follow one another share a line.
QVector<StepFact> muscle_facts(const anatomy::NerveFacts& facts, const anatomy::Anatomy& anatomy) {
  QVector<StepFact> lines;
  QString last;
  for (const std::size_t m : facts.muscles) {
    const anatomy::Muscle& muscle = anatomy.muscles()[m];
    const bool whole = muscle.part == "whole";
    if (text_of(muscle.name) == last && !whole) {
      lines.back().text += QString("; %1 (%2)").arg(told(muscle.part), roots_of(muscle));
    } else {
      lines.push_back({whole ? QString("%1 (%2)").arg(text_of(muscle.name), roots_of(muscle))
                             : QString("%1: %2 (%3)")
                                   .arg(text_of(muscle.name), told(muscle.part), roots_of(muscle)),
                       text_of(muscle.source)});
    }
    last = text_of(muscle.name);
  }
  return lines;
}

QVector<StepFact> area_facts(const anatomy::NerveFacts& facts, const anatomy::Anatomy& anatomy) {
  QVector<StepFact> lines;
  for (const std::size_t a : facts.areas) {
    const anatomy::SkinArea& area = anatomy.areas()[a];
    QString text = told(area.name);
    if (!area.autonomous_zone.empty() && area.autonomous_zone != "no") {
      text += " - " + tr("its own zone: %1").arg(told(area.autonomous_zone));
    }
    lines.push_back({text, text_of(area.source)});
  }
  return lines;
}

// In whole per cent: how often a variant is there is a figure of publications, not a forecast.
QVector<StepFact> variant_facts(const anatomy::NerveFacts& facts, const anatomy::Anatomy& anatomy) {
  QVector<StepFact> lines;
  for (const std::size_t v : facts.variants) {
    const anatomy::Variant& variant = anatomy.variants()[v];
    const anatomy::Prevalence& found = variant.prevalence;
    QString text = told(variant.name);
    if (found.pooled && found.rows.size() > 1) {
      text += tr(": %1 % of limbs, %2 to %3 % by study")
                  .arg(qRound(100.0 * *found.pooled))
                  .arg(qRound(100.0 * *found.lowest))
                  .arg(qRound(100.0 * *found.highest));
    } else if (found.pooled) {
      text += tr(": %1 % of limbs").arg(qRound(100.0 * *found.pooled));
    } else {
      text += tr(": how often is not published");
    }
    QStringList studies;
    for (const anatomy::PrevalenceRow& row : found.rows) studies.push_back(text_of(row.study));
    // How often it is there was counted by nobody; that it is has a source.
    if (studies.isEmpty()) {
      for (const anatomy::VariantEffect& effect : variant.effects) {
        studies.push_back(text_of(effect.source));
      }
    }
    studies.removeDuplicates();
    lines.push_back({text, studies.join("; ")});
  }
  return lines;
}

QVector<StepFact> rule_facts(const LectureStep& step, const evidence::DataPackage& package) {
  QMap<QString, StepFact> by_id;
  for (const evidence::Row row : package.table("approaches")) {
    const QString id = text_of(row.text("id"));
    if (!step.rules.contains(id)) continue;
    by_id[id] = {QString("%1: \u201c%2\u201d")
                     .arg(text_of(row.text("approach")), text_of(row.text("safe_rule"))),
                 text_of(row.text("source"))};
  }
  QVector<StepFact> lines;
  for (const QString& id : step.rules) lines.push_back(by_id[id]);
  return lines;
}

}  // namespace

QVector<StepFact> step_facts(const LectureStep& step, const anatomy::Anatomy& anatomy,
                             const evidence::DataPackage& package) {
  const auto nerve = anatomy.tree().find(step.nerve.toStdString());
  if (!nerve) return {};
  const anatomy::NerveFacts facts = anatomy::facts_of_nerve(anatomy, *nerve);
  switch (step.kind) {
    case StepKind::muscles:
      return muscle_facts(facts, anatomy);
    case StepKind::skin:
      return area_facts(facts, anatomy);
    case StepKind::exceptions:
      return variant_facts(facts, anatomy);
    case StepKind::danger:
      return rule_facts(step, package);
    case StepKind::text:
    case StepKind::course:
      break;
  }
  return {};
}

QStringList step_foreground(const LectureStep& step, const anatomy::Anatomy& anatomy) {
  QStringList names;
  QStringList nerves = step.nerves;
  if (!step.nerve.isEmpty()) nerves.push_front(step.nerve);
  // The trunks alone, where a step is about several: with all their branches nothing would stand
  // out.
  if (step.kind == StepKind::text) return nerves;
  for (const QString& name : nerves) {
    const auto nerve = anatomy.tree().find(name.toStdString());
    if (!nerve) continue;
    const anatomy::NerveFacts facts = anatomy::facts_of_nerve(anatomy, *nerve);
    for (const auto branch : facts.branches)
      names.push_back(text_of(anatomy.tree().node(branch).name));
    if (step.kind != StepKind::muscles) continue;
    for (const std::size_t m : facts.muscles) names.push_back(text_of(anatomy.muscles()[m].id));
  }
  return names;
}

}  // namespace endplate::ui
