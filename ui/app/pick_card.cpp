#include "ui/app/pick_card.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <cmath>

#include "models/anatomy/supply_facts.hpp"
#include "ui/app/muscle_words.hpp"
#include "ui/app/words.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/words/model_words.hpp"

namespace endplate::ui {
PickCard::PickCard(const CaseTables& tables, QWidget* parent) : QFrame(parent), tables_(tables) {
  setFrameShape(QFrame::StyledPanel);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 6, 6, 6);
  words_ = new QLabel(this);
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  words_->setAccessibleName(tr("What was picked on the limb"));
  auto* close = new QToolButton(this);
  close->setText("\u00d7");
  close->setAutoRaise(true);
  close->setAccessibleName(tr("Close"));
  close->setToolTip(tr("Close"));
  row->addWidget(words_, 1);
  row->addWidget(close, 0, Qt::AlignTop);
  connect(close, &QToolButton::clicked, this, [this] {
    hide();
    Q_EMIT closed();
  });
  hide();
}

void PickCard::say(const QString& words) {
  words_->setText(words);
  show();
}

QString PickCard::words() const {
  return words_->text();
}

QStringList PickCard::show_pick(const Pick& pick) {
  switch (pick.kind) {
    case PickKind::nothing:
      hide();
      return {};
    case PickKind::nerve:
      return tell_nerve(pick.name, pick.arc_mm);
    case PickKind::branch_point:
    case PickKind::motor_entry:
      return tell_nerve(pick.kind == PickKind::branch_point ? pick.name : pick.part, std::nan(""));
    case PickKind::muscle:
      return tell_muscle(pick.name, pick.part);
    case PickKind::bone:
    case PickKind::landmark:
    case PickKind::skin:
      say(opening(pick.name));
      return {pick.name};
  }
  return {};
}

QStringList PickCard::tell_nerve(const QString& name, double arc_mm) {
  const anatomy::Anatomy& all = tables_.anatomy;
  const auto node = all.tree().find(plain(name));
  if (!node) {
    say(opening(name));
    return {name};
  }
  const anatomy::NerveFacts facts = anatomy::facts_of_nerve(all, *node);
  QStringList muscles;
  QStringList areas;
  QStringList names;
  for (const auto branch : facts.branches) names.push_back(text_of(all.tree().node(branch).name));
  for (const std::size_t m : facts.muscles) {
    muscles.push_back(name_of(all.muscles()[m]));
    names.push_back(text_of(all.muscles()[m].id));
  }
  for (const std::size_t a : facts.areas) areas.push_back(told(all.areas()[a].name));
  QStringList roots;
  for (const std::string& root : all.tree().node(*node).roots) roots.push_back(text_of(root));
  QString words = QString("<b>%1</b>").arg(opening(name).toHtmlEscaped());
  if (!roots.isEmpty()) words += QString(" (%1)").arg(roots.join(", "));
  if (std::isfinite(arc_mm)) {
    words += tr(", %1 mm from where it begins").arg(std::lround(arc_mm));
  }
  constexpr int kMost = 8;  // what a card holds; the lecture and the tables have them all
  const auto list = [&](const QString& head, const QStringList& items) {
    if (items.isEmpty()) return;
    words += "<br>" + head + " " + QStringList(items.mid(0, kMost)).join("; ").toHtmlEscaped();
    if (items.size() > kMost) words += tr(" and %1 more").arg(items.size() - kMost);
  };
  list(tr("Moves:"), muscles);
  list(tr("Feels:"), areas);
  say(words);
  return names;
}

QStringList PickCard::tell_muscle(const QString& name, const QString& part) {
  const anatomy::Anatomy& all = tables_.anatomy;
  for (const anatomy::Muscle& muscle : all.muscles()) {
    if (text_of(muscle.name) != name || (text_of(muscle.part) != part && !part.isEmpty())) continue;
    QString words = QString("<b>%1</b>").arg(opening(name_of(muscle)).toHtmlEscaped());
    words +=
        "<br>" +
        tr("Nerve: %1 (%2)").arg(text_of(all.tree().node(muscle.nerve).name), roots_of(muscle));
    if (!muscle.action.empty()) words += "<br>" + tr("Action: %1").arg(told(muscle.action));
    say(words);
    QStringList names{text_of(muscle.id)};
    for (const auto node : anatomy::usual_way(all.tree(), muscle.branch)) {
      names.push_back(text_of(all.tree().node(node).name));
    }
    return names;
  }
  say(opening(name));
  return {name};
}

}  // namespace endplate::ui
