#pragma once
// A table of plain rows: sortable, with wrapped words, and saved as CSV with every digit that is
// shown. Rows may be about nerves, muscles and areas; those that are about what was picked on the
// limb stand out.
#include <QAbstractTableModel>
#include <QStringList>
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

// A row with what it is about and what stands behind it; see RowTable.
struct Line {
  Cells cells;
  QStringList about;
  QStringList behind;
};

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
  void point_out(std::vector<bool> rows);  // by row; empty: none stands out
  bool is_pointed(int row) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  std::vector<Column> columns_;
  std::vector<Cells> rows_;
  std::vector<bool> pointed_;
};

class RowTable : public QTableView {
  Q_OBJECT

 public:
  // `name` for assistive technology and for the file that the table is saved to.
  explicit RowTable(const QString& name, QWidget* parent = nullptr);

  void set(std::vector<Column> columns, std::vector<Cells> rows);
  void set(std::vector<Column> columns, std::vector<Line> lines);
  const RowModel& rows() const { return *model_; }
  // Index into the rows as they were given, or -1.
  int chosen() const;
  void choose(int row);
  QString shown(int row, int column) const;  // in the order as given

  // The rows of the tables of evidence that stand behind each row.
  void set_behind(std::vector<QStringList> ids) { behind_ = std::move(ids); }
  QStringList behind(int row) const;

  // What each row is about, in standard terms: nerves and areas by name, muscles by their key. To
  // be said after every set().
  void set_about(std::vector<QStringList> about);
  // Rows that are about one of these stand out; the first comes into sight where none is.
  void point_out(const QStringList& names);

  // Grows to the height of its rows, for a table within a page that scrolls.
  void set_whole(bool whole);

  // RFC 4180, UTF-8, in the order on screen.
  QString csv() const;
  void save_csv();

 Q_SIGNALS:
  void chosen_changed(int row);
  // The rows behind a number are wanted: the id of one.
  void behind_wanted(const QString& id);
  // The reader chose a row that is about these.
  void subject_chosen(const QStringList& names);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void lay_out();
  void lay_out_rows(int first);
  void mark_pointed();
  void reveal();
  void tell_subject();
  int height_of(int row) const;
  int least_width(int column) const;

  RowModel* model_;
  std::vector<QStringList> behind_;
  std::vector<QStringList> about_;
  QStringList pointed_;
  bool to_reveal_ = false;  // a row that stands out has yet to come into sight
  bool choosing_ = false;   // the table itself, not the reader
  bool whole_ = false;
  bool laying_out_ = false;
  QTimer rows_soon_;  // those that have not been laid out
  int next_row_ = 0;
};

}  // namespace endplate::ui
