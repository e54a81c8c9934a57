#include "ui/panels/row_table.hpp"

#include <QContextMenuEvent>
#include <QFileDialog>
#include <QHeaderView>
#include <QMenu>
#include <QMessageBox>
#include <QScrollBar>
#include <QSet>
#include <QSortFilterProxyModel>
#include <algorithm>

#include "ui/charts/colours.hpp"
#include "ui/document/case_file.hpp"
#include "ui/panels/airy_delegate.hpp"
#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

constexpr int kSortRole = Qt::UserRole + 1;
constexpr int kWidestWord = 260;
constexpr int kAbove = 3;  // and below the words of a row
constexpr int kBeside = 3;
constexpr int kBesideTitle = 16;
// As many as fill a screen; the others follow when the window has nothing better to do.
constexpr int kRowsAtOnce = 60;

QString csv_cell(QString text) {
  text.replace('"', "\"\"");
  return '"' + text + '"';
}

}  // namespace

void RowModel::set(std::vector<Column> columns, std::vector<Cells> rows) {
  beginResetModel();
  columns_ = std::move(columns);
  rows_ = std::move(rows);
  pointed_.clear();
  endResetModel();
}

void RowModel::point_out(std::vector<bool> rows) {
  pointed_ = std::move(rows);
  if (rows_.empty() || columns_.empty()) return;
  Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1),
                     {Qt::BackgroundRole, kPointedRole});
}

bool RowModel::is_pointed(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return at < pointed_.size() && pointed_[at];
}

int RowModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RowModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant RowModel::data(const QModelIndex& index, int role) const {
  const Cells& row = rows_[static_cast<std::size_t>(index.row())];
  const auto at = static_cast<std::size_t>(index.column());
  if (at >= row.size()) return {};
  const Cell& cell = row[at];
  switch (role) {
    case Qt::DisplayRole:
      return cell.text;
    case Qt::AccessibleTextRole:
      return columns_[at].title + ": " + cell.text;
    case Qt::AccessibleDescriptionRole:
      return is_pointed(index.row()) ? RowTable::tr("picked on the limb") : QString();
    case kPointedRole:
      return is_pointed(index.row());
    case Qt::ToolTipRole:
      return cell.tip.isEmpty() ? cell.text : cell.tip;
    case kSortRole:
      return cell.sort.isValid() ? cell.sort : QVariant(cell.text);
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignTop | (columns_[at].number ? Qt::AlignRight : Qt::AlignLeft));
    default:
      break;
  }
  const bool filled =
      cell.tone == Tone::weak || cell.tone == Tone::alert || cell.tone == Tone::danger;
  const bool pointed = role == Qt::BackgroundRole && !filled && is_pointed(index.row());
  if (cell.tone == Tone::plain && !pointed) return {};
  const Colours colours{QPalette(static_cast<QWidget*>(QObject::parent())->palette())};
  if (pointed) return colours.pointed;
  if (role == Qt::ForegroundRole) {
    switch (cell.tone) {
      case Tone::faint:
        return colours.absent;
      case Tone::whole:
        return colours.whole;
      case Tone::weak:
      case Tone::alert:
        return colours.on_alert;
      case Tone::lost:
        return colours.lost;
      case Tone::danger:
        return colours.on_fill;
      case Tone::plain:
        return {};
    }
  }
  if (role == Qt::BackgroundRole && cell.tone == Tone::danger) return colours.lost;
  if (role == Qt::BackgroundRole && (cell.tone == Tone::weak || cell.tone == Tone::alert)) {
    return colours.alert;
  }
  if (role == Qt::FontRole && cell.tone != Tone::faint) {
    QFont font = static_cast<QWidget*>(QObject::parent())->font();
    font.setBold(true);
    return font;
  }
  return {};
}

QVariant RowModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) return {};
  const Column& column = columns_[static_cast<std::size_t>(section)];
  if (role == Qt::DisplayRole) return column.title;
  if (role == Qt::ToolTipRole) return column.tip.isEmpty() ? column.title : column.tip;
  if (role == Qt::TextAlignmentRole) {
    return QVariant(Qt::AlignVCenter | (column.number ? Qt::AlignRight : Qt::AlignLeft));
  }
  return {};
}

