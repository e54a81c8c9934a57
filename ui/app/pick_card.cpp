#include "ui/app/pick_card.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>
#include <cmath>

#include "models/anatomy/supply_facts.hpp"
#include "ui/document/case_tables.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/muscle_words.hpp"
#include "ui/words/words.hpp"

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

const anatomy::Muscle* PickCard::muscle_called(const QString& name, const QString& part) const {
  for (const anatomy::Muscle& muscle : tables_.anatomy.muscles()) {
    const bool right_part = part.isEmpty() || text_of(muscle.part) == part;
    if (text_of(muscle.name) == name && right_part) return &muscle;
  }
  return nullptr;
}

const anatomy::Muscle* PickCard::muscle_of(const QString& id) const {
  const auto& muscles = tables_.anatomy.muscles();
  const auto found = std::ranges::find(muscles, plain(id), &anatomy::Muscle::id);
  return found == muscles.end() ? nullptr : &*found;
}

QStringList PickCard::way_to(anatomy::NodeIndex branch) const {
  const anatomy::NerveTree& tree = tables_.anatomy.tree();
  QStringList names;
  for (const auto node : anatomy::usual_way(tree, branch)) {
    names.push_back(text_of(tree.node(node).name));
  }
  return names;
}

Subject PickCard::show_pick(const Pick& pick) {
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
      if (const auto* muscle = muscle_called(pick.name, pick.part)) return tell_muscle(*muscle);
      break;
    case PickKind::bone:
    case PickKind::landmark:
    case PickKind::skin:
      break;
  }
  say(opening(told(plain(pick.name))));
  return {{pick.name}, {}};
}

Subject PickCard::show_names(const QStringList& names) {
  if (names.isEmpty()) {
    hide();
    return {};
  }
  if (names.size() == 1) return tell(names.front());
  Subject all{names, {}};
  QStringList shown;
  for (const QString& name : names) {
    const anatomy::Muscle* muscle = muscle_of(name);
    shown.push_back(muscle == nullptr ? told(plain(name)) : name_of(*muscle));
    if (muscle != nullptr) all.way << way_to(muscle->branch);
  }
  say("<b>" + tr("Chosen:") + "</b> " + listed(shown));
  return all;
}

Subject PickCard::tell(const QString& name) {
  if (const auto* muscle = muscle_of(name)) return tell_muscle(*muscle);
  for (const anatomy::SkinArea& area : tables_.anatomy.areas()) {
    if (text_of(area.name) == name) return tell_area(area);
  }
  return tell_nerve(name, std::nan(""));
}

QString PickCard::listed(const QStringList& items) {
  constexpr int kMost = 8;  // what a card holds; the lecture and the tables have them all
  QString words = QStringList(items.mid(0, kMost)).join("; ").toHtmlEscaped();
  if (items.size() > kMost) words += tr(" and %1 more").arg(items.size() - kMost);
  return words;
}

Subject PickCard::tell_nerve(const QString& name, double arc_mm) {
  const anatomy::Anatomy& all = tables_.anatomy;
  const auto node = all.tree().find(plain(name));
  if (!node) {
    say(opening(told(plain(name))));
    return {{name}, {}};
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
  for (const std::size_t a : facts.areas) {
    areas.push_back(told(all.areas()[a].name));
    names.push_back(text_of(all.areas()[a].name));
  }
  QStringList roots;
  for (const std::string& root : all.tree().node(*node).roots) roots.push_back(text_of(root));
  QString words = QString("<b>%1</b>").arg(opening(told(plain(name))).toHtmlEscaped());
  if (!roots.isEmpty()) words += QString(" (%1)").arg(roots.join(", "));
  if (std::isfinite(arc_mm)) {
    words += tr(", %1 mm from where it begins").arg(std::lround(arc_mm));
  }
  if (!muscles.isEmpty()) words += "<br>" + tr("Moves:") + ' ' + listed(muscles);
  if (!areas.isEmpty()) words += "<br>" + tr("Feels:") + ' ' + listed(areas);
  say(words);
  return {names, {}};
}

Subject PickCard::tell_muscle(const anatomy::Muscle& muscle) {
  QString words = QString("<b>%1</b>").arg(opening(name_of(muscle)).toHtmlEscaped());
  words +=
      "<br>" + tr("Nerve: %1 (%2)")
                   .arg(told(tables_.anatomy.tree().node(muscle.nerve).name), roots_of(muscle));
  if (!muscle.action.empty()) words += "<br>" + tr("Action: %1").arg(told(muscle.action));
  say(words);
  return {{text_of(muscle.id)}, way_to(muscle.branch)};
}

Subject PickCard::tell_area(const anatomy::SkinArea& area) {
  QStringList roots;
  for (const std::string& root : area.roots) roots.push_back(text_of(root));
  say(QString("<b>%1</b><br>").arg(opening(told(area.name)).toHtmlEscaped()) +
      tr("Nerve: %1 (%2)")
          .arg(told(tables_.anatomy.tree().node(area.nerve).name), roots.join(", ")));
  Subject subject{{text_of(area.name)}, {}};
  for (const anatomy::NodeIndex branch : area.branches) subject.way << way_to(branch);
  return subject;
}

}  // namespace endplate::ui
