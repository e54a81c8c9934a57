#pragma once
// A table of plain rows: sortable, with wrapped words, and saved as CSV with every digit that is
// shown.
#include <QAbstractTableModel>
#include <QTableView>
#include <QTimer>
#include <QVariant>
#include <vector>

namespace endplate::ui {

enum class Tone { plain, faint, whole, weak, lost, alert, danger };

struct Cell {
  QString text;
  QVariant sort;  // by which the column is ordered; the text where it is not given
  QString tip;
  Tone tone = Tone::plain;

  Cell() = default;
  Cell(QString shown, QVariant by = {}, QString hint = {}, Tone of = Tone::plain)
      : text(std::move(shown)), sort(std::move(by)), tip(std::move(hint)), tone(of) {}
};
using Cells = std::vector<Cell>;

struct Column {
  QString title;
  bool number = false;   // flush right, in the middle of its column's height
  bool stretch = false;  // takes the room that is left, and wraps
  QString tip{};
  int least = 104;  // px, of one that stretches; and its share of the room among those
};

class RowModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;
  void set(std::vector<Column> columns, std::vector<Cells> rows);
  const std::vector<Column>& columns() const { return columns_; }
  const std::vector<Cells>& rows() const { return rows_; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  std::vector<Column> columns_;
  std::vector<Cells> rows_;
};

class RowTable : public QTableView {
  Q_OBJECT

 public:
  // `name` for assistive technology and for the file that the table is saved to.
  explicit RowTable(const QString& name, QWidget* parent = nullptr);

  void set(std::vector<Column> columns, std::vector<Cells> rows);
  const RowModel& rows() const { return *model_; }
  // Index into the rows as they were given, or -1.
  int chosen() const;
  void choose(int row);
  QString shown(int row, int column) const;  // in the order as given

  // The row of a table of evidence that stands behind each row; empty where there is none.
  void set_behind(std::vector<QString> ids) { behind_ = std::move(ids); }

  // Grows to the height of its rows, for a table within a page that scrolls.
  void set_whole(bool whole);

  // RFC 4180, UTF-8, in the order on screen.
  QString csv() const;
  void save_csv();

 Q_SIGNALS:
  void chosen_changed(int row);
  // The rows behind a number are wanted: the id of one.
  void behind_wanted(const QString& id);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void lay_out();
  void lay_out_rows(int first);
  int height_of(int row) const;
  int least_width(int column) const;

  RowModel* model_;
  std::vector<QString> behind_;
  bool whole_ = false;
  bool laying_out_ = false;
  QTimer rows_soon_;  // those that have not been laid out
  int next_row_ = 0;
};

}  // namespace endplate::ui
