#include "ui/panels/finding_table.hpp"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <array>

#include "ui/charts/colours.hpp"
#include "ui/panels/airy_delegate.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

enum class FoundShape { open, whole, weak, lost };
constexpr int kShapeRole = Qt::UserRole + 1;

FoundShape shape_of(const FindingRow& row) {
  if (row.found.isEmpty()) return FoundShape::open;
  if (row.kind == FindingKind::muscle) {
    if (row.found == "0") return FoundShape::lost;
    return row.found.startsWith('5') && row.found != "5-" ? FoundShape::whole : FoundShape::weak;
  }
  if (row.kind == FindingKind::sign)
    return row.found == "present" ? FoundShape::lost : FoundShape::whole;
  if (row.found == "normal" || row.found == "S4") return FoundShape::whole;
  return row.found == "absent" || row.found == "S0" ? FoundShape::lost : FoundShape::weak;
}

// Open: a dashed outline. Weak: half filled. Normal: filled with a light, lost with a dark colour
// and a bar on its left.
class FoundDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    if (!index.data(kShapeRole).isValid()) {
      QStyledItemDelegate::paint(painter, option, index);
      return;
    }
    const Colours colours(option.palette);
    const auto shape = static_cast<FoundShape>(index.data(kShapeRole).toInt());
    const QRectF box = QRectF(option.rect).adjusted(3, 3, -3, -3);
    painter->save();
    // Its own ground, also on a chosen row: what was found must stay readable there.
    const bool pointed = index.data(kPointedRole).toBool();
    painter->fillRect(option.rect, pointed ? colours.pointed : colours.paper);
    painter->setRenderHint(QPainter::Antialiasing);
    QColor ink = colours.ink;
    if (shape == FoundShape::open) {
      painter->setPen(QPen(colours.absent, 1.2, Qt::DashLine));
      painter->drawRoundedRect(box, 4, 4);
      ink = colours.absent;
    } else if (shape == FoundShape::weak) {
      painter->setPen(QPen(colours.weak, 1.5));
      painter->setBrush(QBrush(colours.weak, Qt::BDiagPattern));
      painter->drawRoundedRect(box, 4, 4);
      painter->fillRect(box.adjusted(4, 2, -4, -2), colours.paper);
    } else {
      painter->setPen(Qt::NoPen);
      painter->setBrush(shape == FoundShape::whole ? colours.whole : colours.lost);
      painter->drawRoundedRect(box, 4, 4);
      ink = colours.on_fill;
    }
    QFont font = option.font;
    font.setBold(shape != FoundShape::open);
    font.setItalic(shape == FoundShape::open);
    painter->setFont(font);
    painter->setPen(ink);
    const QString words = painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight,
                                                            static_cast<int>(box.width()) - 6);
    painter->drawText(box, Qt::AlignCenter, words);
    if (option.state & QStyle::State_HasFocus) {
      painter->setBrush(Qt::NoBrush);
      painter->setPen(QPen(colours.ink, 2));
      painter->drawRect(QRectF(option.rect).adjusted(1, 1, -1, -1));
    }
    painter->restore();
  }
};

struct KeyWord {
  int key;
  const char* value;
};
constexpr std::array kAreaKeys{KeyWord{Qt::Key_N, "normal"}, KeyWord{Qt::Key_R, "reduced"},
                               KeyWord{Qt::Key_A, "absent"}, KeyWord{Qt::Key_H, "hyperaesthetic"}};
constexpr std::array kSignKeys{KeyWord{Qt::Key_P, "present"}, KeyWord{Qt::Key_A, "absent"}};

}  // namespace

FindingTable::FindingTable(QWidget* parent) : QTableWidget(parent) {
  setAccessibleName(tr("Findings"));
  setColumnCount(3);
  setHorizontalHeaderLabels({tr("Muscle, area or sign"), tr("Expected"), tr("Found")});
  setItemDelegateForColumn(0, new AiryDelegate(3, 0, this));
  setItemDelegateForColumn(2, new FoundDelegate(this));
  verticalHeader()->hide();
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setTabKeyNavigation(false);
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  connect(this, &QTableWidget::currentCellChanged, this, [this] {
    Q_EMIT row_changed();
    if (!moving_) tell_subject();
  });
  connect(this, &QTableWidget::cellClicked, this, &FindingTable::tell_subject);
}

QString FindingTable::words(const FindingRow& row) {
  const QString state = state_words(row);
  return row.more.isEmpty() ? state : state + ", " + row.more;
}

QString FindingTable::state_words(const FindingRow& row) {
  if (row.found.isEmpty()) return tr("not examined");
  if (row.kind == FindingKind::muscle) {
    switch (shape_of(row)) {
      case FoundShape::lost:
        return tr("none, M0");
      case FoundShape::whole:
        return tr("normal, M5");
      case FoundShape::weak:
      case FoundShape::open:
        return tr("weak, M%1").arg(row.found);
    }
  }
  if (row.found == "normal") return tr("normal");
  if (row.found == "reduced") return tr("reduced");
  if (row.found == "absent") return tr("absent");
  if (row.found == "present") return tr("present");
  if (row.found == "hyperaesthetic") return tr("hyperaesthetic");
  return row.found;
}