RowTable::RowTable(const QString& name, QWidget* parent)
    : QTableView(parent), model_(new RowModel(this)) {
  setAccessibleName(name);
  setObjectName(name);
  auto* order = new QSortFilterProxyModel(this);
  order->setSourceModel(model_);
  order->setSortRole(kSortRole);
  setModel(order);
  setItemDelegate(new AiryDelegate(kBeside, kAbove, this));
  setWordWrap(true);
  setAlternatingRowColors(true);
  setShowGrid(false);
  setSelectionBehavior(SelectRows);
  setSelectionMode(SingleSelection);
  setEditTriggers(NoEditTriggers);
  setHorizontalScrollMode(ScrollPerPixel);
  setVerticalScrollMode(ScrollPerPixel);
  setTabKeyNavigation(false);
  verticalHeader()->hide();
  horizontalHeader()->setHighlightSections(false);
  horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  rows_soon_.setSingleShot(true);
  rows_soon_.setInterval(0);
  connect(&rows_soon_, &QTimer::timeout, this, [this] { lay_out_rows(next_row_); });
  connect(order, &QAbstractItemModel::layoutChanged, this, &RowTable::lay_out);
  connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
    Q_EMIT chosen_changed(chosen());
    if (!choosing_) tell_subject();
  });
  connect(this, &QAbstractItemView::clicked, this, &RowTable::tell_subject);
  connect(this, &QAbstractItemView::activated, this, [this] {
    const QStringList ids = behind(chosen());
    if (!ids.isEmpty()) Q_EMIT behind_wanted(ids.front());
  });
}

void RowTable::set(std::vector<Column> columns, std::vector<Cells> rows) {
  const int before = chosen();
  about_.clear();
  setSortingEnabled(false);
  model_->set(std::move(columns), std::move(rows));
  static_cast<QSortFilterProxyModel*>(model())->sort(-1);
  horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  setSortingEnabled(true);
  lay_out();
  if (before >= 0 && before < model_->rowCount()) choose(before);
}

void RowTable::set(std::vector<Column> columns, std::vector<Line> lines) {
  std::vector<Cells> rows;
  std::vector<QStringList> about;
  behind_.clear();
  for (Line& line : lines) {
    rows.push_back(std::move(line.cells));
    about.push_back(std::move(line.about));
    behind_.push_back(std::move(line.behind));
  }
  set(std::move(columns), std::move(rows));
  set_about(std::move(about));
}

int RowTable::chosen() const {
  const QModelIndex now = selectionModel()->currentIndex();
  if (!now.isValid()) return -1;
  return static_cast<QSortFilterProxyModel*>(model())->mapToSource(now).row();
}

void RowTable::choose(int row) {
  choosing_ = true;
  setCurrentIndex(
      static_cast<QSortFilterProxyModel*>(model())->mapFromSource(model_->index(row, 0)));
  choosing_ = false;
}

QStringList RowTable::behind(int row) const {
  const auto at = static_cast<std::size_t>(row);
  return row >= 0 && at < behind_.size() ? behind_[at] : QStringList();
}

void RowTable::set_about(std::vector<QStringList> about) {
  about_ = std::move(about);
  mark_pointed();
  if (to_reveal_) reveal();
}

void RowTable::point_out(const QStringList& names) {
  pointed_ = names;
  mark_pointed();
  to_reveal_ = !names.isEmpty();
  reveal();
}

void RowTable::mark_pointed() {
  const QSet<QString> names(pointed_.begin(), pointed_.end());
  std::vector<bool> rows;
  for (const QStringList& about : about_) {
    rows.push_back(
        std::ranges::any_of(about, [&](const QString& name) { return names.contains(name); }));
  }
  model_->point_out(std::move(rows));
}

// Rows that are not laid out yet have no place: then it is done when they have.
void RowTable::reveal() {
  if (!isVisible() || rows_soon_.isActive()) return;
  const auto* order = static_cast<QSortFilterProxyModel*>(model());
  QModelIndex first;
  for (int row = 0; row < order->rowCount(); ++row) {
    const QModelIndex here = order->index(row, 0);
    if (!model_->is_pointed(order->mapToSource(here).row())) continue;
    to_reveal_ = false;
    if (visualRect(here).intersects(viewport()->rect())) return;
    if (!first.isValid()) first = here;
  }
  if (first.isValid()) scrollTo(first, PositionAtTop);
}

void RowTable::tell_subject() {
  const int row = chosen();
  const auto at = static_cast<std::size_t>(row);
  if (row >= 0 && at < about_.size() && !about_[at].isEmpty()) Q_EMIT subject_chosen(about_[at]);
}

QString RowTable::shown(int row, int column) const {
  return model_->data(model_->index(row, column), Qt::DisplayRole).toString();
}

void RowTable::set_whole(bool whole) {
  whole_ = whole;
  if (whole_) setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  lay_out();
}

// Only words that wrap make a row higher; most cells hold a line and are soon told.
int RowTable::height_of(int row) const {
  constexpr int kMargins = 2 * (kBeside + 4);
  constexpr int kTall = 10'000;
  const QFontMetrics metrics = fontMetrics();
  int height = metrics.height();
  for (int column = 0; column < model()->columnCount(); ++column) {
    if (!model_->columns()[static_cast<std::size_t>(column)].stretch) continue;
    const QString text = model()->index(row, column).data().toString();
    const int room = columnWidth(column) - kMargins;
    if (!text.contains('\n') && metrics.horizontalAdvance(text) <= room) continue;
    height = std::max(
        height, metrics.boundingRect(QRect(0, 0, room, kTall), Qt::TextWordWrap, text).height());
  }
  return height + 2 * kAbove;
}

int RowTable::least_width(int column) const {
  const Column& of = model_->columns()[static_cast<std::size_t>(column)];
  return std::max(of.least,
                  horizontalHeader()->fontMetrics().horizontalAdvance(of.title) + kBesideTitle);
}

// Columns as wide as what they hold, the others share what is left; rows as high as their words.
void RowTable::lay_out() {
  // One that is not seen is laid out when it is.
  if (laying_out_ || model_->columns().empty() || !isVisible()) return;
  laying_out_ = true;
  // Without the room that a sign of sorting takes: it comes over the end of a title.
  const QFontMetrics header = horizontalHeader()->fontMetrics();
  int taken = 0;
  std::vector<int> stretching;
  for (int column = 0; column < model_->columnCount(); ++column) {
    if (model_->columns()[static_cast<std::size_t>(column)].stretch) {
      stretching.push_back(column);
      continue;
    }
    const QString& title = model_->columns()[static_cast<std::size_t>(column)].title;
    const int width = std::min(
        std::max(sizeHintForColumn(column), header.horizontalAdvance(title) + kBesideTitle),
        kWidestWord);
    setColumnWidth(column, width);
    taken += width;
  }
  int shares = 0;
  for (const int column : stretching) shares += least_width(column);
  const int left = viewport()->width() - taken;
  for (const int column : stretching) {
    const int least = least_width(column);
    setColumnWidth(column, std::max(left * least / shares, least));
  }
  lay_out_rows(0);
  if (whole_) {
    int height = horizontalHeader()->sizeHint().height() + 2 * frameWidth();
    for (int row = 0; row < model_->rowCount(); ++row) height += rowHeight(row);
    if (horizontalHeader()->length() > viewport()->width()) {
      height += horizontalScrollBar()->sizeHint().height();
    }
    setFixedHeight(height);
  }
  laying_out_ = false;
}

// A table within a page needs all of its rows to know its own height.
void RowTable::lay_out_rows(int first) {
  const int rows = model()->rowCount();
  next_row_ = whole_ ? rows : std::min(rows, first + kRowsAtOnce);
  for (int row = first; row < next_row_; ++row) setRowHeight(row, height_of(row));
  next_row_ < rows ? rows_soon_.start() : rows_soon_.stop();
  if (to_reveal_) reveal();
}

void RowTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  lay_out();
}

void RowTable::showEvent(QShowEvent* event) {
  QTableView::showEvent(event);
  lay_out();
}

void RowTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) lay_out();
}

QString RowTable::csv() const {
  QString text;
  QStringList line;
  for (const Column& column : model_->columns()) line << csv_cell(column.title);
  text += line.join(',') + "\r\n";
  for (int row = 0; row < model()->rowCount(); ++row) {
    line.clear();
    for (int column = 0; column < model()->columnCount(); ++column) {
      line << csv_cell(model()->index(row, column).data().toString());
    }
    text += line.join(',') + "\r\n";
  }
  return text;
}

void RowTable::save_csv() {
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save the table"), accessibleName() + ".csv", tr("Comma-separated values (*.csv)"));
  if (path.isEmpty()) return;
  const auto written = write_bytes(path, plain(csv()));
  if (!written) {
    QMessageBox::warning(this, tr("Save the table"), told(written.error().problems.front().what));
  }
}

void RowTable::contextMenuEvent(QContextMenuEvent* event) {
  QMenu menu(this);
  for (const QString& id : behind(chosen())) {
    QAction* action = menu.addAction(tr("What stands behind this: %1").arg(id));
    connect(action, &QAction::triggered, this, [this, id] { Q_EMIT behind_wanted(id); });
  }
  menu.addAction(tr("Save the table as CSV..."), this, &RowTable::save_csv);
  menu.exec(event->globalPos());
}

}  // namespace endplate::ui