void FindingTable::set(std::vector<FindingRow> rows) {
  const int now = currentRow();
  const bool same = rows.size() == findings_.size();
  moving_ = true;
  findings_ = std::move(rows);
  if (!same) last_ = -1;
  clearSpans();
  setRowCount(static_cast<int>(findings_.size()));
  for (int at = 0; at < rowCount(); ++at) show_row(at);
  if (same && now >= 0) {
    setCurrentCell(now, 2);
  } else if (rowCount() > 1) {
    setCurrentCell(1, 2);
  }
  moving_ = false;
  if (to_reveal_) reveal();
}

void FindingTable::point_out(const QStringList& names) {
  pointed_ = names;
  for (int at = 0; at < rowCount(); ++at) mark_row(at);
  to_reveal_ = !names.isEmpty();
  reveal();
}

bool FindingTable::is_pointed(int row) const {
  const FindingRow& finding = findings_[static_cast<std::size_t>(row)];
  return !finding.head && finding.kind != FindingKind::sign &&
         pointed_.contains(text_of(finding.name));
}

void FindingTable::mark_row(int at) {
  const bool pointed = is_pointed(at);
  for (int column = 0; column < columnCount(); ++column) {
    QTableWidgetItem* part = item(at, column);
    if (part == nullptr) continue;
    part->setBackground(pointed ? QBrush(Colours(palette()).pointed) : QBrush());
    part->setData(kPointedRole, pointed);
    part->setData(Qt::AccessibleDescriptionRole, pointed ? tr("picked on the limb") : QString());
  }
}

void FindingTable::reveal() {
  if (!isVisible()) return;
  int first = -1;
  for (int at = 0; at < rowCount(); ++at) {
    if (!is_pointed(at)) continue;
    to_reveal_ = false;
    if (visualItemRect(item(at, 0)).intersects(viewport()->rect())) return;
    if (first < 0) first = at;
  }
  if (first >= 0) scrollToItem(item(first, 0), PositionAtTop);
}

void FindingTable::tell_subject() {
  const int at = currentRow();
  if (at < 0) return;
  const FindingRow& finding = findings_[static_cast<std::size_t>(at)];
  if (finding.head || finding.kind == FindingKind::sign) return;
  Q_EMIT subject_chosen({text_of(finding.name)});
}

void FindingTable::show_row(int at) {
  const FindingRow& row = findings_[static_cast<std::size_t>(at)];
  auto* name = new QTableWidgetItem(row.shown);
  name->setToolTip(row.shown);
  setItem(at, 0, name);
  if (row.head) {
    QFont bold = font();
    bold.setBold(true);
    name->setFont(bold);
    name->setFlags(Qt::ItemIsEnabled);
    setSpan(at, 0, 1, 3);
    return;
  }
  setItem(at, 1, new QTableWidgetItem(row.expected));
  auto* found = new QTableWidgetItem(words(row));
  found->setData(kShapeRole, static_cast<int>(shape_of(row)));
  found->setData(Qt::AccessibleTextRole, row.shown + ": " + words(row));
  found->setToolTip(words(row));
  setItem(at, 2, found);
  mark_row(at);
}

void FindingTable::enter(int row, const QString& value) {
  const FindingRow finding = findings_[static_cast<std::size_t>(row)];
  last_ = row;
  Q_EMIT entered(finding.kind, finding.name, value);
}

void FindingTable::step(int from) {
  moving_ = true;
  for (int row = from + 1; row < rowCount(); ++row) {
    if (findings_[static_cast<std::size_t>(row)].head) continue;
    setCurrentCell(row, 2);
    break;
  }
  moving_ = false;
}

void FindingTable::keyPressEvent(QKeyEvent* event) {
  const int row = currentRow();
  if (row < 0 || findings_[static_cast<std::size_t>(row)].head ||
      (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
    return QTableWidget::keyPressEvent(event);
  }
  const FindingRow finding = findings_[static_cast<std::size_t>(row)];
  const int key = event->key();
  if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
    enter(row, {});
    return;
  }
  if (key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter) return step(row);
  if ((key == Qt::Key_Plus || key == Qt::Key_Minus) && last_ >= 0) {
    const FindingRow before = findings_[static_cast<std::size_t>(last_)];
    const QString grade = before.found.left(1);
    const bool may = before.kind == FindingKind::muscle && !grade.isEmpty() && grade != "0" &&
                     (grade != "5" || key == Qt::Key_Minus);
    if (may) enter(last_, grade + (key == Qt::Key_Plus ? '+' : '-'));
    return;
  }
  QString value;
  if (finding.kind == FindingKind::muscle) {
    if (key >= Qt::Key_0 && key <= Qt::Key_5) value = QString::number(key - Qt::Key_0);
  } else if (finding.kind == FindingKind::area) {
    for (const KeyWord& word : kAreaKeys) {
      if (word.key == key) value = word.value;
    }
  } else {
    for (const KeyWord& word : kSignKeys) {
      if (word.key == key) value = word.value;
    }
  }
  if (value.isEmpty()) return QTableWidget::keyPressEvent(event);
  enter(row, value);
  step(row);
}

void FindingTable::showEvent(QShowEvent* event) {
  QTableWidget::showEvent(event);
  if (to_reveal_) reveal();
}

void FindingTable::resizeEvent(QResizeEvent* event) {
  QTableWidget::resizeEvent(event);
  const int found = 170;
  const int expected = 110;
  setColumnWidth(2, found);
  setColumnWidth(1, expected);
  setColumnWidth(0, qMax(160, viewport()->width() - found - expected));
}

}  // namespace endplate::ui
